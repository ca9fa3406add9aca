import { referenceTables } from '../../../src/practice/tables.ts';
import { flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';

describe('dose/other-countries', () => {
  it('tells of a lower limit elsewhere', () => {
    // Australia and Singapore: 3 mg/kg, 186 mg at 62 kg.
    silent('dose/other-countries', note([lidocaine('18.6 mL')]));
    flags('dose/other-countries', note([lidocaine('10 mL'), lidocaine('⟦8.7 mL⟧')]), {
      severity: 'information',
    });
  });

  it('is silent past the limit, and where the other is the authority', () => {
    silent('dose/other-countries', note([lidocaine('28 mL')]));
    const tables = { ...referenceTables, authority: 'Australia' };
    silent('dose/other-countries', note([lidocaine('18 mL')]), { tables });
  });
});

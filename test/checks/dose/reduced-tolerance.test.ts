import { flags, silent } from '../tester.ts';
import { note, withEpinephrine } from './notes.ts';
import { person } from './_caution-findings.ts';

describe('dose/reduced-tolerance', () => {
  const code = 'dose/reduced-tolerance';
  const ill = person('conditions: [cirrhosis of the liver]');

  it('flags half of the limit, and is silent below', () => {
    // 62 kg: 7 mg/kg is 434 mg, half of it 217 mg, 21.7 mL of 1%.
    flags(
      code,
      note(['agent: lidocaine, concentration: 1%, epinephrine: "1:100,000", volume: ⟦21.7 mL⟧'], ill),
      {
        severity: 'information',
      },
    );
    silent(code, note([withEpinephrine('21.6 mL')], ill));
    silent(code, note([withEpinephrine('25 mL')], person('conditions: [asthma]')));
  });
});

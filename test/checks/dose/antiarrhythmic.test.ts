import { flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';

const person = (medicine: string): string =>
  `id: C-1, born: 1991-08-09, weight: 62 kg, medications: [${medicine}]`;

describe('dose/antiarrhythmic', () => {
  const code = 'dose/antiarrhythmic';

  it('warns from half of the limit on, with class I and class III', () => {
    // 4.5 mg/kg × 62 kg = 279 mg, half of it 139.5 mg, 13.95 mL of 1%.
    for (const medicine of ['amiodarone 200 mg', 'mexiletine', 'sotalol', 'flecainide'])
      flags(code, note(['agent: ⟦lidocaine⟧, concentration: 1%, volume: 14 mL'], person(medicine)), {
        severity: 'warning',
      });
    silent(code, note([lidocaine('13.9 mL')], person('amiodarone')));
    silent(code, note([lidocaine('14 mL')], person('metoprolol')));
  });

  it('tells of a cream always, and of no other anesthetic', () => {
    flags(code, note(['agent: ⟦lidocaine-prilocaine cream⟧, amount: 1 g'], person('dofetilide')), {
      severity: 'information',
    });
    silent(code, note(['agent: mepivacaine, concentration: 1%, volume: 30 mL'], person('amiodarone')));
  });
});

import { flags, silent } from '../tester.ts';
import { note, withEpinephrine } from './notes.ts';
import { person } from './_caution-findings.ts';

describe('dose/reduced-tolerance', () => {
  const code = 'dose/reduced-tolerance';
  const ill = person('conditions: [hepatitis C]');

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
    silent(code, note([withEpinephrine('25 mL')], person('conditions: [asthma]').replace('1961', '1991')));
  });

  it('warns where the label names the disease itself as a danger', () => {
    for (const condition of ['cirrhosis', 'congestive heart failure', 'third-degree AV block', 'LVEF 25%'])
      flags(
        code,
        note(
          ['agent: lidocaine, concentration: 1%, epinephrine: "1:100,000", volume: ⟦21.7 mL⟧'],
          person(`conditions: [${condition}]`),
        ),
        { severity: 'warning' },
      );
    silent(code, note([withEpinephrine('25 mL')], person('conditions: [LVEF 60%]').replace('1961', '1991')));
  });

  it('says so of age alone from 65 years on, and warns at 80 years from 80% on', () => {
    const aged = (years: number, volume: string): string =>
      note(
        [`agent: lidocaine, concentration: 1%, epinephrine: "1:100,000", volume: ${volume}`],
        `id: C-1, age: ${years} years, weight: 62 kg`,
      );
    flags(code, aged(65, '⟦21.7 mL⟧'), { severity: 'information' });
    silent(code, aged(65, '21.6 mL'));
    silent(code, aged(64, '40 mL'));
    // 80% of 434 mg are 347.2 mg.
    flags(code, aged(80, '⟦34.8 mL⟧'), { severity: 'warning' });
    flags(code, aged(80, '⟦34.7 mL⟧'), { severity: 'information' });
    flags(code, aged(79, '⟦34.8 mL⟧'), { severity: 'information' });
  });
});

import { flags, silent } from '../tester.ts';
import { note } from '../hemostasis/_hemostasis.ts';

describe('dressing/silver-sulfadiazine', () => {
  const code = 'dressing/silver-sulfadiazine';
  const of = (patient: string, what: string, site = 'left forearm'): string =>
    note([`site: ${site}`, `dressing: [${what}, gauze]`], `id: C-1, implants: none, ${patient}`);
  const pregnant = (how: string): string => `born: 1991-08-09, conditions: [${how}]`;

  it('flags it late in pregnancy, and where nobody says how far it is', () => {
    for (const how of [
      'pregnancy 37 weeks',
      '36 weeks pregnant',
      'third trimester',
      'pregnant',
      '28 weeks gestation',
    ])
      flags(code, of(pregnant(how), '⟦silver sulfadiazine⟧'), { severity: 'warning' });
    for (const how of ['12 weeks pregnant', 'first trimester', '27 weeks pregnant'])
      flags(code, of(pregnant(how), '⟦SSD cream⟧'), { severity: 'information' });
    for (const how of ['not pregnant', 'asthma']) silent(code, of(pregnant(how), 'silver sulfadiazine'));
    silent(code, of(pregnant('pregnant'), 'petrolatum'));
    silent(code, of(pregnant('pregnant'), 'silver dressing'));
  });

  it('flags it in the first 2 months of life', () => {
    flags(code, of('age: 7 weeks', '⟦silver sulfadiazine⟧'), { severity: 'warning' });
    silent(code, of('age: 2 months', 'silver sulfadiazine'));
  });

  it('flags it near the eye', () => {
    flags(code, of('age: 40 years', '⟦silver sulfadiazine⟧', 'left upper eyelid'), { severity: 'warning' });
    silent(code, of('age: 40 years', 'silver sulfadiazine', 'left cheek'));
  });
});

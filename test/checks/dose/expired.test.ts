import { flags, silent } from '../tester.ts';

const code = 'dose/expired';

const of = (expires: string, rest = ''): string =>
  `visit: 2026-03-31\npatient: {id: C-1, age: 40 years, weight: 70 kg}\nprocedures:\n  - site: left cheek\n    anesthetic: {agent: lidocaine, concentration: 1%, volume: 1 mL, expires: ${expires}}\n${rest}`;

describe(code, () => {
  it('flags a vial past its month or day', () => {
    for (const expires of [
      '2026-02',
      '02/2026',
      '2/26',
      'Feb 2026',
      'FEB-2026',
      'exp 02/2026',
      '2026-03-30',
      'December 2025',
    ])
      flags(code, of(`⟦${expires}⟧`), { severity: 'warning' });
  });

  it('is silent up to its last day', () => {
    for (const expires of ['2026-03', '03/2026', '3/26', 'Mar 2026', '2026-03-31', '2027-01', '??'])
      silent(code, of(expires));
  });

  it('goes by the day of a later injection', () => {
    const later = (expires: string): string =>
      `${of('2026-04')}events:\n  - on: 2026-05-01\n    kind: bleeding\n    anesthetic: {agent: lidocaine, concentration: 1%, volume: 1 mL, expires: ${expires}}\n`;
    flags(code, later('⟦2026-04⟧'));
    silent(code, later('2026-05'));
  });

  it('says so where it cannot be read', () => {
    for (const expires of ['next year', '13/2026', 'lot 4711'])
      flags(code, of(`⟦${expires}⟧`), { severity: 'information' });
  });
});

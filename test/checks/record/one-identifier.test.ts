import { flags, silent } from '../tester.ts';

describe('record/one-identifier', () => {
  const code = 'record/one-identifier';
  const of = (patient: string, ...specimens: readonly string[]): string =>
    `visit: 2026-03-02\n${patient}\nprocedures:\n${specimens
      .map((specimen) => `  - {site: left ear, method: punch, specimen: ${specimen}}\n`)
      .join('')}`;

  it('is said once of a note with a chart number and an age', () => {
    flags(code, of('⟦patient⟧: {id: C-1, age: 64 years}', '{label: A}', '{label: B}'), {
      severity: 'information',
    });
  });

  it('is silent with a second one, where nothing was sent, and where the age is missing too', () => {
    for (const more of ['initials: A.B.', 'born: 1961-08-09', 'dob: 1961-08-09', 'born: ??'])
      silent(code, of(`patient: {id: C-1, age: 64 years, ${more}}`, '{label: A}'));
    silent(code, of('patient: {id: C-1, age: 64 years}', '"not sent, skin tag"'));
    silent(code, of('patient: {id: C-1}', '{label: A}'));
    silent(code, 'visit: 2026-03-02\npatient: {id: C-1, age: 64 years}\n');
  });
});

import { flags, silent } from '../tester.ts';

const code = 'record/consent-of-minor';

const of = (patient: string, consent: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1, ${patient}}\nconsent: ${consent}\n`;

describe(code, () => {
  it('asks who consented for a child', () => {
    for (const consent of ['⟦verbal⟧', '⟦written⟧'])
      flags(code, of('age: 8 years', consent), { severity: 'information' });
    flags(code, of('born: 2010-03-03', '⟦written⟧'));
  });

  it('is silent from 16 years on, with a guardian, and where age or word are not known', () => {
    silent(code, of('born: 2010-03-02', 'written'));
    silent(code, of('age: 8 years', 'guardian'));
    for (const consent of ['declined', '??', '"written, by the mother"'])
      silent(code, of('age: 8 years', consent));
    silent(code, of('sex: F', 'written'));
  });
});

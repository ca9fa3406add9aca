import { flags, silent } from '../tester.ts';

const of = (anesthetic: string, more = 'conditions: [sulfite-sensitive asthma]'): string =>
  `visit: 2026-03-02\npatient: {id: C-1, age: 40 years, weight: 70 kg, ${more}}\nprocedures:\n` +
  `  - site: left upper back\n    method: punch\n    anesthetic: {${anesthetic}}\n`;

describe('allergy/sulfite-asthma', () => {
  const code = 'allergy/sulfite-asthma';
  const marked = 'agent: lidocaine, concentration: 1%, epinephrine: ⟦"1:100,000"⟧, volume: 1 mL';

  it('flags epinephrine, and procaine that holds a sulfite without it', () => {
    flags(code, of(marked), { severity: 'warning' });
    flags(code, of('agent: ⟦procaine⟧, concentration: 1%, volume: 1 mL'));
  });

  it('is silent for a plain solution, for asthma alone, and where the allergy is listed and judged', () => {
    const bare = marked.replace(/[⟦⟧]/g, '');
    silent(code, of('agent: lidocaine, concentration: 1%, volume: 1 mL'));
    silent(code, of(bare, 'conditions: [asthma]'));
    silent(code, of(bare, 'conditions: [sulfite-sensitive asthma], allergies: [sulfites]'));
  });
});

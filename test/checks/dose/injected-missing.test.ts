import { flags, silent } from '../tester.ts';

const note = (method: string, ...more: readonly string[]): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left shoulder\n    method: ${method}\n${more.map((line) => `    ${line}\n`).join('')}`;

describe('dose/injected-missing', () => {
  const code = 'dose/injected-missing';

  it('asks what was injected', () => {
    for (const method of ['injection', 'intralesional injection', 'steroid injection'])
      flags(code, note(`⟦${method}⟧`), { severity: 'warning' });
  });

  it('is information where other words name the drug', () => {
    flags(code, note('⟦intralesional triamcinolone⟧'), { severity: 'information' });
    flags(code, note('⟦injection⟧', 'remarks: triamcinolone 20 mg/mL, 0.3 mL into the nodule'), {
      severity: 'information',
    });
  });

  it('is silent where it is said, and for what injects nothing', () => {
    silent(code, note('injection', 'injected: {drug: triamcinolone}'));
    silent(code, note('injection', 'injected: ??'));
    silent(code, note('injection', 'injectd: {drug: triamcinolone}'));
    for (const method of ['cryotherapy', 'shave', 'electrodesiccation', 'laser', 'topical destruction'])
      silent(code, note(method));
  });
});

import { flags, silent } from '../tester.ts';

const immuno = '{label: B, medium: Michel, tests: [direct immunofluorescence]}';

const routine = '{label: A, medium: formalin, tests: [routine histology]}';

const note = (size: string, specimens: string, method = 'punch'): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left upper back\n    method: ${method}\n    size: ${size}\n    specimen: [${specimens}]\n`;

/** 4 to 5 mm, 5 mm where divided: pages of an immunodermatology laboratory; 3 mm: an older laboratory entry. */
describe('specimen/small-for-immunofluorescence', () => {
  const code = 'specimen/small-for-immunofluorescence';

  it('flags less than 3 mm, and less than 5 mm for two containers', () => {
    flags(code, note('⟦2.5 mm⟧', immuno), { severity: 'information' });
    flags(code, note('⟦4 mm⟧', `${routine}, ${immuno}`), { severity: 'information' });
  });

  it('is silent from there on, for other tests, and for other methods', () => {
    silent(code, note('3 mm', immuno));
    silent(code, note('5 mm', `${routine}, ${immuno}`));
    silent(code, note('2 mm', routine));
    silent(
      code,
      note('4 mm', `${routine}, {label: C, medium: sterile container, tests: [bacterial culture]}`),
    );
    silent(code, note('4 mm', `${immuno}, {not-sent: discarded remainder}`));
    silent(code, note('4 mm', `${routine}, ${immuno}`, 'shave'));
  });
});

import { flags, silent } from '../tester.ts';

const note = (specimen: string, remarks: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: chin\n    method: punch\n    specimen:\n${specimen}    remarks: "${remarks}"\n`;
const michel = '      - {label: A, medium: Michel, tests: [direct immunofluorescence]}\n';
const both = `${michel}      - {label: B, medium: formalin, tests: [routine histology]}\n`;

describe('specimen/told-medium', () => {
  const code = 'specimen/told-medium';

  it('flags a text that puts the tissue into a fixative, whatever the key says', () => {
    flags(code, note(michel, 'went into ⟦formalin⟧ first'), { severity: 'error' });
    flags(code, note(michel, '⟦formalin⟧ used, Michel was out'), { severity: 'error' });
  });

  it('flags what is left open as a warning', () => {
    flags(code, note(michel, 'may have been ⟦formalin⟧'), { severity: 'warning' });
  });

  it('asks which specimen is meant where another belongs into it', () => {
    silent(code, note(both, 'B in formalin'));
    flags(code, note(both, 'the DIF piece was put into ⟦formalin⟧'), { severity: 'error' });
  });

  it('is silent on what was not, and where no test suffers', () => {
    silent(code, note(michel, 'not placed in formalin'));
    silent(code, note(michel, 'formalin put away before the start'));
    silent(
      code,
      note('      - {label: A, medium: formalin, tests: [routine histology]}\n', 'in formalin at once'),
    );
  });
});

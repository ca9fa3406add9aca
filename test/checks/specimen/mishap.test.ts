import { flags, silent } from '../tester.ts';

const note = (remarks: string, more = ''): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: chin\n    method: shave\n    remarks: "${remarks}"\n${more}`;

describe('specimen/mishap', () => {
  const code = 'specimen/mishap';
  const severity = 'warning';

  it('flags tissue that is lost, and a container that is empty', () => {
    flags(code, note('the sample is ⟦missing⟧'), { severity });
    flags(code, note(`⟦can't find⟧ the specimen bottle`), { severity });
    flags(code, note('the tissue went ⟦down the sink⟧'), { severity });
    flags(code, note('the laboratory says that the bottle was ⟦empty⟧'), { severity });
    flags(code, note('container ⟦broke⟧ in transit'), { severity });
    flags(code, note('the jar ⟦leaked⟧'), { severity });
  });

  it('flags specimens without a label, mixed up, or in one container', () => {
    flags(code, note('the second jar had ⟦no label⟧'), { severity });
    flags(code, note('A and B were ⟦swapped⟧'), { severity });
    flags(code, note('they ⟦forgot to label⟧ the jar'), { severity });
    flags(code, note('two samples in the ⟦same bottle⟧ by mistake'), { severity });
  });

  it('flags tissue that was dropped or stayed in the house, and a test that is refused', () => {
    flags(code, note('the piece was ⟦dropped⟧'), { severity });
    flags(code, note('the specimen was ⟦found in the drawer⟧ on Friday'), { severity });
    flags(code, note('immunofluorescence ⟦could not be done⟧'), { severity });
  });

  it('is silent where the note says what was done, in whatever text', () => {
    silent(code, note('the piece was dropped; patient told, biopsy repeated'));
    silent(
      code,
      note(
        'the jar had no label',
        'addenda:\n  - {on: 2026-03-03, by: T.L., text: identity confirmed by the clinician}\n',
      ),
    );
  });

  it('is silent on what was not, is feared, or is of something else', () => {
    silent(code, note('no specimen was lost'));
    silent(code, note('call if the sample is lost'));
    silent(code, note('blood pressure dropped after the shave'));
    silent(code, note('lost to follow-up, sample benign'));
    silent(code, note('container and label checked, matches'));
  });
});

import { flags, silent } from '../tester.ts';

const note = (key: string, text: string, site = 'left upper back'): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: ${site}\n    method: shave\n    ${key}: "${text}"\n`;

describe('allergy/reaction-told', () => {
  const code = 'allergy/reaction-told';
  const severity = 'warning';

  it('flags hives, swelling and trouble breathing at the visit', () => {
    flags(code, note('complications', '⟦hives⟧ on both arms'), { severity });
    flags(code, note('complications', '⟦lip swelling⟧ after the injection'), { severity });
    flags(code, note('remarks', '⟦wheezing⟧ ten minutes after the injection'), { severity });
  });

  it('is silent once the note says what was done', () => {
    silent(code, note('complications', 'hives on both arms, diphenhydramine given'));
  });

  it('is silent on the disease that is sampled, on what was not, and on swelling where it was injected', () => {
    silent(code, note('remarks', 'hives for three weeks, one sampled'));
    silent(code, note('complications', 'no hives, no wheezing'));
    silent(code, note('complications', 'lip swelling', 'left upper lip'));
  });
});

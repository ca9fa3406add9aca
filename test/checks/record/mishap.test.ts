import { flags, silent } from '../tester.ts';

const note = (complications: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: chin\n    method: shave\n    complications: "${complications}"\n`;

describe('record/mishap', () => {
  const code = 'record/mishap';
  const severity = 'warning';

  it('flags a wrong place, a sharp, a missing consent, a date that was over, a recall and an injury', () => {
    flags(code, note('the ⟦wrong lesion⟧ was taken'), { severity });
    flags(code, note('⟦needle stick⟧ of the nurse'), { severity });
    flags(code, note('⟦consent was not signed⟧'), { severity });
    flags(code, note('the vial of lidocaine was ⟦expired⟧'), { severity });
    flags(code, note('this lot was ⟦recalled⟧'), { severity });
    flags(code, note('slid down and ⟦hit his head⟧'), { severity });
    flags(code, note('⟦fell off the exam table⟧'), { severity });
  });

  it('is silent once the note says what was done', () => {
    silent(code, note('wrong lesion taken, patient told, right one biopsied'));
    silent(code, note('needle stick of the nurse, washed and reported'));
    silent(code, note('the expired vial was discarded and replaced'));
    silent(code, note('hit his head, examined, no injury'));
  });

  it('is silent on what was not, is feared, or was long ago', () => {
    silent(code, note('no needlestick'));
    silent(code, note('the patient cut himself shaving this morning'));
    silent(code, note('time-out to prevent a wrong site'));
    silent(code, note('history of head injury'));
    silent(code, note('photo of the skin, expired passport'));
  });
});

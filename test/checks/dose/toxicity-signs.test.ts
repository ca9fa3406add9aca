import { flags, silent } from '../tester.ts';

const note = (complications: string, site = 'left upper back'): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: ${site}\n    method: shave\n    anesthetic: {agent: lidocaine, concentration: 1%, volume: 2 mL}\n    complications: "${complications}"\n`;

describe('dose/toxicity-signs', () => {
  const code = 'dose/toxicity-signs';
  const severity = 'warning';

  it('flags the first signs and a seizure', () => {
    flags(code, note('a ⟦metallic taste⟧ for a minute'), { severity });
    flags(code, note('⟦seizure⟧ a minute after the injection'), { severity });
    flags(code, note('⟦tongue numb⟧, a little dizzy'), { severity });
  });

  it('is silent once the patient was watched or treated', () => {
    silent(code, note('metallic taste; vital signs normal, observed for an hour'));
  });

  it('is silent on what was not, is old, or comes from an injection beside the mouth', () => {
    silent(code, note('no seizure'));
    silent(code, note('known tinnitus'));
    silent(code, note('call if ringing in the ears'));
    silent(code, note('lip tingling', 'left upper lip'));
  });
});

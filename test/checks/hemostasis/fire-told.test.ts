import { flags, silent } from '../tester.ts';

const note = (hemostasis: string, remarks: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: chin\n    method: shave\n    hemostasis: ${hemostasis}\n    remarks: "${remarks}"\n`;

describe('hemostasis/fire-told', () => {
  const code = 'hemostasis/fire-told';
  const severity = 'warning';

  it('flags oxygen and a wet preparation beside heat or a spark', () => {
    flags(code, note('electrosurgery', 'on 3 L ⟦oxygen⟧'), { severity });
    flags(code, note('heat cautery', 'the alcohol was ⟦still wet⟧'), { severity });
  });

  it('flags a fire and a burn in any case', () => {
    flags(code, note('pressure', 'the drape ⟦caught fire⟧'), { severity });
    flags(code, note('pressure', 'the gown ⟦caught a spark⟧'), { severity });
    flags(code, note('pressure', 'a ⟦burn⟧ below the return pad'), { severity });
  });

  it('is silent without heat, where the oxygen was off, where it is denied, and once it was dealt with', () => {
    silent(code, note('pressure', 'on 3 L oxygen'));
    silent(code, note('electrosurgery', 'oxygen off for two minutes before'));
    silent(code, note('electrosurgery', 'no oxygen in use'));
    silent(code, note('electrosurgery', 'O2 sat 98%'));
    silent(code, note('electrosurgery', 'the alcohol was dry before'));
    silent(code, note('pressure', 'a burn below the pad, cooled, patient told'));
    silent(code, note('pressure', 'burn scar beside the lesion, hair around it'));
  });
});

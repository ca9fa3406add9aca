import { flags, silent } from '../tester.ts';
import { note } from './_birth.ts';

describe('record/born-after-visit', () => {
  it('flags the date of birth', () => {
    flags('record/born-after-visit', note('born: ⟦2026-03-03⟧'), { severity: 'error' });
  });

  it('is silent on the day of birth, and where one of the dates is not known', () => {
    silent('record/born-after-visit', note('born: 2026-03-02'));
    silent('record/born-after-visit', note('born: ??'));
    silent('record/born-after-visit', note('born: 2026-03-03', '??'));
  });
});

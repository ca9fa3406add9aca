import { flags, silent } from '../tester.ts';
import { note } from './_time-out.ts';

describe('record/time-out-not-held', () => {
  it('flags the word', () => {
    flags('record/time-out-not-held', note('⟦no⟧'), { severity: 'warning' });
  });

  it('is silent where it was held or is not yet known', () => {
    for (const timeOut of ['done', '10:12', '??']) silent('record/time-out-not-held', note(timeOut));
  });
});

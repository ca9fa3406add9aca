import { flags, silent } from '../tester.ts';
import { received } from './_results.ts';

describe('follow-up/attempts-only', () => {
  const code = 'follow-up/attempts-only';
  const tried = (how: string): string =>
    received(`          diagnosis: psoriasis\n          told: ⟦{on: 2026-03-10, by: K.O., how: ${how}}⟧\n`);
  it('takes no attempt for telling', () => {
    for (const how of [
      'voicemail',
      'left voicemail',
      '"telephone, no answer"',
      'could not be reached',
      'LVM',
    ])
      flags(code, tried(how), { today: '2026-03-13', severity: 'warning' });
  });
  it('takes what reaches the patient for telling', () => {
    for (const how of ['telephone', 'visit', 'letter', 'portal message', 'in person'])
      silent(code, tried(how).replace(/[⟦⟧]/g, ''), { today: '2026-03-13' });
  });
  it('is said once', () => {
    silent('follow-up/not-told', tried('voicemail').replace(/[⟦⟧]/g, ''), { today: '2026-03-13' });
  });
});

import { flags, silent } from '../tester.ts';
import { note } from './_results.ts';

describe('follow-up/specimen-not-sent', () => {
  const code = 'follow-up/specimen-not-sent';
  const unsent = note('      label: A\n').replace('specimen', '⟦specimen⟧');
  it('speaks from the second working day after the visit on', () => {
    flags(code, unsent, { today: '2026-03-04', severity: 'warning' });
    silent(code, unsent.replace(/[⟦⟧]/g, ''), { today: '2026-03-03' });
  });
  it('is silent once it is sent, once a result is there, and where the day is still to be filled in or cannot be read', () => {
    for (const rest of [
      '      sent: 2026-03-05\n',
      '      results: {received: 2026-03-09, diagnosis: nevus}\n',
      '      sent: 03/05/2026\n',
    ])
      silent(code, note(`      label: A\n${rest}`), { today: '2026-05-04' });
  });
  it('is silent about what was not sent with a reason', () => {
    silent(code, note('').replace('specimen:\n', 'specimen: not sent, typical skin tag\n'), {
      today: '2026-05-04',
    });
  });
});

import { flags, silent } from '../tester.ts';
import { sent } from './_specimen.ts';

describe('specimen/not-sent-with-result', () => {
  const code = 'specimen/not-sent-with-result';

  it('flags a result and a day of sending beside "not sent"', () => {
    flags(code, sent('{not-sent: benign skin tag, ⟦result⟧: {received: 2026-03-09, diagnosis: skin tag}}'), {
      severity: 'warning',
      today: '2026-03-10',
    });
    flags(code, sent('{not-sent: benign skin tag, ⟦sent⟧: 2026-03-02}'), { severity: 'warning' });
  });

  it('is silent where one of the two is said, or nothing is known yet', () => {
    silent(code, sent('{not-sent: benign skin tag}'));
    silent(code, sent('not sent, benign skin tag'));
    silent(code, sent('{label: A, sent: 2026-03-02, result: {received: 2026-03-09, diagnosis: skin tag}}'));
    silent(code, sent('{not-sent: benign skin tag, sent: ??}'));
  });
});

import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';
import { sent } from './_specimen.ts';

describe('specimen/not-sent-without-reason', () => {
  it('flags "not sent" alone, and words that were meant for something else', () => {
    for (const words of ['not sent', 'Not sent.', 'none', '{not-sent: no}'])
      flags(
        'specimen/not-sent-without-reason',
        sent(words.includes('{') ? '{not-sent: ⟦no⟧}' : `⟦${words}⟧`),
        {
          severity: 'warning',
        },
      );
    const [finding] = flags('specimen/not-sent-without-reason', sent('⟦skin tag, no pathology⟧'));
    assert.equal(finding?.form, 'misplaced');
  });

  it('is silent on what says that a specimen was sent', () => {
    for (const words of ['sent', 'sent to pathology', 'formalin', 'A, formalin', 'yes', 'A'])
      silent('specimen/not-sent-without-reason', sent(words));
  });

  it('is silent on a reason', () => {
    for (const words of [
      'not sent, benign skin tag',
      'not sent - patient declined',
      '{not-sent: benign skin tag}',
      '??',
    ])
      silent('specimen/not-sent-without-reason', sent(words));
  });
});

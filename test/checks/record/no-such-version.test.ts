import assert from 'node:assert/strict';
import { fixed, flags, silent } from '../tester.ts';

describe('record/no-such-version', () => {
  it('flags a version before the first, and offers 1', () => {
    flags('record/no-such-version', 'wheal: ⟦0⟧\nvisit: 2026-03-02\n', { severity: 'warning' });
    assert.equal(
      fixed('record/no-such-version', 'wheal: 0\nvisit: 2026-03-02\n', 'Write 1'),
      'wheal: 1\nvisit: 2026-03-02\n',
    );
  });

  it('is silent for version 1, none and not yet known', () => {
    for (const head of ['wheal: 1\n', '', 'wheal: ??\n'])
      silent('record/no-such-version', `${head}visit: 2026-03-02\n`);
  });
});

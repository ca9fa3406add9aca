import assert from 'node:assert/strict';
import { checkFailed, moreFindings } from '../../../src/checks/record/judging.ts';
import { silent } from '../tester.ts';

// When the runner reports these is tested with the runner.
describe('findings about the checking itself', () => {
  it('are of the runner alone: no note brings them about', () => {
    for (const { code } of [checkFailed, moreFindings]) silent(code, 'visit: 2026-03-02\n');
  });

  it('say what was not looked at', () => {
    assert.match(checkFailed.messages['main'] ?? '', /\{check\}/);
    assert.match(moreFindings.messages['main'] ?? '', /\{more\}/);
  });
});

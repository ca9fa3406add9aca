import assert from 'node:assert/strict';
import { readYesNo } from '../../../src/note/values/yes-no.ts';
import { problemsOf } from '../spelled.ts';

describe('reading yes and no', () => {
  it('reads both in the usual spellings', () => {
    for (const text of ['yes', 'Yes', 'Y', 'true', 'done', ' yes '])
      assert.equal(readYesNo(text).value, true, text);
    for (const text of ['obtained', 'in chart', 'on file']) assert.equal(readYesNo(text).value, true, text);
    for (const text of ['no', 'NO', 'n', 'false', 'none', 'declined', 'refused'])
      assert.equal(readYesNo(text).value, false, text);
  });

  it('takes no other word for one of them', () => {
    assert.deepEqual(problemsOf('maybe', readYesNo('maybe')), ['quantity/unreadable/yesno [maybe]']);
    assert.deepEqual(problemsOf('nope', readYesNo('nope')), ['quantity/unreadable/yesno [nope]']);
    assert.deepEqual(problemsOf('yes, two views', readYesNo('yes, two views')), [
      'quantity/not-understood/behind [two views]',
    ]);
  });
});

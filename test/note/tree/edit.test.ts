import assert from 'node:assert/strict';
import fc from 'fast-check';
import { applyEdits } from '../../../src/note/tree/edit.ts';

describe('applying edits', () => {
  it('replaces, inserts and deletes in one go, in any order', () => {
    const edits = [
      { start: 6, end: 7, text: '' },
      { start: 0, end: 1, text: 'A' },
      { start: 3, end: 3, text: '-' },
    ];
    assert.equal(applyEdits('abcdefg', edits), 'Abc-def');
  });

  it('refuses edits that overlap or lie outside', () => {
    assert.throws(
      () =>
        applyEdits('abc', [
          { start: 0, end: 2, text: '' },
          { start: 1, end: 3, text: '' },
        ]),
      RangeError,
    );
    assert.throws(() => applyEdits('abc', [{ start: 2, end: 4, text: '' }]), RangeError);
  });

  it('leaves everything outside of an edit as it was', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), fc.nat(), fc.nat(), (text, replacement, a, b) => {
        const [start, end] = [a % (text.length + 1), b % (text.length + 1)].sort((x, y) => x - y) as [
          number,
          number,
        ];
        const result = applyEdits(text, [{ start, end, text: replacement }]);
        assert.equal(result.slice(0, start), text.slice(0, start));
        assert.equal(result.slice(start + replacement.length), text.slice(end));
      }),
    );
  });
});

import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { TextEdit } from '../../../src/note/tree/finding.ts';
import { applyEdits, composed } from '../../../src/note/tree/edit.ts';

/** Edits that do not overlap, made of places that come one after the other. */
const editsOf = (length: number, places: readonly number[], texts: readonly string[]): TextEdit[] => {
  const sorted = [...new Set(places.map((place) => place % (length + 1)))].sort((a, b) => a - b);
  return texts.flatMap((text, at) => {
    const [start, end] = [sorted[2 * at], sorted[2 * at + 1]];
    return start === undefined || end === undefined ? [] : [{ start, end, text }];
  });
};

describe('two rounds of edits', () => {
  it('are one that does the same', () => {
    const round = fc.tuple(
      fc.array(fc.nat(), { maxLength: 8 }),
      fc.array(fc.string({ maxLength: 4 }), { maxLength: 4 }),
    );
    fc.assert(
      fc.property(fc.string({ maxLength: 30 }), round, round, (text, one, other) => {
        const first = editsOf(text.length, ...one);
        const between = applyEdits(text, first);
        const second = editsOf(between.length, ...other);
        assert.equal(applyEdits(text, composed(text, first, second)), applyEdits(between, second));
      }),
      { numRuns: 2000 },
    );
  });
});

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

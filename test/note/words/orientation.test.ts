import assert from 'node:assert/strict';
import fc from 'fast-check';
import { readOrientation } from '../../../src/note/words/orientation.ts';

/** The marks of a text in one line each: which, kind, places. */
const marksOf = (text: string): readonly string[] =>
  readOrientation(text).marks.map(({ kind, which, places }) =>
    [which, kind, ...places.map(({ hour, direction }) => String(hour ?? direction))]
      .filter((part) => part !== undefined && part !== '')
      .join(' '),
  );

describe('words on how a specimen is turned', () => {
  it('are read as marks and their places', () => {
    for (const [text, ...marks] of [
      ["suture at 12 o'clock", 'suture 12'],
      ["stitch at twelve o'clock", 'suture 12'],
      ['suture tag 12:00', 'suture 12'],
      ['suture at 12', 'suture 12'],
      ["sutures at 12 and 3 o'clock", 'suture 12 3'],
      ['short suture superior, long suture lateral', 'short suture superior', 'long suture lateral'],
      ['short superior, long lateral', 'short superior', 'long lateral'],
      ['black nick superior, long suture lateral', 'black nick superior', 'long suture lateral'],
      ['ink: blue superior, black inferior', 'blue ink superior', 'black ink inferior'],
      ["suture 12 o'clock, nick 3 o'clock", 'suture 12', 'nick 3'],
      ['superior suture, inferior ink', 'suture superior', 'ink inferior'],
      [
        "superior short suture (12 o'clock), inferior long suture",
        'short suture superior 12',
        'long suture inferior',
      ],
      ['suture superior ink inferior', 'suture superior', 'ink inferior'],
      ['silk tag at the cephalad tip', 'suture superior'],
      ['inked at the medial margin', 'ink medial'],
      ['suture at superior tip of the lower lesion', 'suture superior'],
      ["12 o'clock toward the shoulder", '12'],
      ['suture 3 mm from the edge', 'suture'],
      ['sent for margins'],
    ] as const)
      assert.deepEqual(marksOf(text), marks, text);
  });

  it('may say that there is no mark', () => {
    for (const text of ['not oriented', 'unoriented', 'none', 'no orientation'])
      assert.ok(readOrientation(text).unoriented !== undefined, text);
    assert.equal(readOrientation('suture superior').unoriented, undefined);
  });

  it('are read whatever the text is, and each place lies in it', () => {
    const word = fc.constantFrom(
      ...['suture', 'ink', '12', "o'clock", 'superior', 'of', 'the', ',', 'long', '=', 'at', '99', 'É'],
    );
    fc.assert(
      fc.property(fc.array(word, { maxLength: 40 }), (words) => {
        const text = words.join(' ');
        for (const { places } of readOrientation(text).marks)
          for (const { from, to } of places) assert.ok(from < to && to <= text.length);
      }),
    );
  });
});

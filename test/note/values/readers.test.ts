import assert from 'node:assert/strict';
import fc from 'fast-check';
import { readInjectionLine } from '../../../src/note/words/dictated.ts';
import { wholeInterval } from '../../../src/note/values/intervals.ts';
import { readers } from '../../../src/note/values/readers.ts';

const pieces = fc.constantFrom(
  ...[
    '1',
    '0',
    '.',
    ',',
    ':',
    ' ',
    '-',
    '/',
    'x',
    'mL',
    'kg',
    '%',
    'mg',
    'cm',
    'µ',
    'years',
    'to',
    '2026',
    '03',
    'am',
  ],
  ...[
    'yes',
    'no',
    'epi',
    'lidocaine',
    'lot',
    'w/',
    '\u00a0',
    '\n',
    '𝟙',
    '(',
    '__proto__',
    'in',
    'at',
    '9:1',
    '"',
    "'",
  ],
);
const texts = fc.oneof(
  fc.string(),
  fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join('')),
);

describe('every reader', () => {
  for (const [name, reader] of readers) {
    it(`answers any text: ${name}`, () => {
      fc.assert(
        fc.property(texts, fc.constantFrom('volume', 'amount', 'height', 'constructor'), (text, key) => {
          const { value, problems } = reader(text, key);
          // The day of an interval depends on the visit: it is read with the whole note.
          const later = name === 'plannedDay' && wholeInterval(text) !== undefined;
          assert.ok(value !== undefined || later || problems.length > 0, 'it has no value and says nothing');
          for (const { at } of problems)
            assert.ok(
              at.start >= 0 && at.start <= at.end && at.end <= text.length,
              'a problem outside of the text',
            );
        }),
      );
    });
  }

  it('takes the lesser end of a margin whose ends are a millimeter apart, and of no wider one', () => {
    const margin = (text: string): unknown => readers.get('length')!(text, 'margin').value;
    assert.deepEqual(margin('1-2 mm'), margin('1 mm'));
    assert.deepEqual(margin('4 to 5 mm'), margin('4 mm'));
    for (const text of ['2-5 mm', '2-1 mm']) assert.equal(margin(text), undefined, text);
    assert.equal(readers.get('length')!('1-2 mm', 'height').value, undefined);
  });

  // A regular expression that goes back over the text for each of its characters takes far longer than the timeout.
  it('answers very long texts at once', () => {
    const repeated = '1|1,|1.| |1 x |1:|a|mL |1 mL |-|\u00a0|0|x|1-|no |20|jan '.split('|');
    for (const piece of repeated) {
      const body = piece.repeat(100_000 / piece.length);
      for (const text of [body, `1${body}!`, `1 ${body}mL`, `${body}!`]) {
        for (const [name, reader] of readers) {
          const { value, problems } = reader(text, 'volume');
          assert.ok(value !== undefined || problems.length > 0, name);
        }
        const { fields, problems } = readInjectionLine(text);
        assert.ok(fields.length + problems.length > 0);
      }
    }
  });
});

describe('a dictated line of any words', () => {
  it('states parts of the text, each key once, and problems in parts of it', () => {
    fc.assert(
      fc.property(texts, (text) => {
        const { fields, problems } = readInjectionLine(text);
        assert.equal(new Set(fields.map(({ key }) => key)).size, fields.length);
        const places = [
          ...fields.map(({ from, to }) => ({ start: from, end: to })),
          ...problems.map(({ at }) => at),
        ];
        for (const { start, end } of places) assert.ok(start >= 0 && start <= end && end <= text.length);
      }),
    );
  });
});

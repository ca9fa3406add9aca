import assert from 'node:assert/strict';
import { join } from 'node:path';
import fc from 'fast-check';
import { ownWords } from '../../../src/build/words/own-words.ts';
import { isOneSlip, realWords, realWordsText } from '../../../src/build/words/real-words.ts';
import { nearest } from '../../../src/note/text/nearest.ts';
import { packed, unpacked } from '../../../src/note/text/packed-words.ts';
import { WordTable } from '../../../src/note/words/word-table.ts';
import type { WordRow } from '../../../src/reference/types.ts';
import { referenceTables } from '../../../src/practice/tables.ts';

const root = join(import.meta.dirname, '..', '..', '..');

describe('the list of words that are no slips', () => {
  it('goes by every table of words', () => {
    const own = ownWords([]);
    const { followUp, ...rest } = referenceTables;
    for (const table of [...Object.values(rest), ...Object.values(followUp)] as unknown[]) {
      if (!(table instanceof WordTable)) continue;
      for (const text of (table as WordTable<WordRow>).words)
        for (const word of text.split(/[^a-z]+/)) assert.ok(word.length < 3 || own.has(word), word);
    }
  });

  it('has English words near ours, and ours near those of other rows', () => {
    const [one, other] = [{}, {}];
    const own = new Map([
      ['sterile', new Set([one])],
      ['infection', new Set([one])],
      ['infections', new Set([one])],
      ['procaine', new Set([one])],
      ['prxcaine', new Set([other])],
    ]);
    const english = ['injection', 'unsterile', 'serile', 'steriles', 'bird', 'infection'];
    assert.deepEqual(realWords(english, own), [
      'infection',
      'injection',
      'procaine',
      'prxcaine',
      'serile',
      'steriles',
    ]);
  });

  it('is made alike each time, and kept where nothing has changed', () => {
    const made = realWordsText(root, ['site'], '');
    assert.equal(realWordsText(root, ['site'], ''), made);
    assert.equal(realWordsText(root, ['site'], `${made}// kept`), `${made}// kept`);
    assert.notEqual(realWordsText(root, ['sites'], made), made);
  });

  it('counts a slip as the nearest match does', () => {
    const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), minLength: 3, maxLength: 6 });
    fc.assert(
      fc.property(word, word, (a, b) => {
        fc.pre(a !== b && a.length < 6);
        assert.equal(isOneSlip(a, b), nearest(a, [b]) !== undefined);
      }),
    );
  });

  it('packs any words', () => {
    const word = fc.stringMatching(/^[a-z]{1,40}$/);
    fc.assert(
      fc.property(fc.uniqueArray(word), (words) => {
        const sorted = [...words].sort();
        assert.deepEqual([...unpacked(packed(sorted))], sorted);
      }),
    );
  });
});

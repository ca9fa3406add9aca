import assert from 'node:assert/strict';
import fc from 'fast-check';
import { nearest, nearestKey } from '../../../src/note/text/nearest.ts';
import { times } from '../../share.ts';

const keys = ['site', 'size', 'method', 'margin', 'hemostasis', 'specimen', 'constructor'];

describe('nearest match', () => {
  for (const [typed, word] of [
    ['siite', 'site'],
    ['methdo', 'method'],
    ['Method', 'method'],
    ['hemostassis', 'hemostasis'],
    ['speciemn', 'specimen'],
  ] as const)
    it(`takes ${typed} for ${word}`, () => {
      assert.deepEqual(nearest(typed, keys), { word, sure: true, other: false });
    });

  it('is not sure between two words that are equally near', () => {
    assert.equal(nearest('sixe', keys)?.sure, false);
    assert.equal(nearest('methot', keys)?.sure, true);
  });

  it('is not sure of a word that is one itself', () => {
    for (const [typed, known] of [
      ['injection', 'infection'],
      ['cytology', 'mycology'],
      ['call', 'fall'],
      ['indirect', 'direct'],
      ['unsterile', 'sterile'],
      ['uninvolved skin', 'involved skin'],
      ['inject site', 'infect site'],
      ['ropivacaine', 'bupivacaine'],
    ] as const) {
      const near = nearest(typed, [known]);
      assert.notEqual(near?.sure, true, typed);
      assert.notEqual(near?.other, false, typed);
    }
  });

  it('is sure where two words for one thing are equally near', () => {
    const meaning = (word: string): string => word.replace('ae', 'e');
    const words = ['anesthetic', 'anaesthetic'];
    assert.deepEqual(nearest('anasthetic', words, meaning), { word: 'anesthetic', sure: true, other: false });
    assert.equal(nearest('anasthetic', words)?.sure, false);
  });

  it('is not sure of a short word with two slips', () => {
    assert.deepEqual(nearest('margee', ['margin']), { word: 'margin', sure: false, other: true });
  });

  it('takes no number for another', () => {
    for (const typed of ['lido 2% epi', 'lido 10% epi', 'lido % epi'])
      assert.equal(nearest(typed, ['lido 1% epi']), undefined, typed);
    assert.deepEqual(nearest('lidoo 1% epi', ['lido 2% epi', 'lido 1% epi']), {
      word: 'lido 1% epi',
      sure: true,
      other: false,
    });
  });

  it('finds nothing for a word that is not near, or too short to tell', () => {
    assert.equal(nearest('bandage', keys), undefined);
    assert.equal(nearest('on', ['by']), undefined);
    assert.equal(nearest('__proto__', keys), undefined);
    assert.equal(nearest('x'.repeat(100_000), keys), undefined);
  });

  it('finds any word with one letter left out, whatever else is known', () => {
    fc.assert(
      fc.property(fc.constantFrom(...keys), fc.nat(), (word, at) => {
        const cut = at % word.length;
        assert.equal(nearest(word.slice(0, cut) + word.slice(cut + 1), [word])?.word, word);
      }),
    );
  });

  it('counts slips as the whole table of them does', () => {
    const letters = (...some: readonly string[]): fc.Arbitrary<string> =>
      fc.string({ unit: fc.constantFrom(...some), minLength: 1, maxLength: 8 });
    const word = fc.oneof(letters('a', 'b', 'c'), letters('a', 'b', 'c', 'd', 'e', 'f', 'q', ' ', '-'));
    fc.assert(
      fc.property(word, word, (typed, known) => {
        const allowed = typed.length < 3 ? 0 : typed.length < 6 ? 1 : 2;
        assert.equal(nearest(typed, [known]) !== undefined, slipsBetween(typed, known) <= allowed);
      }),
      { numRuns: times(2000) },
    );
  });
});

describe('nearest key', () => {
  const index = new Map([
    ['anesthetic', 1],
    ['anaesthetic', 1],
    ['specimen', 2],
    ['on', 3],
    ['born', 4],
    ['bore', 5],
  ]);

  it('is read as meant, however short it is and whatever its letters spell', () => {
    for (const [typed, key] of [
      ['anasthetic', 1],
      ['n', 3],
      ['born ', 4],
    ] as const)
      assert.deepEqual(
        { key: nearestKey(typed, index)?.key, meant: nearestKey(typed, index)?.meant },
        { key, meant: true },
        typed,
      );
    assert.equal(nearestKey('specimens', index)?.sure, true);
    assert.equal(nearestKey('anasthetic', index)?.sure, true);
  });

  it('is read as neither of two that are as near, and names both', () => {
    const near = nearestKey('borx', index);
    assert.deepEqual([near?.word, near?.rivals, near?.meant, near?.sure], ['born', ['bore'], false, false]);
  });

  it('puts no key in the place of a word that is one itself', () => {
    assert.deepEqual(nearestKey('bound', new Map([['wound', 1]]))?.sure, false);
  });
});

/** Letters left out, added, changed or swapped with their neighbor, each cell worked out from those before it. */
function slipsBetween(a: string, b: string): number {
  const cells = new Map<string, number>();
  const at = (i: number, j: number): number => cells.get(`${i} ${j}`) ?? Math.max(i, j);
  for (let i = 1; i <= a.length; i++)
    for (let j = 1; j <= b.length; j++) {
      const swapped = a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? at(i - 2, j - 2) + 1 : Infinity;
      const changed = at(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      cells.set(`${i} ${j}`, Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, changed, swapped));
    }
  return at(a.length, b.length);
}

import assert from 'node:assert/strict';
import fc from 'fast-check';
import { nearest } from '../../src/note/nearest.ts';

const keys = ['site', 'size', 'method', 'margin', 'hemostasis', 'specimen', 'constructor'];

describe('nearest match', () => {
  for (const [typed, word] of [
    ['sit', 'site'],
    ['methdo', 'method'],
    ['Method', 'method'],
    ['hemostassis', 'hemostasis'],
    ['speciemn', 'specimen'],
    ['specimens', 'specimen'],
  ] as const)
    it(`takes ${typed} for ${word}`, () => {
      assert.deepEqual(nearest(typed, keys), { word, sure: true });
    });

  it('is not sure between two words that are equally near', () => {
    assert.equal(nearest('sixe', keys)?.sure, false);
    assert.equal(nearest('methot', keys)?.sure, true);
  });

  it('is not sure of a short word with two slips', () => {
    assert.deepEqual(nearest('margee', ['margin']), { word: 'margin', sure: false });
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
});

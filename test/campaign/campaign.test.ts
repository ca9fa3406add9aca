import assert from 'node:assert/strict';
import { times } from '../share.ts';
import { parts, smallest, type Failure } from './parts.ts';
import { Random } from './random.ts';

/** How often each part tries here; `npm run campaign` tries as often as it is told. */
const counts: Readonly<Record<string, number>> = {
  texts: 100,
  'same meaning': 200,
  'one slip': 300,
  service: 10,
};

describe('a campaign', () => {
  for (const [name, { tried }] of Object.entries(parts))
    it(`finds nothing: ${name}`, function () {
      this.timeout(300_000);
      const random = new Random(20260302);
      for (let left = times(counts[name] ?? 0); left > 0; left--) {
        const failure = tried(random);
        assert.equal(failure && `${failure.what}\n${JSON.stringify(smallest(failure))}`, undefined);
      }
    });

  it('tries the same for the same seed, and something for each part', () => {
    for (const name of Object.keys(parts)) assert.ok((counts[name] ?? 0) > 0, name);
    const draw = (seed: number): readonly number[] => {
      const random = new Random(seed);
      return [random.next(), random.below(100), ...random.mixed([1, 2, 3])];
    };
    assert.deepEqual(draw(7), draw(7));
    assert.notDeepEqual(draw(7), draw(8));
  });

  it('makes a text that fails as small as it still fails', () => {
    const failure: Failure = { text: 'one\ntwo x\nthree', what: 'x', again: (text) => text.includes('x') };
    assert.equal(smallest(failure), 'x');
  });
});

import assert from 'node:assert/strict';
import { readCount, readDecimal } from '../../../src/note/values/count.ts';
import { problemsOf } from '../spelled.ts';

describe('reading counts and numbers', () => {
  it('reads whole numbers, none included', () => {
    assert.deepEqual(
      ['0', '2', 'two', 'Twelve', '3 stitches', '3 sutures', '1.0'].map((text) => readCount(text).value),
      [0, 2, 2, 12, 3, 3, 1],
    );
  });

  it('refuses parts, negatives and other words', () => {
    const said = (text: string): readonly string[] => problemsOf(text, readCount(text));
    for (const text of ['2.5', 'some', '', '01', 'constructor'])
      assert.equal(readCount(text).value, undefined, text);
    assert.deepEqual(said('2.5'), ['quantity/unreadable [2.5]']);
    assert.deepEqual(said('-1'), ['quantity/not-positive/negative [-1]']);
    assert.deepEqual(said('3 nylon'), ['quantity/not-understood/behind [nylon]']);
    assert.deepEqual(said('20000'), ['quantity/implausible/count [20000]']);
  });

  it('reads decimals', () => {
    assert.deepEqual(readDecimal('4.5'), { value: 4.5, problems: [] });
    assert.deepEqual(readDecimal('300'), { value: 300, problems: [] });
    assert.deepEqual(problemsOf('.5', readDecimal('.5')), ['quantity/leading-zero [.5] -> 0.5!']);
    assert.deepEqual(problemsOf('4,5', readDecimal('4,5')), ['quantity/decimal-comma [4,5] -> 4.5']);
    assert.deepEqual(problemsOf('many', readDecimal('many')), ['quantity/unreadable [many]']);
  });
});

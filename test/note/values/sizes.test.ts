import assert from 'node:assert/strict';
import fc from 'fast-check';
import { formatNumber } from '../../../src/note/values/format.ts';
import { readArea, readDimensions, readSutureSize } from '../../../src/note/values/sizes.ts';
import { problemsOf } from '../spelled.ts';

describe('reading the size of what was taken', () => {
  it('reads one to three lengths in mm', () => {
    const cases: readonly [string, readonly number[]][] = [
      ['4 mm', [4]],
      ['4mm', [4]],
      ['4.0 mm', [4]],
      ['9 x 8 mm', [9, 8]],
      ['9x8x3 mm', [9, 8, 3]],
      ['9 × 8 mm', [9, 8]],
      ['9 X 8 MM', [9, 8]],
      ['9 by 8 mm', [9, 8]],
      ['9*8 mm', [9, 8]],
      ['9 mm x 8 mm', [9, 8]],
      ['9 mm x 8', [9, 8]],
      ['0.9 x 0.8 cm', [9, 8]],
      ['1.1 cm', [11]],
      ['9 mm x 0.8 cm', [9, 8]],
      ['4 mm diameter', [4]],
      ['4 mm in diameter', [4]],
      ['4 mm across', [4]],
    ];
    for (const [text, mm] of cases)
      assert.deepEqual(readDimensions(text), { value: { mm }, problems: [] }, text);
  });

  it('says what it cannot take', () => {
    const said = (text: string): readonly string[] => problemsOf(text, readDimensions(text));
    assert.deepEqual(said('4'), ['quantity/unit-missing [4] -> 4 mm | 4 cm']);
    assert.deepEqual(said('9 x 8'), ['quantity/unit-missing [9 x 8] -> 9 x 8 mm | 9 x 8 cm']);
    assert.deepEqual(said('4mm punch'), ['quantity/not-understood/behind [punch]']);
    assert.deepEqual(said('9 x 8 mg'), ['quantity/wrong-unit [mg]']);
    assert.deepEqual(said('.9 x .8 cm'), [
      'quantity/leading-zero [.9] -> 0.9!',
      'quantity/leading-zero [.8] -> 0.8!',
    ]);
    assert.deepEqual(said('400 mm'), ['quantity/implausible/high [400 mm]']);
    assert.deepEqual(said('9 x 400 mm'), ['quantity/implausible/high [400 mm]']);
    assert.deepEqual(said('0 x 8 mm'), ['quantity/not-positive/zero [0 x 8 mm]']);
    assert.deepEqual(said('3-4 mm'), ['quantity/unreadable/range [3-4 mm]']);
    for (const text of ['', 'small', '1 x 2 x 3 x 4 mm', 'x'])
      assert.equal(readDimensions(text).value, undefined, text);
  });

  it('reads back what it writes', () => {
    const length = fc.integer({ min: 10, max: 29999 }).map((hundredths) => hundredths / 100);
    fc.assert(
      fc.property(
        fc.array(length, { minLength: 1, maxLength: 3 }),
        fc.constantFrom('x', ' x ', '×', ' by '),
        (mm, sign) => {
          const text = `${mm.map((one) => formatNumber(one)).join(sign)} mm`;
          assert.deepEqual(readDimensions(text), { value: { mm }, problems: [] });
        },
      ),
    );
  });
});

describe('reading areas', () => {
  it('reads cm2, or two sides', () => {
    for (const text of [
      '20 cm2',
      '20 cm²',
      '20 cm^2',
      '20 sq cm',
      '20 square cm',
      '5 x 4 cm',
      '5 cm x 4 cm',
      '50 x 40 mm',
      '5x4cm',
    ])
      assert.equal(readArea(text).value?.amount, 20, text);
    assert.equal(readArea('1.1 x 1.1 cm').value?.amount, 1.21);
  });

  it('says what is no area', () => {
    assert.deepEqual(problemsOf('20', readArea('20')), ['quantity/unit-missing [20] -> 20 cm2']);
    assert.deepEqual(problemsOf('20 cm', readArea('20 cm')), ['quantity/wrong-unit [cm]']);
    assert.deepEqual(problemsOf('2 x 3 x 4 cm', readArea('2 x 3 x 4 cm')), [
      'quantity/unreadable [2 x 3 x 4 cm]',
    ]);
    assert.deepEqual(problemsOf('5 x 4', readArea('5 x 4')), [
      'quantity/unit-missing [5 x 4] -> 5 x 4 mm | 5 x 4 cm',
    ]);
  });
});

describe('reading suture sizes', () => {
  it('reads the ways in which a size is written', () => {
    for (const text of ['4-0', '4/0', '4–0', '4 - 0', '0000'])
      assert.equal(readSutureSize(text).value, '4-0', text);
    assert.deepEqual(
      ['0', '1-0', '1', '#1', '2', '10-0', '00'].map((text) => readSutureSize(text).value),
      ['0', '0', '1', '1', '2', '10-0', '2-0'],
    );
  });

  it('does not take a metric size for the other', () => {
    const said = (text: string): readonly string[] => problemsOf(text, readSutureSize(text));
    assert.deepEqual(said('4.0'), ['quantity/unreadable [4.0] -> 4-0']);
    assert.deepEqual(said('40'), ['quantity/unreadable [40] -> 4-0']);
    assert.deepEqual(said('4-O'), ['quantity/unreadable [4-O] -> 4-0!']);
    for (const text of ['', '14-0', '0-0', '9', 'nylon', '4-0 nylon', '4-1'])
      assert.deepEqual(said(text), [`quantity/unreadable [${text}]`]);
  });
});

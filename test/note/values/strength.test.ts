import assert from 'node:assert/strict';
import { readStrength } from '../../../src/note/values/strength.ts';

const codes = (text: string): readonly string[] => readStrength(text).problems.map(({ code }) => code);

describe('the strength of a drug that is no anesthetic', () => {
  for (const text of [
    '10 mg/mL',
    '2.5 mg/mL',
    '1%',
    '1 unit/mL',
    '150 units/mL',
    '3 units per mL',
    '8.4 mEq/mL',
    ' 1 unit/mL ',
  ])
    it(`is read from ${text}`, () => {
      assert.deepEqual(readStrength(text), { value: text, problems: [] });
    });

  it('keeps what is asked of every amount', () => {
    assert.deepEqual(codes('10'), ['quantity/unit-missing']);
    assert.deepEqual(codes('1,5 mg/mL'), ['quantity/decimal-comma']);
    assert.deepEqual(codes('1,5 units/mL'), ['quantity/decimal-comma']);
    assert.deepEqual(codes('.5 units/mL'), ['quantity/leading-zero']);
    assert.deepEqual(codes('10 mL'), ['quantity/wrong-unit']);
    assert.deepEqual(codes('strong'), ['quantity/unreadable']);
    assert.equal(readStrength('strong').value, undefined);
    assert.equal(readStrength('x'.repeat(500)).value, undefined);
  });

  it('asks for units to be written out: U and IU are misread', () => {
    for (const [text, typed] of [
      ['100 U/mL', 'U'],
      ['100 IU/mL', 'IU'],
    ] as const) {
      const { value, problems } = readStrength(text);
      assert.equal(value, text);
      assert.deepEqual(
        problems.map(({ code, at }) => [code, text.slice(at.start, at.end)]),
        [['quantity/misread-unit', typed]],
      );
    }
  });
});

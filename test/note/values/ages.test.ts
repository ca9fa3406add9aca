import assert from 'node:assert/strict';
import { readAge } from '../../../src/note/values/ages.ts';
import { problemsOf } from '../spelled.ts';

const monthsOf = (text: string): number | undefined => readAge(text).value?.months;
const saidOf = (text: string): readonly string[] => problemsOf(text, readAge(text));

describe('reading ages', () => {
  it('reads them as people type them', () => {
    for (const text of [
      '64 years',
      '64y',
      '64 yo',
      '64 y/o',
      '64-year-old',
      '64 years old',
      '64 Yrs',
      '64 yr.',
    ])
      assert.deepEqual(readAge(text), { value: { months: 768, typedUnit: 'years' }, problems: [] }, text);
    for (const text of ['7 months', '7mo', '7 mos', '7 months of age'])
      assert.deepEqual(readAge(text), { value: { months: 7, typedUnit: 'months' }, problems: [] }, text);
    assert.equal(monthsOf('1.5 years'), 18);
    assert.equal(monthsOf('0 months'), 0);
  });

  it('counts weeks and days in mean months of 365.25 / 12 days', () => {
    assert.ok(Math.abs(monthsOf('1461 days')! - 48) < 1e-9);
    assert.ok(Math.abs(monthsOf('52 wk')! - (364 * 12) / 365.25) < 1e-9);
    assert.equal(readAge('3 wk').value?.typedUnit, 'weeks');
  });

  it('adds the smaller unit behind a larger one', () => {
    for (const text of ['2 years 3 months', '2y3m', '2 yr, 3 mo', '2y 3mo'])
      assert.deepEqual(readAge(text), { value: { months: 27, typedUnit: 'years' }, problems: [] }, text);
  });

  it('takes a bare number for years and says so', () => {
    assert.deepEqual(saidOf('64'), ['quantity/unit-missing/years [64] -> 64 years!']);
    assert.deepEqual(saidOf('7'), ['quantity/unit-missing/age [7] -> 7 years | 7 months']);
    assert.equal(monthsOf('7'), 84);
  });

  it('does not take m for months, nor words for nothing', () => {
    assert.deepEqual(saidOf('64 M'), ['quantity/unknown-unit/age [64 M] -> 64 months | 64 years']);
    assert.equal(monthsOf('64 M'), undefined);
    assert.deepEqual(saidOf('64 years male'), ['quantity/not-understood/behind [male]']);
    assert.deepEqual(saidOf('3 months 2 years'), ['quantity/not-understood/behind [2 years]']);
    assert.deepEqual(saidOf('150 years'), ['quantity/implausible/age [150 years]']);
    assert.deepEqual(saidOf('640'), ['quantity/implausible/age [640]']);
    for (const text of ['', 'adult', '-3 years', '~6 years'])
      assert.deepEqual(saidOf(text), [`quantity/unreadable [${text}]`]);
  });
});

import assert from 'node:assert/strict';
import { readCount, readDecimal, readWeighed, readYesNo } from '../../../src/note/values/statements.ts';
import { remarksOf } from '../spelled.ts';

describe('reading yes and no', () => {
  it('reads both in the usual spellings', () => {
    for (const text of ['yes', 'Yes', 'Y', 'true', 'done', ' yes '])
      assert.equal(readYesNo(text).value, true, text);
    for (const text of ['obtained', 'in chart', 'on file']) assert.equal(readYesNo(text).value, true, text);
    for (const text of ['no', 'NO', 'n', 'false', 'none', 'declined', 'refused'])
      assert.equal(readYesNo(text).value, false, text);
  });

  it('takes no other word for one of them', () => {
    assert.deepEqual(remarksOf('maybe', readYesNo('maybe')), ['quantity/unreadable/yesno [maybe]']);
    assert.deepEqual(remarksOf('nope', readYesNo('nope')), ['quantity/unreadable/yesno [nope]']);
    assert.deepEqual(remarksOf('yes, two views', readYesNo('yes, two views')), [
      'quantity/not-understood/behind [two views]',
    ]);
  });
});

describe('reading counts and numbers', () => {
  it('reads whole numbers, none included', () => {
    assert.deepEqual(
      ['0', '2', 'two', 'Twelve', '3 stitches', '3 sutures', '1.0'].map((text) => readCount(text).value),
      [0, 2, 2, 12, 3, 3, 1],
    );
  });

  it('refuses parts, negatives and other words', () => {
    const said = (text: string): readonly string[] => remarksOf(text, readCount(text));
    for (const text of ['2.5', 'some', '', '01', 'constructor'])
      assert.equal(readCount(text).value, undefined, text);
    assert.deepEqual(said('2.5'), ['quantity/unreadable [2.5]']);
    assert.deepEqual(said('-1'), ['quantity/not-positive/negative [-1]']);
    assert.deepEqual(said('3 nylon'), ['quantity/not-understood/behind [nylon]']);
    assert.deepEqual(said('20000'), ['quantity/implausible/count [20000]']);
  });

  it('reads decimals', () => {
    assert.deepEqual(readDecimal('4.5'), { value: 4.5, remarks: [] });
    assert.deepEqual(readDecimal('300'), { value: 300, remarks: [] });
    assert.deepEqual(remarksOf('.5', readDecimal('.5')), ['quantity/leading-zero [.5] -> 0.5!']);
    assert.deepEqual(remarksOf('4,5', readDecimal('4,5')), ['quantity/decimal-comma [4,5] -> 4.5']);
    assert.deepEqual(remarksOf('many', readDecimal('many')), ['quantity/unreadable [many]']);
  });
});

describe('reading how a weight was learned', () => {
  it('reads the way, and the day if there is one', () => {
    assert.deepEqual(readWeighed('measured').value, { how: 'measured', on: undefined });
    for (const text of ['Stated', 'per patient', 'patient-reported', 'by parent'])
      assert.deepEqual(readWeighed(text).value, { how: 'stated', on: undefined }, text);
    assert.deepEqual(readWeighed('measured today').value, { how: 'measured', on: undefined });
    for (const text of [
      'chart 2026-03-01',
      'chart, 2026-03-01',
      '2026-03-01 chart',
      'from chart (2026-03-01)',
      'chart on 2026-03-01',
    ])
      assert.deepEqual(readWeighed(text), { value: { how: 'chart', on: '2026-03-01' }, remarks: [] }, text);
    assert.deepEqual(readWeighed('2026-03-01').value, { how: 'measured', on: '2026-03-01' });
  });

  it('says what it cannot take', () => {
    assert.deepEqual(remarksOf('guessed', readWeighed('guessed')), ['quantity/unreadable [guessed]']);
    assert.deepEqual(remarksOf('measured 2026-02-30', readWeighed('measured 2026-02-30')), [
      'quantity/no-such-date [2026-02-30]',
    ]);
    assert.equal(readWeighed('').value, undefined);
  });
});

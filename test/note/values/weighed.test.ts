import assert from 'node:assert/strict';
import { readWeighed } from '../../../src/note/values/weighed.ts';
import { problemsOf } from '../spelled.ts';

describe('reading how a weight was learned', () => {
  it('reads the way, and the day if there is one', () => {
    assert.deepEqual(readWeighed('measured').value, { how: 'measured', on: undefined });
    for (const text of ['Stated', 'per patient', 'patient-reported', 'by parent'])
      assert.deepEqual(readWeighed(text).value, { how: 'stated', on: undefined }, text);
    for (const text of ['estimated', 'est.', 'Estimate', 'estimated by parent'])
      assert.deepEqual(readWeighed(text).value, { how: 'estimated', on: undefined }, text);
    for (const text of ['measured today', 'today on our scale', 'on the clinic scale', 'in clinic'])
      assert.deepEqual(readWeighed(text).value, { how: 'measured', on: undefined }, text);
    for (const text of [
      'chart 2026-03-01',
      'chart, 2026-03-01',
      '2026-03-01 chart',
      'from chart (2026-03-01)',
      'chart on 2026-03-01',
    ])
      assert.deepEqual(readWeighed(text), { value: { how: 'chart', on: '2026-03-01' }, problems: [] }, text);
    assert.deepEqual(readWeighed('2026-03-01').value, { how: 'measured', on: '2026-03-01' });
  });

  it('says what it cannot take', () => {
    assert.deepEqual(problemsOf('guessed', readWeighed('guessed')), ['quantity/unreadable [guessed]']);
    assert.deepEqual(problemsOf('measured 2026-02-30', readWeighed('measured 2026-02-30')), [
      'quantity/no-such-date [2026-02-30]',
    ]);
    assert.equal(readWeighed('').value, undefined);
  });
});

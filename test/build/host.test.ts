import assert from 'node:assert/strict';
import { complaint, listener } from '../host/suite.mjs';

describe('a run in a real VS Code', () => {
  const all = { tests: 3, passes: 3, failures: 0 };

  it('passes only with a result, in which every test passed', () => {
    assert.equal(complaint(0, all), undefined);
    assert.match(complaint(0, undefined)!, /without a result/);
    assert.match(complaint(0, { tests: 3, passes: 2, failures: 1 })!, /1 of 3 tests failed/);
    assert.match(complaint(0, { tests: 3, passes: 2, failures: 0 })!, /2 of 3 tests passed/);
    assert.match(complaint(0, { tests: 0, passes: 0, failures: 0 })!, /0 of 0 tests passed/);
    assert.match(complaint(1, all)!, /exit code 1/);
  });

  it('takes the result from a line of the suite, and from no other line', () => {
    const said: string[] = [];
    const { heard, hear } = listener((line) => said.push(line));
    assert.equal(hear(`RESULT ${JSON.stringify(all)}`), false);
    assert.equal(hear('suite|   ok one'), true);
    assert.equal(heard.result, undefined);
    assert.equal(hear(`suite| RESULT ${JSON.stringify(all)}`), true);
    assert.deepEqual(heard.result, all);
    assert.deepEqual(said, ['  ok one']);
  });
});

import assert from 'node:assert/strict';
import { Entered } from '../../../src/editor/host/entered.ts';

const folder = { ctime: 1, mtime: 2, names: ['a.wheal.yaml', 'b'] };

describe('folders that a walk has entered', () => {
  it('are entered once, where a link leads back to one or on to one', () => {
    const walk = new Entered();
    assert.ok(walk.isNew(folder));
    assert.ok(!walk.linked().isNew({ ...folder, names: ['b', 'a.wheal.yaml'] }));
    const other = new Entered();
    assert.ok(other.linked().isNew(folder));
    assert.ok(!other.isNew(folder));
  });

  it('are never taken for one another without a link, nor where their names or times differ', () => {
    const walk = new Entered();
    assert.ok(walk.isNew(folder));
    assert.ok(walk.isNew(folder));
    assert.ok(walk.linked().isNew({ ...folder, mtime: 3 }));
    assert.ok(walk.linked().isNew({ ...folder, names: [] }));
  });
});

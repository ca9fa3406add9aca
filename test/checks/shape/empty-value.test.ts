import assert from 'node:assert/strict';
import { flags } from '../tester.ts';
import { before, own } from './_shape.ts';

describe('a key without a value', () => {
  it('is a warning, an error where the key is required', () => {
    flags('shape/empty-value', `${before}    ⟦lesion⟧:\n`, { severity: 'warning' });
    flags('shape/empty-value', `${before}    ⟦lesion⟧: ""\n`, { severity: 'warning' });
    flags('shape/empty-value', before.replace('method: punch', '⟦method⟧:'), { severity: 'error' });
    assert.deepEqual(own(before.replace('method: punch', 'method:')), ['shape/empty-value']);
  });
});

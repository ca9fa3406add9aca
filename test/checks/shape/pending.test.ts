import assert from 'node:assert/strict';
import { flags } from '../tester.ts';
import { before, own } from './_shape.ts';

describe('what is not yet known', () => {
  it('is information, a warning where the key is required', () => {
    flags('shape/pending', `${before}    lesion: ⟦??⟧\n`, { severity: 'information' });
    flags('shape/pending', before.replace('method: punch', 'method: ⟦??⟧'), { severity: 'warning' });
    flags('shape/pending', `${before}    hemostasis: [pressure, ⟦??⟧]\n`, { severity: 'information' });
    flags('shape/pending', before.replace('{id: C-1}', '{id: C-1, allergies: [⟦??⟧]}'));
    assert.deepEqual(own('visit: 2026-03-02\npatient: ??\nprocedures: ??\n'), [
      'shape/pending',
      'shape/pending',
    ]);
  });
});

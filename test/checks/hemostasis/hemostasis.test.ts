import { judgeBy, silent } from '../tester.ts';
import assert from 'node:assert/strict';
import { note } from './_hemostasis.ts';

describe('one fault, one message', () => {
  const codes = ['hemostasis/missing', 'specimen/missing', 'closure/missing'];

  it('a misspelt key is not missing too', () => {
    for (const key of ['hemostais', 'specimin', 'closur', 'haemostassis']) {
      const text = note(['site: left cheek', 'method: punch', `${key}: none`]);
      const found = codes.filter((code) => judgeBy(code, text).length > 0);
      assert.equal(found.length, 2, `${key}: ${found.join(', ')}`);
    }
  });

  it('a key behind a syntax error is not called missing', () => {
    const text = note(['site: left cheek', 'method: punch', 'lesion: "papule', 'hemostasis: none']);
    silent('hemostasis/missing', text);
  });
});

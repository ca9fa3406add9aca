import assert from 'node:assert/strict';
import { flags, judgeBy, silent } from '../tester.ts';
import { note } from './_hemostasis.ts';

describe('hemostasis/missing', () => {
  it('flags the procedure', () => {
    flags('hemostasis/missing', note(['⟦site⟧: left cheek', 'method: shave']), { severity: 'warning' });
    flags('hemostasis/missing', note(['⟦site⟧: left cheek']));
  });

  it('is silent on any word, and where nothing is cut', () => {
    for (const hemostasis of ['none', 'pressure', '??', '[aluminum chloride, pressure]'])
      silent('hemostasis/missing', note(['site: left cheek', 'method: shave', `hemostasis: ${hemostasis}`]));
    silent('hemostasis/missing', note(['site: left cheek', 'method: shave', 'haemostasis: none']));
    silent('hemostasis/missing', note(['site: left cheek', 'method: cryotherapy']));
    silent('hemostasis/missing', note(['site: left cheek', 'method: punch', 'hemostasis: suture']));
  });
});

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

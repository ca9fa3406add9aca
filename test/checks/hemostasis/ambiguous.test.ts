import { fixed, flags, silent } from '../tester.ts';
import assert from 'node:assert/strict';
import { note } from './_hemostasis.ts';

describe('hemostasis/ambiguous', () => {
  const used = (hemostasis: string): string =>
    note(['site: left cheek', 'method: shave', `hemostasis: ${hemostasis}`]);

  it('flags words that mean heat or current', () => {
    for (const word of ['cautery', 'electrocautery', 'electrodesiccation', 'cauterised'])
      flags('hemostasis/ambiguous', used(`[pressure, ⟦${word}⟧]`), { severity: 'information' });
  });

  it('offers both meanings', () => {
    assert.equal(
      fixed('hemostasis/ambiguous', used('cautery'), 'correct the record: heat cautery'),
      used('heat cautery'),
    );
    assert.equal(
      fixed('hemostasis/ambiguous', used('cautery'), 'correct the record: electrosurgery'),
      used('electrosurgery'),
    );
  });

  it('is silent on clear words, and where a device already asks', () => {
    for (const word of ['heat cautery', 'electrosurgery', 'bipolar cautery', 'battery cautery', 'pressure'])
      silent('hemostasis/ambiguous', used(word));
    silent(
      'hemostasis/ambiguous',
      note(['site: left cheek', 'hemostasis: cautery'], 'id: C-1, implants: [ICD]'),
    );
  });
});

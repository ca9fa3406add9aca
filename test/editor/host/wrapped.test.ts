import assert from 'node:assert/strict';
import fc from 'fast-check';
import { wrapped } from '../../../src/editor/host/wrapped.ts';

describe('a message in the editor', () => {
  it('stands on one row where it fits', () => {
    assert.equal(wrapped('The side is missing. Write it.'), 'The side is missing. Write it.');
  });

  it('begins a row with each sentence, and goes on where one is too long', () => {
    const rows = wrapped(
      'The dose of the visit is 114.7% of the limit: lidocaine 320 mg of at most 279 mg (4.5 mg/kg at 62 kg). Check it.',
    ).split('\n');
    assert.equal(rows.length, 3);
    assert.match(rows[0]!, /^The dose of the visit is 114\.7% of the limit/);
    assert.equal(rows[2], 'Check it.');
  });

  it('loses and adds nothing but breaks', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^\S{1,20}$/), { maxLength: 60 }), (words) => {
        assert.equal(wrapped(words.join(' ')).replaceAll('\n', ' '), words.join(' '));
      }),
    );
  });
});

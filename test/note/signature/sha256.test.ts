import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { sha256 } from '../../../src/note/signature/sha256.ts';
import { times } from '../../share.ts';

describe('digest', () => {
  // FIPS 180-2, appendix B.1.
  it('is SHA-256', () => {
    assert.equal(sha256('abc'), 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });

  it('is what Node makes of any text, at every length around a block', () => {
    const same = (text: string): void => {
      assert.equal(sha256(text), createHash('sha256').update(text).digest('hex'));
    };
    for (let length = 0; length < 200; length++)
      same('ü'.repeat(length).slice(0, length) + 'x'.repeat(length));
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 300 }), same), { numRuns: times(200) });
  });
});

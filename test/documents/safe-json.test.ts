import assert from 'node:assert/strict';
import fc from 'fast-check';
import { safeJson } from '../../src/documents/safe-json.ts';

describe('JSON for a terminal', () => {
  it('is the same value', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom(undefined, 2), (value, indent) => {
        assert.deepEqual(JSON.parse(safeJson(value, indent)), JSON.parse(JSON.stringify(value)));
      }),
    );
  });

  it('holds nothing that a terminal obeys and nothing that turns the direction', () => {
    const obeyed = '\u001b[2J\u009b2J\u007f\u202e\u2066\u200b\ufeff\u2028\u00ad';
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (text) => {
        const value = text + obeyed;
        const json = safeJson({ value });
        assert.doesNotMatch(json, /\p{Cc}|\p{Bidi_Control}|[\u00ad\u200b\u2028\u2029\ufeff]/u);
        assert.equal((JSON.parse(json) as { value: string }).value, value);
      }),
    );
  });
});

import assert from 'node:assert/strict';
import fc from 'fast-check';
import { formatDilution, formatNumber, formatThousands } from '../../../src/note/values/format.ts';

describe('numbers for people', () => {
  it('have a zero before the point and none at the end', () => {
    assert.equal(formatNumber(0.5), '0.5');
    assert.equal(formatNumber(1.0), '1');
    assert.equal(formatNumber(27.9), '27.9');
  });

  it('show no noise of binary arithmetic', () => {
    assert.equal(formatNumber(0.1 + 0.2), '0.3');
    assert.equal(formatNumber(1.1 * 10), '11');
    assert.equal(formatNumber(-0), '0');
  });

  it('round where a number of places is asked for', () => {
    assert.equal(formatNumber(62.14215469, 2), '62.14');
    assert.equal(formatNumber(0.218, 2), '0.22');
    assert.equal(formatNumber(13, 2), '13');
  });

  it('come as they were typed where they have few digits', () => {
    const typed = fc.tuple(fc.nat(99_999_999), fc.nat(7)).map(([digits, places]) => {
      const text = String(digits).padStart(places + 1, '0');
      const [whole, rest] = [text.slice(0, text.length - places), text.slice(text.length - places)];
      return rest === '' ? whole : `${whole}.${rest}`.replace(/\.?0+$/, '');
    });
    fc.assert(
      fc.property(typed, (text) => {
        assert.equal(formatNumber(Number(text)), text);
      }),
    );
  });

  it('never have an exponent, and mean the number', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e30, noNaN: true }), (value) => {
        const text = formatNumber(value);
        assert.match(text, /^\d+(\.\d*[1-9])?$/);
        assert.ok(Math.abs(Number(text) - value) <= value * 1e-10, text);
      }),
    );
  });

  it('come with their commas, their ratio', () => {
    assert.equal(formatNumber(137 * 0.45359237, 2), '62.14');
    assert.equal(formatThousands(1000000), '1,000,000');
    assert.equal(formatThousands(999), '999');
    assert.equal(formatDilution({ microgramsPerMl: 10, ratio: 100000 }), '1:100,000');
    assert.equal(formatDilution({ microgramsPerMl: 12.5, ratio: undefined }), '12.5 mcg/mL');
    assert.equal(formatDilution({ microgramsPerMl: 0, ratio: undefined }), 'none');
  });
});

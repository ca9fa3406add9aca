import assert from 'node:assert/strict';
import fc from 'fast-check';
import { DateTime } from 'luxon';
import { flags, judgeBy, silent } from '../tester.ts';
import { note } from './_birth.ts';

describe('record/age-contradicts-birth', () => {
  it('flags the age', () => {
    flags('record/age-contradicts-birth', note('born: 1961-08-09, age: ⟦46 years⟧'), { severity: 'warning' });
    flags('record/age-contradicts-birth', note('born: 1961-08-09, age: ⟦65 years⟧'));
    flags('record/age-contradicts-birth', note('born: 2025-08-01, age: ⟦9 months⟧'));
  });

  it('counts a birthday from its day on', () => {
    silent('record/age-contradicts-birth', note('born: 1961-03-02, age: 65 years'));
    flags('record/age-contradicts-birth', note('born: 1961-03-03, age: ⟦65 years⟧'));
  });

  it('lets a small child be a month older or younger', () => {
    for (const age of ['6 months', '7 months', '8 months'])
      silent('record/age-contradicts-birth', note(`born: 2025-08-01, age: ${age}`));
  });

  it('says nothing where the date of birth lies after the visit: that has a finding of its own', () => {
    silent('record/age-contradicts-birth', note('born: 2026-08-09, age: 64 years'));
  });

  it('agrees with another library on whole years', () => {
    const day = fc
      .date({ min: new Date('1930-01-01'), max: new Date('2026-03-01'), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 10));
    fc.assert(
      fc.property(day, (born) => {
        const years = Math.floor(DateTime.fromISO('2026-03-02').diff(DateTime.fromISO(born), 'years').years);
        assert.equal(
          judgeBy('record/age-contradicts-birth', note(`born: ${born}, age: ${years} years`)).length,
          0,
        );
        assert.equal(
          judgeBy('record/age-contradicts-birth', note(`born: ${born}, age: ${years + 1} years`)).length,
          1,
        );
      }),
      { numRuns: 60 },
    );
  });
});

import assert from 'node:assert/strict';
import {
  addMonths as addMonthsTo,
  differenceInCalendarDays,
  formatISO,
  getDaysInMonth,
  parseISO,
} from 'date-fns';
import fc from 'fast-check';
import {
  addDays,
  addMonths,
  dateOf,
  dayNumber,
  daysBetween,
  daysIn,
  monthsBetween,
  weekdayOf,
} from '../../../src/note/values/days.ts';

/** Days of the years in which notes are written, and of those around them. */
const days = fc.integer({ min: dayNumber('1890-01-01'), max: dayNumber('2110-12-31') });
const dates = days.map(dateOf);
const iso = (date: Date): string => formatISO(date, { representation: 'date' });

describe('the calendar of days', () => {
  it('counts days as the calendar of the system does', () => {
    fc.assert(
      fc.property(dates, dates, (one, other) => {
        assert.equal(daysBetween(one, other), differenceInCalendarDays(parseISO(other), parseISO(one)));
        assert.equal(addDays(one, daysBetween(one, other)), other);
        assert.equal(weekdayOf(dayNumber(one)), parseISO(one).getDay());
      }),
    );
  });

  it('knows the length of each month', () => {
    fc.assert(
      fc.property(dates, (date) => {
        const [year, month] = date.split('-').map(Number) as [number, number];
        assert.equal(daysIn(year, month), getDaysInMonth(parseISO(date)));
      }),
    );
    assert.deepEqual([daysIn(2026, 0), daysIn(2026, 13)], [0, 0]);
  });

  it('adds months, and takes the last day of a shorter one', () => {
    assert.equal(addMonths('2026-01-31', 1), '2026-02-28');
    assert.equal(addMonths('2024-02-29', 12), '2025-02-28');
    assert.equal(addMonths('2026-11-30', 3), '2027-02-28');
    fc.assert(
      fc.property(dates, fc.nat({ max: 240 }), (date, months) => {
        assert.equal(addMonths(date, months), iso(addMonthsTo(parseISO(date), months)));
      }),
    );
  });

  it('counts whole months, as ages are counted', () => {
    assert.equal(monthsBetween('2026-01-15', '2026-02-14'), 0);
    assert.equal(monthsBetween('2026-01-15', '2026-02-15'), 1);
    // Who was born on a leap day has the birthday on the last of February.
    assert.equal(monthsBetween('2012-02-29', '2026-02-28'), 168);
    fc.assert(
      fc.property(dates, fc.nat({ max: 1200 }), (born, months) => {
        const later = addMonths(born, months);
        assert.ok(Math.abs(monthsBetween(born, later) - months) <= 1, `${born} ${later}`);
      }),
    );
  });
});

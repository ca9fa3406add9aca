import assert from 'node:assert/strict';
import fc from 'fast-check';
import ICAL from 'ical.js';
import { DateTime } from 'luxon';
import { addDays, daysBetween } from '../../src/note/values/days.ts';
import { addWorkingDays, isClosed, nextOpenDay } from '../../src/followup/working-days.ts';
import { weekend, type ClosedDays } from '../../src/practice/closed-days.ts';
import { times } from '../share.ts';

const closedOn = (weekdays: readonly number[], ...dates: readonly string[]): ClosedDays => ({
  weekdays: new Set(weekdays),
  dates: new Set(dates),
});

const isoOf = (time: DateTime): string => time.toFormat('yyyy-MM-dd');

const date = fc
  .integer({ min: 0, max: 73_000 })
  .map((days) => isoOf(DateTime.fromISO('1900-01-01', { zone: 'utc' }).plus({ days })));
const practice = fc
  .tuple(fc.uniqueArray(fc.integer({ min: 0, max: 6 }), { maxLength: 6 }), fc.array(date, { maxLength: 5 }))
  .map(([weekdays, dates]) => closedOn(weekdays, ...dates));

/** Runs in a time zone: the platform reads TZ again whenever it is set. */
function inZone(zone: string, test: () => void): void {
  const before = process.env['TZ'];
  process.env['TZ'] = zone;
  try {
    test();
  } finally {
    if (before === undefined) delete process.env['TZ'];
    else process.env['TZ'] = before;
  }
}

describe('calendar days', () => {
  it('agree with luxon in every zone, through changes of the clock', () => {
    for (const zone of ['America/New_York', 'Pacific/Apia', 'Europe/London', 'UTC']) {
      inZone(zone, () => {
        fc.assert(
          fc.property(date, fc.integer({ min: -3000, max: 3000 }), (from, days) => {
            const there = isoOf(DateTime.fromISO(from, { zone: 'utc' }).plus({ days }));
            assert.equal(addDays(from, days), there);
            assert.equal(daysBetween(from, there), days);
          }),
          { numRuns: times(40) },
        );
      });
    }
  });

  it('agree with the calendar arithmetic of ical.js', () => {
    fc.assert(
      fc.property(date, fc.integer({ min: 0, max: 800 }), (from, days) => {
        const time = ICAL.Time.fromDateString(from);
        time.adjust(days, 0, 0, 0);
        assert.equal(addDays(from, days), time.toString());
      }),
    );
  });

  it('count the days that a zone skipped or shortened', () => {
    // IANA time zones: Samoa had no 2011-12-30; New York and London changed their clocks in March 2026.
    inZone('Pacific/Apia', () => {
      assert.equal(daysBetween('2011-12-29', '2011-12-31'), 2);
      assert.equal(addDays('2011-12-29', 1), '2011-12-30');
    });
    inZone('America/New_York', () => {
      assert.equal(addDays('2026-03-07', 1), '2026-03-08');
      assert.equal(addDays('2026-03-02', 10), '2026-03-12');
    });
    inZone('Europe/London', () => {
      assert.equal(addDays('2026-03-28', 2), '2026-03-30');
    });
  });

  it('know leap days', () => {
    assert.equal(addDays('2028-02-28', 1), '2028-02-29');
    assert.equal(addDays('2026-02-28', 1), '2026-03-01');
    assert.equal(addDays('2000-02-29', 366), '2001-03-01');
    assert.equal(addDays('2100-02-28', 1), '2100-03-01');
    assert.equal(addDays('2026-12-31', 1), '2027-01-01');
  });
});

describe('working days', () => {
  it('close on the weekend and on the dates named', () => {
    assert.equal(isClosed('2026-03-07', weekend), true, 'a Saturday');
    assert.equal(isClosed('2026-03-08', weekend), true);
    assert.equal(isClosed('2026-03-09', weekend), false);
    assert.equal(isClosed('2026-12-25', closedOn([0, 6], '2026-12-25')), true);
    assert.equal(isClosed('2026-03-07', closedOn([])), false);
  });

  it('find the next day on which the practice works', () => {
    assert.equal(nextOpenDay('2026-03-06', weekend), '2026-03-06');
    assert.equal(nextOpenDay('2026-03-07', weekend), '2026-03-09');
    assert.equal(
      nextOpenDay('2026-12-25', closedOn([0, 6], '2026-12-25', '2026-12-28')),
      '2026-12-29',
      'holiday, weekend, holiday',
    );
  });

  it('count ten working days from a Monday to the Monday after next', () => {
    assert.equal(addWorkingDays('2026-03-02', 10, weekend), '2026-03-16');
    assert.equal(addWorkingDays('2026-03-06', 1, weekend), '2026-03-09');
    assert.equal(addWorkingDays('2026-03-07', 1, weekend), '2026-03-09');
    assert.equal(addWorkingDays('2026-03-07', 0, weekend), '2026-03-07');
  });

  it('leave out a holiday', () => {
    const closed = closedOn([0, 6], '2026-03-09');
    assert.equal(addWorkingDays('2026-03-06', 1, closed), '2026-03-10');
    assert.equal(addWorkingDays('2026-03-02', 9, closed), '2026-03-16');
    assert.equal(addWorkingDays('2026-03-09', 1, closed), '2026-03-10', 'the first day never counts');
  });

  it('end even where all seven weekdays are named', () => {
    const never = closedOn([0, 1, 2, 3, 4, 5, 6], '2026-03-03');
    assert.equal(addWorkingDays('2026-03-02', 1, never), '2026-03-04');
    assert.equal(nextOpenDay('2026-03-03', never), '2026-03-04');
  });

  it('refuse to count back or in parts', () => {
    assert.throws(() => addWorkingDays('2026-03-02', -1, weekend), RangeError);
    assert.throws(() => addWorkingDays('2026-03-02', 1.5, weekend), RangeError);
  });

  it('agree with counting day by day in luxon', () => {
    fc.assert(
      fc.property(date, fc.integer({ min: 0, max: 300 }), practice, (from, count, closed) => {
        let day = DateTime.fromISO(from, { zone: 'utc' });
        for (let left = count; left > 0;) {
          day = day.plus({ days: 1 });
          if (!closed.weekdays.has(day.weekday % 7) && !closed.dates.has(isoOf(day))) left -= 1;
        }
        assert.equal(addWorkingDays(from, count, closed), isoOf(day));
      }),
      { numRuns: times(60) },
    );
  });
});

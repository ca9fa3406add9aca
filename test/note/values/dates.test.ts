import assert from 'node:assert/strict';
import fc from 'fast-check';
import { DateTime } from 'luxon';
import { readDate, readMoment, readOccasion } from '../../../src/note/values/dates.ts';
import { times } from '../../share.ts';
import { problemsOf } from '../spelled.ts';

const saidOf = (text: string): readonly string[] => problemsOf(text, readMoment(text));
const two = (number: number): string => String(number).padStart(2, '0');

describe('reading dates', () => {
  it('reads a day, with the time if there is one', () => {
    assert.deepEqual(readMoment('2026-03-02'), {
      value: { date: '2026-03-02', minutes: undefined },
      problems: [],
    });
    assert.deepEqual(readMoment('2026-03-02 10:05').value, { date: '2026-03-02', minutes: 605 });
    assert.deepEqual(readMoment('2026-03-02T9:05').value, { date: '2026-03-02', minutes: 545 });
    assert.deepEqual(readMoment('2026-03-02 9:05 pm').value, { date: '2026-03-02', minutes: 1265 });
    assert.equal(readDate('2026-03-02 10:05').value, '2026-03-02');
    assert.deepEqual(readMoment('2026-03-02 at 10:05').value, { date: '2026-03-02', minutes: 605 });
  });

  it('agrees with another library on which days there are', () => {
    // Leap and plain years, and the rule of centuries: 2000 has a 29th of February, 1900 and 2100 have none.
    for (const year of [1900, 1999, 2000, 2024, 2025, 2026, 2096, 2100])
      for (let month = 0; month <= 13; month++)
        for (let day = 0; day <= 32; day++) {
          const text = `${year}-${two(month)}-${two(day)}`;
          const theirs = month > 0 && DateTime.fromISO(text, { zone: 'utc' }).isValid;
          assert.equal(readDate(text).value, theirs ? text : undefined, text);
        }
  });

  it('reads every day that there is, and says nothing of it', () => {
    fc.assert(
      fc.property(
        fc.date({ min: new Date('1900-01-01'), max: new Date('2100-12-31'), noInvalidDate: true }),
        (day) => {
          const text = day.toISOString().slice(0, 10);
          assert.deepEqual(readDate(text), { value: text, problems: [] });
        },
      ),
    );
  });

  it('says which part of a date is not in the calendar', () => {
    assert.deepEqual(saidOf('2026-02-30'), ['quantity/no-such-date [2026-02-30]']);
    assert.deepEqual(saidOf('2026-13-01'), ['quantity/no-such-date/month [2026-13-01]']);
    assert.deepEqual(saidOf('2026-03-02 24:00'), ['quantity/no-such-time [24:00]']);
    assert.deepEqual(saidOf('2026-03-02 10:60'), ['quantity/no-such-time [10:60]']);
    assert.deepEqual(saidOf('2026-03-02T10:05Z'), ['quantity/no-such-time [10:05Z]']);
    assert.deepEqual(saidOf('0206-03-02'), ['quantity/implausible/year [0206-03-02]']);
  });

  it('does not guess which part of a date is the month', () => {
    assert.deepEqual(saidOf('03/02/2026'), [
      'quantity/date-form/ambiguous [03/02/2026] -> 2026-03-02 | 2026-02-03',
    ]);
    assert.equal(readMoment('03/02/2026').value, undefined);
    assert.deepEqual(saidOf('3/2/26'), ['quantity/date-form/short-year [3/2/26]']);
  });

  it('offers the one date that another form can mean', () => {
    for (const text of [
      '2026-3-2',
      '2026/03/02',
      '2026.03.02',
      '20260302',
      '2 March 2026',
      '2nd March 2026',
      'Mar 2, 2026',
      'March 2 2026',
      '2-Mar-2026',
    ])
      assert.deepEqual(saidOf(text), [`quantity/date-form [${text}] -> 2026-03-02!`]);
    assert.deepEqual(saidOf('03/15/2026'), ['quantity/date-form [03/15/2026] -> 2026-03-15!']);
    assert.deepEqual(saidOf('15.3.2026'), ['quantity/date-form [15.3.2026] -> 2026-03-15!']);
    assert.deepEqual(saidOf('03/03/2026'), ['quantity/date-form [03/03/2026] -> 2026-03-03!']);
  });

  it('puts no day where none was typed', () => {
    for (const text of [
      ...['2014-12', '196112', '2026-061', '2014/12', '2014 12', '2026061', '1961', '12/2014', '3-2026'],
      ...['March 2026', 'Mar 2026', 'Sept. 2026', '2026-3'],
    ]) {
      assert.equal(readMoment(text).value, undefined, text);
      assert.doesNotMatch(saidOf(text).join(), /->/, text);
    }
    for (const text of ['2014-12', '196112', '2026-061', '1961', '12/2014', 'March 2026', 'Sept 2026'])
      assert.deepEqual(saidOf(text), [`quantity/date-form/no-day [${text}]`]);
  });

  it('offers no date whose digits are not those that were typed', () => {
    const digits = fc.integer({ min: 0, max: 99_999_999 }).map(String);
    const separator = fc.constantFrom('', '-', '/', '.', ' ');
    fc.assert(
      fc.property(fc.array(fc.tuple(digits, separator), { minLength: 1, maxLength: 3 }), (parts) => {
        const text = parts.flat().join('').trim();
        const [problem] = readMoment(text).problems;
        const { instead = [] } = (problem?.data ?? {}) as { instead?: readonly string[] };
        const sorted = (date: string): string =>
          date
            .split(/\D+/)
            .filter((one) => one !== '')
            .map(Number)
            .sort((a, b) => a - b)
            .join(' ');
        const typed = /^\d{8}$/.test(text.replace(/\D/g, '')) ? undefined : sorted(text);
        for (const date of instead) {
          if (typed !== undefined) assert.equal(sorted(date), typed, text);
          else
            assert.equal(
              date.replace(/\D/g, '').split('').sort().join(''),
              text.replace(/\D/g, '').split('').sort().join(''),
              text,
            );
        }
      }),
      { numRuns: times(2000) },
    );
  });

  it('has no date for what is none', () => {
    for (const text of [
      '',
      'today',
      '31/31/2026',
      '2 Foo 2026',
      '2 Mayor 2026',
      '2 Decaf 2026',
      '2 March 2 2026',
    ])
      assert.deepEqual(saidOf(text), [`quantity/unreadable [${text}]`]);
  });
});

describe('reading when something was done', () => {
  it('reads clock times', () => {
    for (let minutes = 0; minutes < 24 * 60; minutes++) {
      const hours = Math.floor(minutes / 60);
      for (const text of [`${hours}:${two(minutes % 60)}`, `${two(hours)}:${two(minutes % 60)}`])
        assert.deepEqual(readOccasion(text).value, { minutes, date: undefined, done: true }, text);
    }
  });

  it('reads the two halves of the day as another library does', () => {
    for (const text of [
      '12:00 AM',
      '12:30 AM',
      '1:05 AM',
      '11:59 AM',
      '12:00 PM',
      '12:30 PM',
      '1:05 PM',
      '11:59 PM',
    ]) {
      const theirs = DateTime.fromFormat(text, 'h:mm a', { locale: 'en-US' });
      assert.equal(readOccasion(text).value?.minutes, theirs.hour * 60 + theirs.minute, text);
      assert.equal(
        readOccasion(text.toLowerCase().replace(' ', '')).value?.minutes,
        theirs.hour * 60 + theirs.minute,
      );
    }
  });

  it('reads that it was done, or was not', () => {
    assert.deepEqual(readOccasion('done').value, { minutes: undefined, date: undefined, done: true });
    for (const text of ['Yes', 'completed', 'Performed', 'held'])
      assert.deepEqual(readOccasion(text).value, { minutes: undefined, date: undefined, done: true }, text);
    for (const text of ['done at 10:12', 'held 10:12', 'completed at 10:12', 'at 10:12', 'yes, at 10:12'])
      assert.deepEqual(readOccasion(text).value, { minutes: 612, date: undefined, done: true }, text);
    for (const text of [
      'done before numbing',
      'Completed with patient and assistant',
      'time-out was performed',
    ])
      assert.deepEqual(readOccasion(text).value, { minutes: undefined, date: undefined, done: true }, text);
    for (const text of [
      'done at noon',
      'not yet done',
      'will be performed',
      'done?',
      'nobody held it',
      'soon',
    ])
      assert.equal(readOccasion(text).value, undefined, text);
    assert.equal(readOccasion('no').value?.done, false);
    assert.deepEqual(readOccasion('2026-03-02 10:12').value, {
      minutes: 612,
      date: '2026-03-02',
      done: true,
    });
  });

  it('refuses times that are on no clock', () => {
    for (const text of ['24:00', '25:10', '10:60', '13:00 am', '10', '10:1'])
      assert.deepEqual(problemsOf(text, readOccasion(text)), [`quantity/no-such-time [${text}]`]);
    assert.deepEqual(problemsOf('soon', readOccasion('soon')), ['quantity/unreadable [soon]']);
  });
});

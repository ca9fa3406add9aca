import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { checkPractice, messageOf } from '../../src/checks/index.ts';
import { readPractice } from '../../src/note/read.ts';
import { holidaysOf } from '../../src/practice/holidays.ts';
import { tablesOf } from '../../src/practice/tables.ts';

const event = (...lines: readonly string[]): string => ['BEGIN:VEVENT', ...lines, 'END:VEVENT'].join('\r\n');
const calendar = (...events: readonly string[]): string =>
  ['BEGIN:VCALENDAR', 'VERSION:2.0', ...events, 'END:VCALENDAR', ''].join('\r\n');
const days = (text: string): readonly string[] => holidaysOf(text).dates;

/** RFC 5545: a date as DTSTART is a whole day, DTEND the first day after it, long lines are folded. */
describe('holidays of an iCalendar file', () => {
  it('are the days of all-day events', () => {
    const text = calendar(
      event('UID:1', 'DTSTART;VALUE=DATE:20261225', 'SUMMARY:Invented: a feast'),
      event('DTSTART;VALUE=DATE:20261231', 'DTEND;VALUE=DATE:20270102'),
      event('DTSTART;VALUE=DATE:20260701', 'DTEND;VALUE=DATE:20260701'),
    );
    assert.deepEqual(days(text), ['2026-07-01', '2026-12-25', '2026-12-31', '2027-01-01']);
    assert.equal(holidaysOf(text).unread, 0);
  });

  it('fold and nest as the standard has it', () => {
    const text = calendar(
      event('DTSTART;VALUE=D\r\n ATE:2026\r\n 1225', 'BEGIN:VALARM', 'DTSTART:20200101T100000', 'END:VALARM'),
    );
    assert.deepEqual(days(text), ['2026-12-25']);
    assert.deepEqual(days(text.replaceAll('\r\n', '\n')), ['2026-12-25']);
  });

  it('leave out what is cancelled, and count what is not read', () => {
    assert.deepEqual(holidaysOf(calendar(event('DTSTART;VALUE=DATE:20261225', 'STATUS:CANCELLED'))), {
      dates: [],
      unread: 0,
    });
    for (const lines of [
      ['DTSTART:20261225T090000Z'],
      ['DTSTART;VALUE=DATE:20261225', 'RRULE:FREQ=YEARLY'],
      ['DTSTART;VALUE=DATE:20260231'],
      ['DTSTART;VALUE=DATE:20261225', 'DTEND;VALUE=DATE:20271225'],
      ['DTSTART;VALUE=DATE:20261225', 'DTEND;VALUE=DATE:20261224'],
      ['SUMMARY:without a day'],
    ])
      assert.deepEqual(holidaysOf(calendar(event(...lines))), { dates: [], unread: 1 }, lines.join());
  });

  it('answer any text', () => {
    fc.assert(fc.property(fc.string(), (text) => Array.isArray(days(text))));
    fc.assert(
      fc.property(fc.string(), (text) => Array.isArray(days(calendar(event(`DTSTART;VALUE=DATE:${text}`))))),
    );
  });

  it('agree with an independent parser', () => {
    const ical = createRequire(import.meta.url)('ical.js') as { readonly default?: Ical } & Ical;
    const { parse, Component, Event } = ical.default ?? ical;
    const date = fc.date({ min: new Date('2020-01-01'), max: new Date('2040-12-01'), noInvalidDate: true });
    fc.assert(
      fc.property(date, fc.integer({ min: 1, max: 20 }), (start, count) => {
        const stamp = (day: number): string =>
          new Date(start.getTime() + day * 86_400_000).toISOString().slice(0, 10);
        const text = calendar(
          event(
            `DTSTART;VALUE=DATE:${stamp(0).replaceAll('-', '')}`,
            `DTEND;VALUE=DATE:${stamp(count).replaceAll('-', '')}`,
          ),
        );
        const read = new Event(new Component(parse(text)).getFirstSubcomponent('vevent'));
        const found = days(text);
        assert.equal(found[0], read.startDate.toString());
        assert.equal(found.length, read.duration.toSeconds() / 86_400);
      }),
      { numRuns: 50 },
    );
  });
});

interface Ical {
  readonly parse: (text: string) => unknown;
  readonly Component: new (parsed: unknown) => { getFirstSubcomponent: (name: string) => unknown };
  readonly Event: new (component: unknown) => {
    readonly startDate: { toString: () => string };
    readonly duration: { toSeconds: () => number };
  };
}

describe('a practice that names a calendar', () => {
  const named = readPractice('closed: [Sunday]\nholidays: feasts.ics\n');
  const feast = calendar(event('DTSTART;VALUE=DATE:20261225'));
  const forms = (holidays?: string): readonly string[] =>
    checkPractice(named, { holidays })
      .filter(({ code }) => code === 'practice/holidays-unread')
      .map(({ form, start, end }) => `${form} ${named.text.slice(start, end)}`);

  it('is closed on its days too', () => {
    const { closedDays } = tablesOf(named.value, { holidays: feast });
    assert.deepEqual([...closedDays.dates], ['2026-12-25']);
    assert.deepEqual([...closedDays.weekdays], [0]);
    assert.deepEqual(forms(feast), []);
  });

  it('is open on them in restricted mode, and hears why', () => {
    const trust = { trusted: false, holidays: feast };
    assert.deepEqual([...tablesOf(named.value, trust).closedDays.dates], []);
    const [found] = checkPractice(named, trust).filter(({ code }) => code === 'practice/holidays-unread');
    assert.match(found === undefined ? '' : messageOf(found), /restricted mode/);
  });

  it('hears of a calendar that was not read, that is empty, or of which a part counts as open', () => {
    assert.deepEqual(forms(), ['main feasts.ics']);
    assert.deepEqual(forms(calendar()), ['none feasts.ics']);
    assert.deepEqual(forms(calendar(event('DTSTART:20261225T090000Z'))), ['some feasts.ics']);
  });
});

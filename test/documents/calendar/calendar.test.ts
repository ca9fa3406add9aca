import assert from 'node:assert/strict';
import fc from 'fast-check';
import ICAL from 'ical.js';
import ical, { type VEvent } from 'node-ical';
import { calendarOf, type CalendarItem } from '../../../src/documents/calendar/calendar.ts';
import { plain } from '../../../src/documents/one-line.ts';
import { addDays } from '../../../src/note/values/days.ts';
import { hostileText } from '../hostile.ts';
import { times } from '../../share.ts';

const now = new Date('2026-03-02T10:05:09.123Z');
const item: CalendarItem = {
  patient: 'C-20417',
  visit: '2026-03-02 10:05',
  label: 'A',
  kind: 'suture removal',
  from: '2026-03-12',
  to: '2026-03-16',
  state: 'later',
};

function components(text: string): readonly ICAL.Component[] {
  const root = new ICAL.Component(ICAL.parse(text) as unknown[]);
  assert.equal(root.getAllProperties('prodid').length, 1);
  assert.equal(root.getFirstPropertyValue('version'), '2.0');
  return root.getAllSubcomponents();
}

const events = (text: string): readonly VEvent[] =>
  Object.values(ical.sync.parseICS(text)).filter((one): one is VEvent => one?.type === 'VEVENT');

const uidsOf = (text: string): readonly string[] => components(text).map((one) => new ICAL.Event(one).uid);

/** What ical.js lets pass (RFC 5545 section 3.6.1). */
function assertWhole(text: string): void {
  for (const line of text.split('\r\n')) {
    assert.ok(Buffer.byteLength(line) <= 75, line);
    assert.doesNotMatch(line, /[\r\n\u0000-\u0008\u000b-\u001f\u007f]/); // eslint-disable-line no-control-regex
  }
  const uids = uidsOf(text);
  assert.equal(new Set(uids).size, uids.length);
  for (const component of components(text)) {
    for (const name of ['uid', 'dtstamp', 'dtstart', 'sequence', 'summary'])
      assert.equal(component.getAllProperties(name).length, 1, name);
    for (const alarm of component.getAllSubcomponents('valarm'))
      for (const name of ['action', 'trigger', 'description'])
        assert.equal(alarm.getAllProperties(name).length, 1, name);
  }
}

describe('calendar', () => {
  it('has an all-day entry that two parsers read alike', () => {
    const text = calendarOf([item], { now });
    assertWhole(text);
    const [component] = components(text);
    const event = new ICAL.Event(component);
    assert.ok(event.startDate.isDate);
    assert.equal(event.startDate.toString(), '2026-03-12');
    // The end is the first day that no longer belongs to it.
    assert.equal(event.endDate.toString(), '2026-03-17');
    assert.equal(event.summary, 'suture removal: C-20417, A');
    const [read] = events(text);
    assert.equal(read?.datetype, 'date');
    assert.equal(read.start.toDateString(), 'Thu Mar 12 2026');
    assert.equal(read.end?.toDateString(), 'Tue Mar 17 2026');
    assert.equal(read.summary, event.summary);
    assert.equal(read.uid, event.uid);
  });

  it('reminds on the morning before the first day and on the morning of the last', () => {
    const alarms = (one: CalendarItem) =>
      components(calendarOf([one], { now }))[0]!.getAllSubcomponents('valarm');
    const [first, last, ...others] = alarms(item);
    assert.equal(others.length, 0);
    assert.equal(String(first!.getFirstPropertyValue('trigger')), '-PT15H');
    assert.equal(last!.getFirstProperty('trigger')!.getFirstParameter('related'), 'END');
    assert.equal(alarms({ ...item, to: item.from }).length, 1);
  });

  it('replaces an entry by the same one, later', () => {
    const before = calendarOf([item], { now });
    const after = calendarOf([{ ...item, from: '2026-03-13' }], { now: new Date('2026-03-02T10:07:00Z') });
    const [one, two] = [before, after].map((text) => new ICAL.Event(components(text)[0]));
    assert.equal(one!.uid, two!.uid);
    assert.ok(two!.sequence > one!.sequence);
    assert.match(before, /DTSTAMP:20260302T100509Z\r\nLAST-MODIFIED:20260302T100509Z/);
  });

  it('leaves out what is done, and takes out what an earlier calendar had and nothing else', () => {
    const other = { ...item, kind: 'result' };
    const old = calendarOf([item], { now });
    const later = new Date('2026-03-02T10:07:00Z');
    const done = calendarOf([{ ...item, state: 'done' }, other, { ...other, which: 'x', state: 'done' }], {
      now: later,
      replaces: old,
    });
    assertWhole(done);
    const [kept, gone, ...more] = components(done);
    assert.deepEqual(more, []);
    assert.equal(kept!.getFirstPropertyValue('status'), 'CONFIRMED');
    assert.equal(gone!.getFirstPropertyValue('status'), 'CANCELLED');
    assert.equal(gone!.getAllSubcomponents('valarm').length, 0);
    assert.deepEqual(new ICAL.Event(gone).uid, uidsOf(old)[0]);
    assert.ok(new ICAL.Event(gone).sequence > new ICAL.Event(components(old)[0]).sequence);
    assert.equal(calendarOf([{ ...item, state: 'done' }], { now }), '');
    // What is canceled already is not canceled again.
    assert.equal(components(calendarOf([other], { now, replaces: done })).length, 1);
  });

  it('never takes out entries of another program', () => {
    const foreign = calendarOf([item], { now }).replaceAll('@wheal', '@example.org');
    assert.equal(components(calendarOf([item], { now, replaces: foreign })).length, 1);
    assert.equal(calendarOf([], { now, replaces: 'BEGIN:VEVENT\nUID:x@wheal\nDTSTART:1\nEND:VEVENT' }), '');
  });

  it('leaves, in a program that imports both, what still falls due', () => {
    const items = ['a', 'b', 'c'].map((noteId) => ({ ...item, noteId }));
    const old = calendarOf(items, { now });
    const again = calendarOf(
      [
        { ...items[0]!, to: '2026-03-18' },
        { ...items[1]!, state: 'done' },
      ],
      {
        now: new Date('2026-03-03T10:00:00Z'),
        replaces: old,
      },
    );
    // Both parsers as a store: the entry with the highest sequence counts.
    for (const read of [
      (text: string) =>
        components(text).map(
          (one) => [new ICAL.Event(one).uid, String(one.getFirstPropertyValue('status'))] as const,
        ),
      (text: string) => events(text).map((one) => [one.uid, String(one.status)] as const),
    ]) {
      const store = new Map([...read(old), ...read(again)]);
      assert.deepEqual([...store.values()], ['CONFIRMED', 'CANCELLED', 'CANCELLED']);
    }
  });

  it('knows an entry by note, kind and procedure, and by nothing that may be corrected', () => {
    const known = { ...item, noteId: '5d1f', procedure: 0 };
    const uid = (one: CalendarItem): string => uidsOf(calendarOf([one], { now }))[0]!;
    for (const same of [{ patient: 'C-2' }, { visit: '2026-03-03' }, { label: 'C' }, { site: 'chin' }])
      assert.equal(uid({ ...known, ...same }), uid(known));
    for (const change of [{ noteId: '5d20' }, { procedure: 1 }, { kind: 'result' }, { which: 'x' }])
      assert.notEqual(uid({ ...known, ...change }), uid(known));
    assert.equal(uid({ ...item, visit: '2026-03-02 11:00' }), uid(item));
    for (const change of [{ patient: 'C-2' }, { visit: '2026-03-03' }])
      assert.notEqual(uid({ ...item, ...change }), uid(item));
    assert.match(uid(known), /^[0-9a-f]{32}@wheal$/);
  });

  it('shows both of two items that nothing tells apart', () => {
    assertWhole(calendarOf([item, item, item], { now }));
    assert.equal(events(calendarOf([item, item, item], { now })).length, 3);
  });

  it('keeps hostile words in any field words', () => {
    const day = fc.integer({ min: 0, max: 40_000 }).map((days) => addDays('1990-01-01', days));
    const any: fc.Arbitrary<CalendarItem> = fc.record({
      patient: fc.option(hostileText, { nil: undefined }),
      visit: fc.option(hostileText, { nil: undefined }),
      label: fc.option(hostileText, { nil: undefined }),
      kind: hostileText,
      from: day,
      to: day,
      state: fc.constantFrom('later', 'due', 'overdue'),
      reason: hostileText,
    });
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 4 }), hostileText, (items, name) => {
        const text = calendarOf(items, { now, name });
        assertWhole(text);
        assert.equal(text.match(/^BEGIN:VEVENT\r$/gm)?.length ?? 0, items.length);
        assert.equal(text.match(/^END:VCALENDAR\r$/gm)?.length, 1);
        const read = components(text);
        assert.equal(read.length, items.length);
        for (const [at, one] of items.entries()) {
          const description = String(read[at]!.getFirstPropertyValue('description') ?? '');
          assert.equal(description, plain(one.reason ?? ''));
        }
        assert.equal(events(text).length, items.length);
      }),
      { numRuns: times(150) },
    );
  });

  it('ends no later than the calendar', () => {
    const text = calendarOf([{ ...item, from: '9999-12-31', to: '9999-12-31' }], { now });
    assertWhole(text);
    assert.equal(components(text)[0]!.getAllProperties('dtend').length, 0);
  });

  it('is none without items', () => {
    assert.equal(calendarOf([], { now }), '');
  });
});

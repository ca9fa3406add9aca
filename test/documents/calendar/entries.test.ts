import assert from 'node:assert/strict';
import ICAL from 'ical.js';
import { calendarOf } from '../../../src/documents/calendar/calendar.ts';
import { calendarItems } from '../../../src/documents/schedule/schedule.ts';
import { scheduleOf } from '../../../src/followup/schedule.ts';
import { readNote } from '../../../src/note/read.ts';
import { referenceTables } from '../../../src/practice/tables.ts';

const noteOf = (rest: string): string => `visit: 2026-03-02 10:05
patient: {id: C-1, born: 1961-08-09}
procedures:
${rest}`;

interface Entry {
  readonly uid: string;
  readonly summary: string;
  readonly description: string;
  readonly first: string;
  /** The last day that it covers. */
  readonly last: string;
}

function entriesOf(rest: string, kind = '', today = '2026-03-10'): readonly Entry[] {
  const note = readNote(noteOf(rest)).value;
  assert.ok(note);
  const schedule = { path: 'a', note, ...scheduleOf(note, referenceTables, today) };
  const text = calendarOf(calendarItems([schedule]), { now: new Date('2026-03-02T00:00:00Z') });
  return new ICAL.Component(ICAL.parse(text) as unknown[])
    .getAllSubcomponents('vevent')
    .map((component) => {
      const event = new ICAL.Event(component);
      const last = event.endDate.clone();
      last.adjust(-1, 0, 0, 0);
      return {
        ...{ uid: event.uid, summary: event.summary, description: event.description },
        ...{ first: event.startDate.toString(), last: last.toString() },
      };
    })
    .filter(({ summary }) => summary.replace('Done: ', '').startsWith(kind));
}

const uids = (rest: string, kind?: string): readonly string[] => entriesOf(rest, kind).map(({ uid }) => uid);

const sewn = (due = '', site = 'left upper back', label = 'A'): string => `  - site: ${site}
    method: punch
    closure: {material: nylon, size: 4-0, count: 2}
    specimen: {label: ${label}, sent: 2026-03-02}
${due}`;

const results = (...rows: readonly string[]): string => `  - site: chin
    method: punch
    closure: none
    specimen:
      label: A
      sent: 2026-03-02
      tests: [routine histology, fungal culture]
      results:
${rows.map((row) => `        - ${row}\n`).join('')}`;

describe('entries of a calendar', () => {
  it('cover the day that the note plans, and say which days are usual', () => {
    const [usual] = entriesOf(sewn(), 'suture removal');
    assert.deepEqual([usual?.first, usual?.last], ['2026-03-12', '2026-03-16']);
    const [late] = entriesOf(sewn('    sutures-due: 2026-03-20\n'), 'suture removal');
    assert.deepEqual([late?.first, late?.last], ['2026-03-12', '2026-03-20']);
    assert.match(late?.description ?? '', /Planned for 2026-03-20; in order from 2026-03-12 to 2026-03-16/);
    const [early] = entriesOf(sewn('    sutures-due: 2026-03-09\n'), 'suture removal');
    assert.deepEqual([early?.first, early?.last], ['2026-03-09', '2026-03-16']);
    const [within] = entriesOf(sewn('    sutures-due: 2026-03-13\n'), 'suture removal');
    assert.match(within?.description ?? '', /^Best on 2026-03-13\./);
  });

  it('say from when on a visit with some grace is overdue', () => {
    const note = `${sewn()}events:\n  - {on: 2026-03-05, kind: bleeding, action: pressed, outcome: wound check on 2026-03-09}\n`;
    const [visit] = entriesOf(note, 'return visit');
    assert.equal(visit?.first, '2026-03-09');
    assert.match(visit.description, /Overdue after 2026-03-\d\d/);
  });

  it('name the place beside the label', () => {
    assert.deepEqual(
      entriesOf(sewn(), 'suture removal').map(({ summary }) => summary),
      ['suture removal: C-1, A, left upper back'],
    );
  });

  it('tell two results of one specimen apart by their days, whatever stands before them', () => {
    const [first, second] = [
      'received: 2026-03-06, diagnosis: nevus',
      'received: 2026-03-09, diagnosis: wart',
    ];
    const both = uids(results(`{${first}}`, `{${second}}`), 'telling the patient');
    assert.equal(new Set(both).size, 2);
    for (const uid of both) assert.doesNotMatch(uid, /\/2@/);
    assert.deepEqual([...uids(results(`{${second}}`), 'telling the patient')], [both[1]]);
    // What moves on is the same entry still.
    const tried = results(`{${first}, told: {on: 2026-03-07, how: voicemail}}`, `{${second}}`);
    assert.deepEqual(uids(tried, 'telling the patient'), both);
  });

  it('tell tests of one specimen apart by the test', () => {
    const all = uids(results('{diagnosis: ??}'), 'result');
    assert.equal(new Set(all).size, 2);
    for (const uid of all) assert.doesNotMatch(uid, /\/2@/);
  });

  it('tell two wounds of one site apart, and one is the same when its site or label is written better', () => {
    const both = uids(sewn() + sewn('', 'left upper back', 'B'), 'suture removal');
    assert.equal(new Set(both).size, 2);
    for (const uid of both) assert.doesNotMatch(uid, /\/2@/);
    assert.deepEqual(uids(sewn('', 'L upper back'), 'suture removal'), [both[0]]);
    assert.deepEqual(uids(sewn('', 'left upper back', 'C'), 'suture removal'), [both[0]]);
  });

  it('tell events of one kind apart by their days', () => {
    const event = (on: string): string => `  - {on: ${on}, kind: bleeding, action: pressed}\n`;
    const all = uids(`${sewn()}events:\n${event('2026-03-04')}${event('2026-03-06')}`, 'event outcome');
    assert.equal(new Set(all).size, 2);
    for (const uid of all) assert.doesNotMatch(uid, /\/2@/);
  });
});

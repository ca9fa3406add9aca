import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { check } from '../../src/checks/index.ts';
import { calendarOf } from '../../src/documents/calendar/calendar.ts';
import { handoutOf } from '../../src/documents/handout/handout.ts';
import { dateWords } from '../../src/documents/handout/language.ts';
import { summaryOf } from '../../src/documents/summary/index.ts';
import { calendarItems, scheduleData, type NoteSchedule } from '../../src/documents/schedule/schedule.ts';
import { Caseload, factsOf } from '../../src/followup/caseload.ts';
import { scheduleOf } from '../../src/followup/schedule.ts';
import type { Note } from '../../src/note/generated/types.ts';
import { readNote, type Source } from '../../src/note/read.ts';
import { tablesIn } from '../practice/tables-of.ts';

const samples = join(import.meta.dirname, '..', '..', 'samples');
const textOf = (name: string): string => readFileSync(join(samples, name), 'utf8');
const tables = tablesIn(textOf('practice.wheal.yaml'));
const names = readdirSync(samples).filter((name) => name !== 'practice.wheal.yaml');

/** What is known on the evening of the visit: everything that came later is left out. */
const fresh = (text: string): string =>
  text
    .replace(/^ +sutures-out: .*\n/gm, '')
    .replace(/^ +sutures-due: .*\n/gm, '')
    .replace(/^( +)results:\n(?:\1 .*\n)+/gm, '')
    .replace(/^events:\n(?: .*\n)+/m, '');

interface All {
  readonly source: Source<Note>;
  readonly schedule: NoteSchedule;
  readonly summary: string;
  readonly handout: string;
  readonly calendar: string;
  readonly open: ReturnType<Caseload['openOn']>;
}

function allOf(text: string, today: string): All {
  const source = readNote(text);
  const note = source.value;
  assert.ok(note);
  const judgement = check(source, { tables, today });
  const summary = summaryOf(source, judgement, { tables, practice: 'practice.wheal.yaml', today });
  const handout = handoutOf(source, judgement, { tables, language: 'en' });
  assert.ok(summary.readable && handout.readable);
  const schedule = { path: 'a', note, ...scheduleOf(note, tables, today) };
  const caseload = new Caseload();
  caseload.set('a', factsOf(source, tables));
  return {
    source,
    schedule,
    summary: summary.next.join('\n'),
    handout: handout.sections.flatMap(({ items }) => items).join('\n'),
    calendar: calendarOf(calendarItems([schedule]), { now: new Date('2026-03-02T00:00:00Z') }).replace(
      /\r\n /g,
      '',
    ),
    open: caseload.openOn(today),
  };
}

const basic = (date: string): string => date.replaceAll('-', '');

describe('summary, handout, calendar and list agree', () => {
  it('about stitches and results that are there to agree about', () => {
    const { open } = allOf(fresh(textOf('punch-sutured.wheal.yaml')), '2026-03-10');
    assert.deepEqual(
      open.map(({ kind }) => kind),
      ['result', 'suture removal'],
    );
  });

  for (const name of names)
    describe(name, () => {
      for (const [state, text] of [
        ['as it stands', textOf(name)],
        ['on the evening of the visit', fresh(textOf(name))],
      ] as const)
        for (const today of ['2026-03-20', '2026-03-30', '2026-06-01'])
          it(`${state}, as of ${today}`, () => {
            const { schedule, summary, handout, calendar, open } = allOf(text, today);
            for (const { kind, from, to, proposed, state: now, done, label, atHome, at } of schedule.items) {
              // What is done is in no calendar that replaces none.
              assert.ok(
                now === 'done' || calendar.includes(`DTSTART;VALUE=DATE:${basic(from)}`),
                `${kind} ${from} in the calendar`,
              );
              const listed = open.filter(
                (item) =>
                  item.kind === kind && item.start === at.start && item.label === label && item.to === to,
              );
              assert.equal(listed.length > 0, now !== 'done' && !atHome, `${kind} in the list`);
              for (const item of listed)
                assert.deepEqual([item.from, item.proposed, item.state], [from, proposed, now]);
              if (kind === 'suture removal' && done === undefined) {
                assert.ok(summary.includes(` from ${from} to ${to}`), `stitches in the summary: ${summary}`);
                assert.ok(handout.includes(dateWords(proposed, 'en')), `stitches in the handout: ${handout}`);
              }
              if (kind === 'result' && done === undefined) {
                assert.ok(summary.includes(`overdue after ${to}`), summary);
                assert.ok(handout.includes(dateWords(to, 'en')), handout);
              }
            }
            for (const item of open) {
              if (item.to === undefined) continue;
              assert.ok(
                schedule.items.some(
                  ({ kind, to, state: now }) => kind === item.kind && to === item.to && now === item.state,
                ),
              );
            }
            assert.equal(scheduleData([schedule]).items.length, schedule.items.length);
          });
    });
});

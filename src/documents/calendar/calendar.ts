import type { IsoDate } from '../../note/values/values.ts';
import { addDays } from '../../note/values/days.ts';
import { byteLength, cut } from '../bytes.ts';
import { plain } from '../one-line.ts';

/** Something that falls due for a patient, as an entry of a calendar tells it. */
export interface CalendarItem {
  /** Chart number or initials; never a name. Undefined where the note has none. */
  readonly patient: string | undefined;
  /** Day of the visit with its time where there is one, as the note has it. */
  readonly visit: string | undefined;
  /** What tells the specimen, or the procedure, from others of the visit. Never its place in the list. */
  readonly label: string | undefined;
  /** Where on the body; tells procedures apart that have no label. */
  readonly site?: string | undefined;
  /** What tells it from others of its kind and label, as which test or which result. */
  readonly which?: string | undefined;
  readonly kind: string;
  readonly from: IsoDate;
  /** The last day; not before `from`. */
  readonly to: IsoDate;
  readonly state: 'later' | 'due' | 'overdue' | 'done';
  /** Why then, for whoever opens the entry. */
  readonly reason?: string;
}

export interface CalendarContext {
  /** When it is written; a later calendar replaces what an earlier one put there. */
  readonly now: Date;
  /** Name of the practice, if the calendar should bear it. */
  readonly name?: string;
}

/**
 * A calendar (RFC 5545) with an all-day entry for each item. What is done is canceled, so that importing the file once
 * more takes it out. Patients appear by chart number or initials only.
 */
export function calendarOf(items: readonly CalendarItem[], { now, name = '' }: CalendarContext): string {
  const stamp = now.toISOString().replace(/\.\d+/, '').replace(/[-:]/g, '');
  const used = new Map<string, number>();
  return [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Wheal//Follow-up//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    ...(name === '' ? [] : [`X-WR-CALNAME:${escaped(name)}`]),
    ...items.flatMap((item) => eventOf(item, uidOf(item, used), stamp, sequenceOf(now))),
    'END:VCALENDAR',
    '',
  ]
    .map(folded)
    .join('\r\n');
}

/** Morning of the day before: 15 hours before midnight. */
const dayBefore = '-PT15H';

function eventOf(item: CalendarItem, uid: string, stamp: string, sequence: number): readonly string[] {
  const { kind, label, site, from, to, state, reason } = item;
  const done = state === 'done';
  const patient = item.patient ?? 'patient without a chart number';
  const what = `${kind}: ${[patient, label, site].filter((part) => part !== undefined).join(', ')}`;
  const summary = escaped(done ? `Done: ${what}` : what);
  const last = to < from ? from : to;
  const alarm = (trigger: string): readonly string[] => [
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${summary}`,
    trigger,
    'END:VALARM',
  ];
  return [
    'BEGIN:VEVENT',
    `UID:${uid}`,
    `DTSTAMP:${stamp}`,
    `LAST-MODIFIED:${stamp}`,
    `SEQUENCE:${sequence}`,
    `DTSTART;VALUE=DATE:${basic(from)}`,
    ...endOf(last),
    `SUMMARY:${summary}`,
    ...(reason === undefined ? [] : [`DESCRIPTION:${escaped(reason)}`]),
    `STATUS:${done ? 'CANCELLED' : 'CONFIRMED'}`,
    'TRANSP:TRANSPARENT',
    'CLASS:PRIVATE',
    ...(done ? [] : alarm(`TRIGGER:${dayBefore}`)),
    // The end is midnight after the last day, so this is the morning of the last day.
    ...(done || last === from ? [] : alarm(`TRIGGER;RELATED=END:${dayBefore}`)),
    'END:VEVENT',
  ];
}

/** The day on which it no longer is. After the year 9999 no form has room for it: then there is no end. */
const endOf = (last: IsoDate): readonly string[] =>
  last < lastDate ? [`DTEND;VALUE=DATE:${basic(addDays(last, 1))}`] : [];

const lastDate = '9999-12-31';

const basic = (date: IsoDate): string => date.replaceAll('-', '');

/** Grows with time and fits 31 bits until the year 6000: minutes since 2020. */
const sequenceOf = (now: Date): number =>
  Math.max(0, Math.floor((now.getTime() - Date.UTC(2020, 0)) / 60_000));

/** The same for the same item whenever it is written, and another for every other. */
function uidOf(item: CalendarItem, used: Map<string, number>): string {
  const { patient, visit, label, site, which, kind } = item;
  const named = [kind, visit, patient, label ?? site, ...(which === undefined ? [] : [which])];
  const parts = named.map((part) => encodeURIComponent(plain(part ?? '')));
  const uid = parts.join('/');
  const before = used.get(uid) ?? 0;
  used.set(uid, before + 1);
  // Two items that nothing tells apart: a second entry is better than one that hides the other.
  return `${uid}${before === 0 ? '' : `/${before + 1}`}@wheal`;
}

const escaped = (text: string): string => plain(text).replace(/[\\;,]/g, '\\$&');

/** Lines have at most 75 bytes; those that go on begin with a blank (RFC 5545 section 3.1). */
function folded(line: string): string {
  return cut(line, byteLength, (piece) => (piece === 0 ? 75 : 74)).join('\r\n ');
}

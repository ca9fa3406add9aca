import type { IsoDate } from '../../note/values/values.ts';
import { addDays } from '../../note/values/days.ts';
import { sha256 } from '../../note/signature/sha256.ts';
import { byteLength, cut } from '../bytes.ts';
import { plain } from '../one-line.ts';
import { entriesIn, uidEnding, type EarlierEntry } from './earlier.ts';

/** Something that falls due for a patient, as an entry of a calendar tells it. */
export interface CalendarItem {
  /** The random identifier of the note; undefined where it has none. */
  readonly noteId?: string | undefined;
  /** Counts from 0; undefined for what concerns the whole visit. */
  readonly procedure?: number | undefined;
  /** Chart number or initials; never a name. Undefined where the note has none. */
  readonly patient: string | undefined;
  /** Day of the visit with its time where there is one, as the note has it. */
  readonly visit: string | undefined;
  /** The label of the specimen, for whoever reads the entry. */
  readonly label: string | undefined;
  /** Where on the body. */
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
  /** Text of the calendar that was written before: what vanished from it is canceled, and nothing else is. */
  readonly replaces?: string | undefined;
}

/**
 * A calendar (RFC 5545) with an all-day entry for each item that is not done; empty where it would have no entry.
 * What an earlier calendar had and this one has not is canceled. Patients appear by chart number or initials only.
 */
export function calendarOf(
  items: readonly CalendarItem[],
  { now, name = '', replaces = '' }: CalendarContext,
): string {
  const stamp = now.toISOString().replace(/\.\d+/, '').replace(/[-:]/g, '');
  const used = new Map<string, number>();
  const named = items
    .map((item) => ({ item, uid: uidOf(item, used) }))
    .filter(({ item }) => item.state !== 'done');
  const present = new Set(named.map(({ uid }) => uid));
  const earlier = entriesIn(replaces);
  const gone = [...earlier.values()].filter(({ uid }) => !present.has(uid));
  if (named.length + gone.length === 0) return '';
  const sequence = (uid: string): number => Math.max(sequenceOf(now), (earlier.get(uid)?.sequence ?? -1) + 1);
  return [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Wheal//Follow-up//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    ...(name === '' ? [] : [`X-WR-CALNAME:${escaped(name)}`]),
    ...named.flatMap(({ item, uid }) => eventOf(item, uid, stamp, sequence(uid))),
    ...gone.flatMap((entry) => canceled(entry, stamp, sequence(entry.uid))),
    'END:VCALENDAR',
    '',
  ]
    .map(folded)
    .join('\r\n');
}

/** Morning of the day before: 15 hours before midnight. */
const dayBefore = '-PT15H';

function eventOf(item: CalendarItem, uid: string, stamp: string, sequence: number): readonly string[] {
  const { kind, label, site, from, to, reason } = item;
  const patient = item.patient ?? 'patient without a chart number';
  const what = `${kind}: ${[patient, label, site].filter((part) => part !== undefined).join(', ')}`;
  const summary = escaped(what);
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
    'STATUS:CONFIRMED',
    'TRANSP:TRANSPARENT',
    'CLASS:PRIVATE',
    ...alarm(`TRIGGER:${dayBefore}`),
    // The end is midnight after the last day, so this is the morning of the last day.
    ...(last === from ? [] : alarm(`TRIGGER;RELATED=END:${dayBefore}`)),
    'END:VEVENT',
  ];
}

/** Takes out an entry that an earlier calendar put there (RFC 5546 section 3.2.5 names what is needed). */
const canceled = (
  { uid, start, summary }: EarlierEntry,
  stamp: string,
  sequence: number,
): readonly string[] => [
  'BEGIN:VEVENT',
  `UID:${uid}`,
  `DTSTAMP:${stamp}`,
  `LAST-MODIFIED:${stamp}`,
  `SEQUENCE:${sequence}`,
  `DTSTART;VALUE=DATE:${start}`,
  `SUMMARY:${summary}`,
  'STATUS:CANCELLED',
  'TRANSP:TRANSPARENT',
  'CLASS:PRIVATE',
  'END:VEVENT',
];

/** The day on which it no longer is. After the year 9999 no form has room for it: then there is no end. */
const endOf = (last: IsoDate): readonly string[] =>
  last < lastDate ? [`DTEND;VALUE=DATE:${basic(addDays(last, 1))}`] : [];

const lastDate = '9999-12-31';

const basic = (date: IsoDate): string => date.replaceAll('-', '');

/** Grows with time and fits 31 bits until the year 6000: minutes since 2020. */
const sequenceOf = (now: Date): number =>
  Math.max(0, Math.floor((now.getTime() - Date.UTC(2020, 0)) / 60_000));

/**
 * The same for the same item whenever it is written, and another for every other. A digest, since nothing in it may
 * identify a person (RFC 7986 section 5.3); the label, the site and the time of the visit may be corrected.
 */
function uidOf(item: CalendarItem, used: Map<string, number>): string {
  const { noteId, patient, visit, procedure, which, kind } = item;
  const note =
    noteId === undefined ? ['visit', patient ?? '', (visit ?? '').slice(0, dayLength)] : ['note', noteId];
  const named = JSON.stringify([...note, kind, procedure ?? '', which ?? '']);
  const before = used.get(named) ?? 0;
  used.set(named, before + 1);
  // Two items that nothing else tells apart, as containers with the same tests, are told apart by their order.
  return `${sha256(JSON.stringify([named, before])).slice(0, digits)}${uidEnding}`;
}

/** Characters of a day such as 2026-03-02. */
const dayLength = 10;

/** 128 bits. */
const digits = 32;

const escaped = (text: string): string => plain(text).replace(/[\\;,]/g, '\\$&');

/** Lines have at most 75 bytes; those that go on begin with a space (RFC 5545 section 3.1). */
function folded(line: string): string {
  return cut(line, byteLength, (piece) => (piece === 0 ? 75 : 74)).join('\r\n ');
}

import { dayWords } from '../../followup/due.ts';
import type { DueItem, Undated } from '../../followup/schedule.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { citation } from '../../reference/sources/index.ts';
import type { Records } from '../format.ts';
import type { CalendarItem } from '../calendar/calendar.ts';
import { notReadJson, notReadText, type NotRead } from '../not-read.ts';
import { plain } from '../one-line.ts';
import { joined, said } from '../from-note.ts';

type Said<T> = Pick<Leaf<T>, 'text' | 'value' | 'pending'>;

/** What of a note its schedule shows. */
interface ScheduledNote {
  readonly noteId?: Said<string>;
  readonly visit?: Said<{ readonly date: IsoDate }>;
  readonly patient?: { readonly id?: Said<string>; readonly initials?: Said<string> };
  readonly procedures?: readonly {
    readonly specimen?: readonly { readonly label?: Said<string> }[];
  }[];
}

/** What falls due after the visit of one note. */
export interface NoteSchedule {
  /** Path of the note as the user named it. */
  readonly path: string;
  readonly note: ScheduledNote;
  readonly items: readonly DueItem[];
  readonly undated: readonly Undated[];
}

/** A schedule without the rest of its note, as plain data. */
export const scheduledOf = ({ path, note, items, undated }: NoteSchedule): NoteSchedule => ({
  path,
  note: {
    ...part('noteId', saidOf(note.noteId)),
    ...part('visit', saidOf(note.visit)),
    patient: {
      ...part('id', saidOf(note.patient?.id)),
      ...part('initials', saidOf(note.patient?.initials)),
    },
    procedures: (note.procedures ?? []).map(({ specimen = [] }) => ({
      specimen: specimen.map(({ label }) => part('label', saidOf(label))),
    })),
  },
  items: items.map((item) => ({ ...item, at: rangeOf(item.at) })),
  undated: undated.map((one) => ({ ...one, at: rangeOf(one.at) })),
});

const saidOf = <T>(leaf: Said<T> | undefined): Said<T> | undefined =>
  leaf && { text: leaf.text, value: leaf.value, pending: leaf.pending };

const part = <Key extends string, Value>(
  key: Key,
  value: Value | undefined,
): Readonly<Partial<Record<Key, Value>>> =>
  (value === undefined ? {} : { [key]: value }) as Readonly<Partial<Record<Key, Value>>>;

const rangeOf = ({ start, end }: Range): Range => ({ start, end });

const patientOf = ({ patient }: ScheduledNote): string | undefined =>
  said(patient?.id) ?? said(patient?.initials);

/** The schedules of several notes as text. */
export function scheduleText(
  schedules: readonly NoteSchedule[],
  today: IsoDate,
  notRead: readonly NotRead[] = [],
): string {
  const parts = schedules.map(({ path, note, items, undated }) => {
    const who = joined([patientOf(note) ?? 'no chart number', said(note.visit)], ', visit ') ?? '';
    const rows = [...items.map(itemRow), ...undated.map(undatedRow)];
    const none = '  Nothing falls due.\n';
    return `${who} (${plain(path)})\n${rows.length === 0 ? none : rows.join('')}`;
  });
  const missing = notReadText(notRead);
  return `What falls due, as of ${today}.\n\n${[...parts, ...(missing === '' ? [] : [missing])].join('\n')}`;
}

const placeOf = ({ site, label }: Pick<DueItem, 'site' | 'label'>): string | undefined =>
  joined([label === undefined ? undefined : `specimen ${label}`, site]);

function itemRow(item: DueItem): string {
  const { kind, from, to, state, what, reason, source } = item;
  const span = from === to ? from : `${from} to ${to}`;
  const day = kind === 'result' ? undefined : dayWords(item);
  const best = day === undefined ? '' : `, ${day}`;
  const place = placeOf(item);
  return plainRows([
    `  ${state.padEnd(7)} ${span}${best}: ${kind}${place === undefined ? '' : `, ${place}`}${what === undefined ? '' : ` (${what})`}`,
    `          ${reason} [${citation(source)}]`,
  ]);
}

function undatedRow(one: Undated): string {
  const place = placeOf(one);
  return plainRows([`  no day  ${one.kind}${place === undefined ? '' : `, ${place}`}: ${one.why}`]);
}

const plainRows = (rows: readonly string[]): string => rows.map((row) => `${plain(row)}\n`).join('');

/** The schedules as data. `procedure` counts from 0 and is null for what concerns the whole visit. */
export function scheduleData(
  schedules: readonly NoteSchedule[],
  notRead: readonly NotRead[] = [],
): Records<'items' | 'undated' | 'notRead'> {
  const common = ({ path, note }: NoteSchedule): object => ({ note: path, patient: patientOf(note) ?? null });
  const items = schedules.flatMap((schedule) =>
    schedule.items.map((item) => ({
      ...common(schedule),
      procedure: item.procedure ?? null,
      kind: item.kind,
      from: item.from,
      to: item.to,
      state: item.state,
      proposed: item.proposed,
      ...{ site: item.site ?? null, label: item.label ?? null, what: item.what ?? null },
      ...{ reason: item.reason, source: item.source, citation: citation(item.source), steps: item.steps },
    })),
  );
  const undated = schedules.flatMap((schedule) =>
    schedule.undated.map(({ procedure, kind, site, label, why }) => ({
      ...common(schedule),
      ...{ procedure: procedure ?? null, kind, site: site ?? null, label: label ?? null, why },
    })),
  );
  return { items, undated, notRead: notReadJson(notRead) };
}

/** What falls due, as entries of a calendar: each covers every day on which it is in order or planned. */
export const calendarItems = (schedules: readonly NoteSchedule[]): readonly CalendarItem[] =>
  schedules.flatMap(({ note, items }) =>
    items.map((item) => ({
      ...{ noteId: note.noteId?.value, procedure: item.procedure },
      patient: patientOf(note),
      visit: note.visit?.value?.date ?? said(note.visit),
      label: item.label ?? labelOf(note, item),
      ...{ site: item.site, which: item.which, kind: item.kind, state: item.state },
      from: earlier(item.from, item.proposed),
      to: later(item.to, item.proposed),
      reason: `${entryWords(item)}${item.reason}`,
    })),
  );

const earlier = (a: IsoDate, b: IsoDate): IsoDate => (b < a ? b : a);
const later = (a: IsoDate, b: IsoDate): IsoDate => (b > a ? b : a);

/** The label of the first specimen of the procedure that an item belongs to. */
function labelOf({ procedures = [] }: ScheduledNote, { procedure }: DueItem): string | undefined {
  const specimens = procedure === undefined ? undefined : procedures[procedure]?.specimen;
  return specimens?.find(({ label }) => label?.value !== undefined)?.label?.value;
}

/** Which day is best, where that is not the first; which days are in order, where another is planned. */
function entryWords(item: DueItem): string {
  const { from, to, proposed, until } = item;
  const words = dayWords(item);
  const outside = proposed < from || proposed > to;
  const best =
    words === undefined
      ? ''
      : `${words.charAt(0).toUpperCase()}${words.slice(1)}${outside ? `; in order from ${from} to ${to}` : ''}. `;
  return until > later(to, proposed) ? `${best}Overdue after ${until}. ` : best;
}

import { readMoment } from '../note/values/dates.ts';
import { addDays, daysBetween } from '../note/values/days.ts';
import type { IsoDate } from '../note/values/values.ts';

/** What an iCalendar file says of closed days. */
export interface Holidays {
  /** The days of its all-day events, in order, each once. */
  readonly dates: readonly IsoDate[];
  /** Events that are not counted: they repeat, have a clock time, or a date that can't be read. */
  readonly unread: number;
}

/** A holiday is no longer than a school's summer; a longer one is a slip of the year. */
const longestDays = 92;
/** As many days as anybody closes in ten years. */
const mostDates = 4000;

/**
 * The days of all-day events in an iCalendar text (RFC 5545): `DTSTART` as a date, `DTEND` the day after the last.
 * A cancelled event is left out. Any text is answered.
 */
export function holidaysOf(text: string): Holidays {
  const dates = new Set<IsoDate>();
  let unread = 0;
  for (const event of eventsIn(text)) {
    if (/^CANCELLED$/i.test(event.get('STATUS') ?? '')) continue;
    const days = event.has('RRULE') || event.has('RDATE') ? undefined : daysOf(event);
    if (days === undefined || dates.size + days.length > mostDates) unread += 1;
    else for (const day of days) dates.add(day);
  }
  return { dates: [...dates].sort(), unread };
}

type Event = ReadonlyMap<string, string>;

const property = /^([A-Za-z-]+)(?:;[^:]*)?:(.*)$/;
const nesting: ReadonlyMap<string, number> = new Map([
  ['BEGIN', 1],
  ['END', -1],
]);

/** The properties of each event by name; what is nested in it, such as an alarm, is passed over. */
function* eventsIn(text: string): Generator<Event> {
  let event: Map<string, string> | undefined;
  let inner = 0;
  for (const line of text.replace(/\r?\n[ \t]/g, '').split(/\r?\n/)) {
    const [, name = '', value = ''] = property.exec(line) ?? [];
    const key = name.toUpperCase();
    const step = nesting.get(key);
    if (step === undefined) {
      if (inner === 0) event?.set(key, value.trim());
    } else if (value.trim().toUpperCase() !== 'VEVENT') inner += step;
    else {
      if (step < 0 && event !== undefined) yield event;
      event = step > 0 ? new Map() : undefined;
      inner = 0;
    }
  }
}

/** The days of an event; undefined where they can't be read. */
function daysOf(event: Event): readonly IsoDate[] | undefined {
  const first = dateIn(event.get('DTSTART'));
  if (first === undefined) return undefined;
  const end = event.get('DTEND');
  const after = end === undefined ? undefined : dateIn(end);
  if (end !== undefined && after === undefined) return undefined;
  const count = after === undefined ? 1 : daysBetween(first, after);
  if (count < 0 || count > longestDays) return undefined;
  // An end on the first day itself is a common slip for one day.
  return Array.from({ length: Math.max(1, count) }, (_, day) => addDays(first, day));
}

function dateIn(value: string | undefined): IsoDate | undefined {
  const [, year, month, day] = /^(\d{4})(\d\d)(\d\d)$/.exec(value ?? '') ?? [];
  return day === undefined ? undefined : readMoment(`${year}-${month}-${day}`).value?.date;
}

import { readMoment } from '../note/values/dates.ts';
import type { Practice } from '../note/generated/types.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import type { IsoDate } from '../note/values/values.ts';
import type { Faults } from './faults.ts';
import { holidaysOf } from './holidays.ts';

/** When a practice does not work. */
export interface ClosedDays {
  /** 0 is Sunday, 6 is Saturday. */
  readonly weekdays: ReadonlySet<number>;
  readonly dates: ReadonlySet<IsoDate>;
}

/** The closed days of a practice that says nothing. */
export const weekend: ClosedDays = { weekdays: new Set([0, 6]), dates: new Set() };

const weekdays = ['sunday', 'monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday'];

const daysByWord: ReadonlyMap<string, readonly number[]> = new Map<string, readonly number[]>([
  ...weekdays.flatMap((name, day): [string, readonly number[]][] => [
    [name, [day]],
    [`${name}s`, [day]],
    [name.slice(0, 3), [day]],
  ]),
  ['weekend', [0, 6]],
  ['weekends', [0, 6]],
  ['none', []],
]);

/** The calendar of holidays that a practice file names. */
export interface Calendar {
  /** False in restricted mode: days that the calendar closes would put off what is overdue. */
  readonly trusted: boolean;
  /** Undefined where it was not found or not looked for. */
  readonly text: string | undefined;
}

/** Dates alone add to the weekend; once a weekday or `none` is named, the weekdays are those that are named. */
export function closedDaysOf({ closed, holidays }: Practice, calendar: Calendar, faults: Faults): ClosedDays {
  const days = new Set<number>();
  const dates = new Set<IsoDate>(holidayDates(holidays, calendar, faults));
  let named = false;
  for (const leaf of closed ?? []) {
    if (leaf.value === undefined) continue;
    const word = leaf.value.trim().toLowerCase();
    const known = daysByWord.get(word);
    const date = known === undefined ? readMoment(word).value?.date : undefined;
    if (known !== undefined) {
      named = true;
      for (const day of known) days.add(day);
    } else if (date !== undefined) dates.add(date);
    else faults.unknown('unknown-day', leaf, leaf.value, weekdays.map(capital));
  }
  return { weekdays: named ? days : weekend.weekdays, dates };
}

/** The days of the calendar that the practice names; what of it can't be read is said. */
function holidayDates(
  named: Leaf<string> | undefined,
  { trusted, text }: Calendar,
  faults: Faults,
): readonly IsoDate[] {
  if (named?.value === undefined) return [];
  const args = { word: named.value };
  if (!trusted || text === undefined) {
    faults.add('holidays-unread', named, args, trusted ? 'main' : 'restricted');
    return [];
  }
  const { dates, unread } = holidaysOf(text);
  if (unread > 0) faults.add('holidays-unread', named, { ...args, count: unread }, 'some');
  else if (dates.length === 0) faults.add('holidays-unread', named, args, 'none');
  return dates;
}

const capital = (word: string): string => word[0]!.toUpperCase() + word.slice(1);

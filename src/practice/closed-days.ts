import { readMoment } from '../note/dates.ts';
import type { Leaf } from '../note/leaf.ts';
import type { IsoDate } from '../note/values.ts';
import type { Faults } from './faults.ts';

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

/** Dates alone add to the weekend; once a weekday or `none` is named, the weekdays are those that are named. */
export function closedDaysOf(closed: readonly Leaf<string>[] | undefined, faults: Faults): ClosedDays {
  const days = new Set<number>();
  const dates = new Set<IsoDate>();
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

const capital = (word: string): string => word[0]!.toUpperCase() + word.slice(1);

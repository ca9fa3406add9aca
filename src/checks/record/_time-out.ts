import type { Leaf } from '../../note/tree/leaf.ts';
import type { Injection, Note } from '../../note/generated/types.ts';
import type { Occasion } from '../../note/values/values.ts';

export type Clock = Leaf<Occasion>;

export const minutesOf = (clock: Clock | undefined): number | undefined => clock?.value?.minutes;

/** A cream goes on long before the patient enters the room. */
export const isCream = ({ keys }: Injection): boolean => keys.has('amount') || keys.has('on');

export const day = 24 * 60;

/** Clock times that are closer than this across midnight belong to one visit, in minutes. */
export const night = 6 * 60;

/** How many minutes one clock time is before another; midnight may be between two that are near each other. */
export function minutesBefore(at: number, other: number): number {
  const before = other - at;
  return Math.abs(before) > day - night ? before - Math.sign(before) * day : before;
}

/** The first injection before a time of the day. */
export function injectionBefore(note: Note, minutes: number): Clock | undefined {
  let first: Clock | undefined;
  let longest = 0;
  for (const { anesthetic = [] } of [note, ...(note.procedures ?? [])])
    for (const injection of anesthetic) {
      const at = minutesOf(injection.time);
      const before = at === undefined ? 0 : minutesBefore(at, minutes);
      if (before <= longest || isCream(injection)) continue;
      first = injection.time;
      longest = before;
    }
  return first;
}

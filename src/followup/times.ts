import { readDate } from '../note/values/dates.ts';
import { addMonths } from '../note/values/days.ts';
import { bareIntervalIn, dayAfter, intervalIn, type Interval } from '../note/values/intervals.ts';
import type { IsoDate } from '../note/values/values.ts';

const everyYear = /\b(?:yearly|annual(?:ly)?|every year)\b/i;

/**
 * The day that a text plans for: a date in it, or `in 6 months` counted from a day; of `in 2 to 3 weeks` the earlier.
 * Undefined where it names none.
 */
export function timeIn(text: string, from: IsoDate): IsoDate | undefined {
  const interval = dateIn(text) === undefined ? intervalIn(text) : undefined;
  return interval === undefined ? dateIn(text) : dayAfter(interval, from);
}

/** The day of a visit to look again, of which the interval is written alone: `skin check 6 months`, `yearly skin check`. */
export function recallDay(text: string, from: IsoDate): IsoDate | undefined {
  const interval = intervalPlanned(text, true);
  if (interval !== undefined) return dayAfter(interval, from);
  return dateIn(text) ?? (everyYear.test(text) ? addMonths(from, 12) : undefined);
}

/** The interval after which a text plans something; undefined where it names a date, or none. */
export function intervalPlanned(text: string, recalled: boolean): Interval | undefined {
  if (dateIn(text) !== undefined) return undefined;
  return intervalIn(text) ?? (recalled ? bareIntervalIn(text) : undefined);
}

function dateIn(text: string): IsoDate | undefined {
  for (const [date] of text.matchAll(/\d{4}-\d{2}-\d{2}/g)) {
    const value = readDate(date).value;
    if (value !== undefined) return value;
  }
  return undefined;
}

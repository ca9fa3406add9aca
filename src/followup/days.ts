import type { IsoDate } from '../note/values.ts';

const dayMs = 86_400_000;

/**
 * Calendar dates as numbers, counted from 1970-01-01. No clock and no time zone takes part: a day that a zone left
 * out, or made 23 hours long, counts as one day like any other.
 */
export const dayNumber = (date: IsoDate): number => Date.parse(`${date}T00:00:00Z`) / dayMs;

/** The last day that a date has room for; what lies behind it counts as that day. */
const lastDay = 2_932_896;

export const dateOf = (day: number): IsoDate =>
  new Date(Math.min(day, lastDay) * dayMs).toISOString().slice(0, 10);

export const addDays = (date: IsoDate, days: number): IsoDate => dateOf(dayNumber(date) + days);

/** Days from one date to another; negative where the second is the earlier. */
export const daysBetween = (from: IsoDate, to: IsoDate): number => dayNumber(to) - dayNumber(from);

/** 0 is Sunday, 6 is Saturday. 1970-01-01 was a Thursday. */
export const weekdayOf = (day: number): number => (((day + 4) % 7) + 7) % 7;

import type { IsoDate } from './values.ts';

/**
 * Calendar dates as numbers, counted from 1970-01-01, by the rules of the Gregorian calendar alone. No clock and no
 * time zone takes part: a day that a zone left out, or made 23 hours long, counts as one day like any other. Written
 * out, since each check of a note counts dozens of days.
 */
export function dayNumber(date: IsoDate): number {
  const month = twoDigits(date, 5);
  // Years that begin in March end with the leap day.
  const year = twoDigits(date, 0) * 100 + twoDigits(date, 2) - (month <= 2 ? 1 : 0);
  const sinceMarch = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + twoDigits(date, 8) - 1;
  return (
    year * 365 + Math.floor(year / 4) - Math.floor(year / 100) + Math.floor(year / 400) + sinceMarch - epoch
  );
}

const zero = 48;

/** The number of two digits at a place of a date; to cut them out and convert them takes ten times as long. */
const twoDigits = (date: IsoDate, at: number): number =>
  (date.charCodeAt(at) - zero) * 10 + date.charCodeAt(at + 1) - zero;

/** 1970-01-01 counted from the first of March of the year 0. */
const epoch = 719_468;
const daysIn400Years = 146_097;

/** The last day that a date has room for; what lies behind it counts as that day. */
const lastDay = 2_932_896;

export function dateOf(day: number): IsoDate {
  const since = Math.min(day, lastDay) + epoch;
  const era = Math.floor(since / daysIn400Years);
  const inEra = since - era * daysIn400Years;
  const yearOfEra = Math.floor(
    (inEra - Math.floor(inEra / 1460) + Math.floor(inEra / 36_524) - Math.floor(inEra / 146_096)) / 365,
  );
  const inYear = inEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const fromMarch = Math.floor((5 * inYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  const ofMonth = inYear - Math.floor((153 * fromMarch + 2) / 5) + 1;
  return `${inTwo(Math.floor(year / 100))}${inTwo(year % 100)}-${inTwo(month)}-${inTwo(ofMonth)}`;
}

/** A number below 100 in two digits. */
const inTwo = (number: number): string => (number < 10 ? `0${number}` : `${number}`);

export const addDays = (date: IsoDate, days: number): IsoDate => dateOf(dayNumber(date) + days);

/** Days from one date to another; negative where the second is the earlier. */
export const daysBetween = (from: IsoDate, to: IsoDate): number => dayNumber(to) - dayNumber(from);

/** 0 is Sunday, 6 is Saturday. 1970-01-01 was a Thursday. */
export const weekdayOf = (day: number): number => (((day + 4) % 7) + 7) % 7;

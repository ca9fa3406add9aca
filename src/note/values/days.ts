import { differenceInMonths, parseISO } from 'date-fns';
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

/** The last day that a date has room for; what is later counts as that day. */
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

/** Days in a month of the Gregorian calendar, January being 1; 0 for what is not a month. */
export function daysIn(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [31, 0, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
}

/** The same day of a later month, or its last day where it is shorter. */
export function addMonths(date: IsoDate, months: number): IsoDate {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  const index = year * 12 + (month - 1) + months;
  const [inYear, inMonth] = [Math.floor(index / 12), (index % 12) + 1];
  const first = `${String(Math.min(9999, inYear)).padStart(4, '0')}-${inTwo(inMonth)}-01`;
  return addDays(first, Math.min(day, daysIn(inYear, inMonth)) - 1);
}

/** Whole months from one date to a later one, as ages are counted. */
export const monthsBetween = (from: IsoDate, to: IsoDate): number =>
  differenceInMonths(parseISO(to), parseISO(from));

import type { Problem } from '../tree/finding.ts';
import { daysIn } from './days.ts';
import {
  noProblems,
  longestRead,
  part,
  problemAt,
  trimmed,
  unread,
  type Reading,
  type Stretch,
} from './reading.ts';
import type { IsoDate, Moment, Occasion } from './values.ts';

const usualMoment = /^(\d{4})-(\d\d)-(\d\d)(?:[ T](.+))?$/;
const firstYear = 1900;
const lastYear = 2100;

/** Reads YYYY-MM-DD, with a clock time after it if wanted. Days that are not in the calendar are no dates. */
export function readMoment(text: string): Reading<Moment> {
  const typed = trimmed(text);
  const match = typed.typed.length > longestRead ? null : usualMoment.exec(typed.typed);
  if (!match) return unread(wordsBehind(typed) ?? dateForm(typed));
  const date = typed.typed.slice(0, 10);
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  const fault = dateFault(part(typed, 0, 10), year, month, day);
  if (fault !== undefined) return unread(fault);
  const problems =
    year < firstYear || year > lastYear ? [implausibleYear(part(typed, 0, 10), year)] : noProblems;
  if (match[4] === undefined) return { value: { date, minutes: undefined }, problems };
  const minutes = clockMinutes(match[4].replace(/^at\s/i, ''));
  return minutes === undefined
    ? unread(wordsBehind(typed) ?? noSuchTime(part(typed, typed.typed.length - match[4].length)))
    : { value: { date, minutes }, problems };
}

/** What is after a date and is no clock time: who and how have keys of their own. */
const behindDate = /^\d{4}-\d\d-\d\d[\s,;]+(?=[^\d\s])/;

function wordsBehind(typed: Stretch): Problem | undefined {
  const date = typed.typed.length > longestRead ? undefined : behindDate.exec(typed.typed)?.[0];
  return date === undefined
    ? undefined
    : problemAt(part(typed, date.length), 'quantity/no-such-time', { form: 'words' });
}

/** Reads a calendar date; a clock time after it is allowed and not part of the value. */
export function readDate(text: string): Reading<IsoDate> {
  const { value, problems } = readMoment(text);
  return { value: value?.date, problems };
}

/** What says that a specimen went, without a day. */
const went =
  /^(?:yes|y|true|done|today|same day|sent|submitted|(?:(?:sent|submitted) )?to (?:the )?(?:lab|path|derm)\w*(?: \w+)?)$/i;

/** Reads the day on which a specimen was sent. That it went is understood, and the day is asked for. */
export function readSent(text: string): Reading<IsoDate> {
  const typed = trimmed(text);
  return typed.typed.length <= longestRead && went.test(typed.typed)
    ? unread(problemAt(typed, 'quantity/date-form', { form: 'sent' }))
    : readDate(text);
}

const exists = (year: number, month: number, day: number): boolean => day >= 1 && day <= daysIn(year, month);

function dateFault(typed: Stretch, year: number, month: number, day: number): Problem | undefined {
  if (exists(year, month, day)) return undefined;
  const days = daysIn(year, month);
  return days === 0
    ? problemAt(typed, 'quantity/no-such-date', { form: 'month' })
    : problemAt(typed, 'quantity/no-such-date', { args: { days } });
}

function implausibleYear(typed: Stretch, year: number): Problem {
  return problemAt(typed, 'quantity/implausible', { form: 'year', args: { year } });
}

const months: readonly string[] =
  'january february march april may june july august september october november december'.split(' ');

/** The number of a month by its name or the first letters of it, as people cut it; 0 where it is none. */
function monthNamed(word: string): number {
  const typed = word.toLowerCase();
  if (typed === 'sept') return 9;
  return months.findIndex((name) => name === typed || name.slice(0, 3) === typed) + 1;
}

/** With something between its parts, or with two digits for each. */
const yearFirst = /^(\d{4})(?:\s?[-/.]\s?|\s)(\d{1,2})(?:\s?[-/.]\s?|\s)(\d{1,2})$/;
const twoDigits = /^(\d{4})\s?[-/.]?\s?(\d\d)\s?[-/.]?\s?(\d\d)$/;
const yearLast = /^(\d{1,2})\s?[-/.]\s?(\d{1,2})\s?[-/.]\s?(\d{4})$/;
const shortYear = /^\d{1,2}\s?[-/.]\s?\d{1,2}\s?[-/.]\s?'?\d{2}$/;
/** A year, or a year and a month. */
const withoutDay =
  /^(?:\d{4}(?:\s?[-/.]?\s?\d{1,3})?|\d{1,2}\s?[-/.]\s?\d{4}|([a-z]{3,9})\.?,?[\s-]+\d{4})$/i;
const namedMonth =
  /^(?:(\d{1,2})(?:st|nd|rd|th)?[\s-]+)?([a-z]{3,9})\.?[\s-]+(?:(\d{1,2})(?:st|nd|rd|th)?,?\s+)?(\d{4})$/i;

/** The problem of a date in another form: what it could be, if it could be one; both readings where there are two. */
function dateForm(typed: Stretch): Problem {
  const text = typed.typed.length > longestRead ? '' : typed.typed;
  if (shortYear.test(text)) return problemAt(typed, 'quantity/date-form', { form: 'short-year' });
  if (isWithoutDay(text)) return problemAt(typed, 'quantity/date-form', { form: 'no-day' });
  const instead = readingsOf(text);
  const [first, second] = instead;
  if (first === undefined)
    return problemAt(typed, 'quantity/unreadable', { args: { wanted: 'a date', example: '2026-03-02' } });
  return second === undefined
    ? problemAt(typed, 'quantity/date-form', { instead, sure: true, args: { first } })
    : problemAt(typed, 'quantity/date-form', { form: 'ambiguous', instead, args: { first, second } });
}

function isWithoutDay(text: string): boolean {
  const match = withoutDay.exec(text);
  return match !== null && (match[1] === undefined || monthNamed(match[1]) > 0);
}

/** The dates that a text in another form can mean; month before day comes first. */
function readingsOf(text: string): readonly IsoDate[] {
  const iso = yearFirst.exec(text) ?? twoDigits.exec(text);
  if (iso) return datesOf([iso[1], iso[2], iso[3]]);
  const last = yearLast.exec(text);
  if (last) return datesOf([last[3], last[1], last[2]], [last[3], last[2], last[1]]);
  const named = namedMonth.exec(text);
  const month = named ? monthNamed(named[2]!) : 0;
  if (!named || month === 0 || (named[1] === undefined) === (named[3] === undefined)) return [];
  return datesOf([named[4], String(month), named[1] ?? named[3]]);
}

function datesOf(...readings: (string | undefined)[][]): readonly IsoDate[] {
  const dates = readings.flatMap(([year = '', month = '', day = '']) =>
    exists(Number(year), Number(month), Number(day))
      ? [`${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`]
      : [],
  );
  return [...new Set(dates)];
}

const clock = /^(\d{1,2}):?(\d\d)(?::\d\d)?\s?(?:([ap])\.?m\.?)?$/i;

/** Minutes since midnight of `10:12`, `9:05`, `0905` or `9:05 pm`; undefined where the clock has no such time. */
function clockMinutes(text: string): number | undefined {
  const match = clock.exec(text);
  if (!match) return undefined;
  const [hours, minutes, half] = [Number(match[1]), Number(match[2]), match[3]?.toLowerCase()];
  // "0:30 pm" contradicts itself.
  if (minutes > 59 || hours > 23 || (half !== undefined && hours === 0)) return undefined;
  if (half === undefined || hours > 12) return half === 'a' ? undefined : hours * 60 + minutes;
  return ((hours % 12) + (half === 'p' ? 12 : 0)) * 60 + minutes;
}

function noSuchTime(typed: Stretch): Problem {
  return problemAt(typed, 'quantity/no-such-time');
}

const statements: ReadonlyMap<string, boolean> = new Map([
  ['done', true],
  ['completed', true],
  ['performed', true],
  ['held', true],
  ['yes', true],
  ['y', true],
  ['true', true],
  ['no', false],
  ['n', false],
  ['false', false],
  ['not done', false],
  ['none', false],
]);
/** "Done at 10:12" is a time. */
const saidDone = /^(?:(?:done|completed|performed|held|yes),? )?(?:at )?/i;
const usualTime = /^(?:([01]?\d|2[0-3]):([0-5]\d))$/;

/** "Performed before injection", "time-out completed with patient and assistant": done, and no word that takes it back. */
const sayDone = /\b(?:done|completed|performed|held|observed|taken|verified|confirmed|called)\b/i;
const takesBack =
  /\b(?:not?|never|without|nobody|declined|deferred|skipped|omitted|forgotten|to be|will|wasn't|isn't|pending|noon|midnight|o'clock)\b|\?/i;
const says = (text: string): boolean => sayDone.test(text) && !takesBack.test(text) && !/\d/.test(text);

/** Reads when something was done: a clock time, a date with or without one, or only `done`; `no` says that it was not. */
export function readOccasion(text: string): Reading<Occasion> {
  const usual = usualTime.exec(text);
  if (usual) return occasion(Number(usual[1]) * 60 + Number(usual[2]), undefined);
  const typed = trimmed(text);
  if (typed.typed.length > longestRead) return unread(noSuchTime(typed));
  const done = statements.get(typed.typed.toLowerCase()) ?? (says(typed.typed) || undefined);
  if (done !== undefined)
    return { value: { minutes: undefined, date: undefined, done }, problems: noProblems };
  if (/^\d{4}-\d\d-\d\d/.test(typed.typed)) {
    const { value, problems } = readMoment(text);
    return value === undefined ? { value, problems } : { ...occasion(value.minutes, value.date), problems };
  }
  const minutes = clockMinutes(typed.typed.replace(saidDone, ''));
  if (minutes !== undefined) return occasion(minutes, undefined);
  return unread(
    /^\d/.test(typed.typed)
      ? noSuchTime(typed)
      : problemAt(typed, 'quantity/unreadable', { args: { wanted: 'a time', example: '10:12 or done' } }),
  );
}

const occasion = (minutes: number | undefined, date: IsoDate | undefined): Reading<Occasion> => ({
  value: { minutes, date, done: true },
  problems: noProblems,
});

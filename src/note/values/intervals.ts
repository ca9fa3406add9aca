import { addDays, addMonths } from './days.ts';
import { readDate } from './dates.ts';
import { longestRead, noProblems, type Reading } from './reading.ts';
import type { IsoDate } from './values.ts';

/** A length of time after which something is planned, at characters `from` to `to` of its text. */
export interface Interval {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  readonly unit: 'days' | 'months';
  /** Whether it names one day, with no other beside it: not `in 2 to 3 weeks`, `in about a month`, `every 6 months`. */
  readonly exact: boolean;
}

const numbers: ReadonlyMap<string, number> = new Map(
  'a one two three four five six seven eight nine ten eleven twelve'
    .split(' ')
    .map((word, at) => [word, Math.max(1, at)]),
);
const word = [...numbers.keys()].join('|');
const count = `(\\d{1,3}|${word})`;
const said = new RegExp(
  `\\b(?:in|after|within)\\s+(?:about\\s+|approximately\\s+)?${count}(?:\\s*(?:-|to)\\s*\\d{1,3})?\\s*(day|week|wk|month|mo|year|yr)s?\\b`,
  'i',
);
const bare = new RegExp(
  `\\b(?:q ?)?${count}\\s*(?:-|to)?\\s*(?:\\d{1,3})?\\s*(day|week|wk|month|mo|year|yr)s?\\b`,
  'i',
);
const whole = new RegExp(
  `^(?:(?:in|after|within)\\s+)?(?:about\\s+|approximately\\s+|~)?${count}(?:\\s*(?:-|–|to)\\s*(?:\\d{1,3}|${word}))?[\\s-]*(days?|d|weeks?|wks?|w|months?|mos?|years?|yrs?)\\.?` +
    '(?:\\s+(?:from (?:now|today|(?:the )?(?:visit|procedure|surgery|biopsy))|after (?:the )?(?:visit|procedure|surgery|biopsy)|post-?op(?:eratively)?|later))?$',
  'i',
);
const numberedDay = /^(?:pod|post-?op(?:erative)? day|day)\s*#?\s*(\d{1,3})$/i;
const tomorrow = /\btomorrow\b/i;

/** The interval that a text says after `in`, `after` or `within`; `tomorrow` is one day. Of two numbers the first counts. */
export function intervalIn(text: string): Interval | undefined {
  const match = said.exec(text);
  if (match !== null) return intervalOf(match, text);
  const day = tomorrow.exec(text);
  return day === null
    ? undefined
    : { from: day.index, to: day.index + day[0].length, count: 1, unit: 'days', exact: true };
}

/** The interval that a text names without such a word: `skin check 6 months`. */
export function bareIntervalIn(text: string): Interval | undefined {
  const match = bare.exec(text);
  return match === null ? undefined : intervalOf(match, text);
}

/** The interval that is all that a text says: `in 1 week`, `10 days`, `2 wks post-op`, `POD 7`. */
export function wholeInterval(text: string): Interval | undefined {
  const typed = text.trim();
  if (typed.length > longestRead) return undefined;
  const numbered = numberedDay.exec(typed)?.[1];
  const match = whole.exec(typed);
  if (numbered !== undefined)
    return { from: 0, to: text.length, count: Number(numbered), unit: 'days', exact: true };
  if (match !== null) return { ...intervalOf(match, typed), from: 0, to: text.length };
  return /^tomorrow$/i.test(typed)
    ? { from: 0, to: text.length, count: 1, unit: 'days', exact: true }
    : undefined;
}

const repeats = /\b(?:every|each|for)\s*$/i;

function intervalOf(match: RegExpExecArray, text: string): Interval {
  const [typed, number, unit] = [match[0], match[1]!.toLowerCase(), match[2]!.toLowerCase()];
  const many = Number(number) || (numbers.get(number) ?? 1);
  const loose = /\d\s*(?:-|–|to)\s*\d|\bto\b|about|approx|~|^q/i.test(typed);
  const at = { from: match.index, to: match.index + typed.length };
  const exact = !loose && !repeats.test(text.slice(0, match.index));
  if (unit.startsWith('d')) return { ...at, exact, count: many, unit: 'days' };
  if (unit.startsWith('w')) return { ...at, exact, count: many * 7, unit: 'days' };
  return { ...at, exact, count: unit.startsWith('m') ? many : many * 12, unit: 'months' };
}

/** The day that is an interval after another. */
export const dayAfter = ({ count: many, unit }: Interval, from: IsoDate): IsoDate =>
  unit === 'days' ? addDays(from, many) : addMonths(from, many);

/**
 * Reads a day that is planned: a date, or an interval. The day of an interval depends on the visit, so it has no value
 * until the whole note is read, and is no problem.
 */
export function readPlannedDay(text: string): Reading<IsoDate> {
  return wholeInterval(text) === undefined ? readDate(text) : { value: undefined, problems: noProblems };
}

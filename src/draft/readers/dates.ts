import { daysIn } from '../../note/values/days.ts';
import type { Gather } from '../gather.ts';

/** A date that a text says, at places `at` to `end`. */
export interface DateNamed {
  readonly at: number;
  readonly end: number;
  /** YYYY-MM-DD. */
  readonly date: string;
  /** Whether the century was not typed, and is taken for this one. */
  readonly isShort?: true;
}

const months: readonly string[] =
  'january february march april may june july august september october november december'.split(' ');
const ordinals: ReadonlyMap<string, number> = new Map(
  'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth'
    .split(' ')
    .map((word, at): [string, number] => [word, at + 1])
    .concat([['thirtieth', 30]]),
);

/** Reads dates as a US clinic says them: the month before the day where a date is all figures. */
export function datesIn(gather: Gather): readonly DateNamed[] {
  const dates: DateNamed[] = [];
  for (let at = 0; at < gather.scan.words.length; at += 1) {
    const one = dateAt(gather, at);
    if (one === undefined) continue;
    dates.push(one);
    at = one.end - 1;
  }
  return dates;
}

function dateAt(gather: Gather, at: number): DateNamed | undefined {
  const word = gather.word(at)!;
  if (word.kind === 'date') return ofFigures(word.text, at);
  return monthFirst(gather, at) ?? dayFirst(gather, at);
}

function ofFigures(text: string, at: number): DateNamed | undefined {
  const parts = text.split(/[-/]/);
  const [year, month, day] = parts[0]!.length === 4 ? parts : [fullYear(parts[2]!), parts[0], parts[1]];
  const one = madeOf(Number(year), Number(month), Number(day), at, at + 1);
  return one !== undefined && parts[2]!.length === 2 && parts[0]!.length < 4
    ? { ...one, isShort: true }
    : one;
}

const fullYear = (typed: string): string => (typed.length === 2 ? `20${typed}` : typed);

const monthOf = (low: string): number =>
  low.length < 3
    ? 0
    : months.findIndex((name) => name === low || (low.length <= 4 && name.startsWith(low) && low !== 'may')) +
        1 || (low === 'may' ? 5 : 0);

/** "March 2, 2026", "march second twenty twenty six". */
function monthFirst(gather: Gather, at: number): DateNamed | undefined {
  const month = monthOf(gather.low(at));
  if (month === 0) return undefined;
  const day = dayAt(gather, at + 1);
  if (day === undefined) return undefined;
  const year = yearAt(gather, day.end);
  return year && madeOf(year.value, month, day.value, at, year.end);
}

/** "2 March 2026", "the 2nd of March 2026". */
function dayFirst(gather: Gather, at: number): DateNamed | undefined {
  const day = dayAt(gather, at);
  if (day === undefined) return undefined;
  const place = gather.low(day.end) === 'of' ? day.end + 1 : day.end;
  const month = monthOf(gather.low(place));
  const year = month === 0 ? undefined : yearAt(gather, place + 1);
  return year && madeOf(year.value, month, day.value, at, year.end);
}

interface Part {
  readonly value: number;
  readonly end: number;
}

function dayAt(gather: Gather, at: number): Part | undefined {
  const low = gather.low(at);
  const typed = /^(\d{1,2})(?:st|nd|rd|th)?$/.exec(low)?.[1];
  if (typed !== undefined) return { value: Number(typed), end: at + 1 };
  const tens = tensOf.get(low);
  const next = ordinals.get(gather.low(at + 1));
  if (tens !== undefined && next !== undefined) return { value: tens + next, end: at + 2 };
  const number = ordinals.get(low) ?? Number(gather.word(at)?.digits ?? 'none');
  return isDay(number) ? { value: number, end: at + 1 } : undefined;
}

const tensOf: ReadonlyMap<string, number> = new Map([
  ['twenty', 20],
  ['thirty', 30],
]);

const isDay = (number: number): boolean => Number.isInteger(number) && number >= 1 && number <= 31;

function yearAt(gather: Gather, at: number): Part | undefined {
  const place = gather.low(at) === ',' ? at + 1 : at;
  const { low = '', digits = '' } = gather.word(place) ?? {};
  if (/^(?:19|20)\d\d$/.test(digits)) return { value: Number(digits), end: place + 1 };
  const after = gather.word(place + 1);
  if ((low === 'twenty' || low === 'nineteen') && /^\d{2}$/.test(after?.digits ?? ''))
    return { value: (low === 'twenty' ? 2000 : 1900) + Number(after!.digits), end: place + 2 };
  return undefined;
}

const two = (number: number): string => String(number).padStart(2, '0');

const madeOf = (year: number, month: number, day: number, at: number, end: number): DateNamed | undefined =>
  day >= 1 && day <= daysIn(year, month) ? { at, end, date: `${year}-${two(month)}-${two(day)}` } : undefined;

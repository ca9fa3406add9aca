import { readDate } from '../note/values/dates.ts';
import type { IsoDate } from '../note/values/values.ts';
import { addDays, addMonths } from '../note/values/days.ts';

const numbers: ReadonlyMap<string, number> = new Map(
  [
    'a',
    'one',
    'two',
    'three',
    'four',
    'five',
    'six',
    'seven',
    'eight',
    'nine',
    'ten',
    'eleven',
    'twelve',
  ].map((word, at) => [word, Math.max(1, at)]),
);
const word = [...numbers.keys()].join('|');
const interval = new RegExp(
  `\\b(?:in|after|within)\\s+(?:about\\s+|approximately\\s+)?(\\d{1,3}|${word})(?:\\s*(?:-|to)\\s*\\d{1,3})?\\s*(day|week|wk|month|mo|year|yr)s?\\b`,
  'i',
);
const bareInterval = new RegExp(
  `\\b(?:q ?)?(\\d{1,3}|${word})\\s*(?:-|to)?\\s*(?:\\d{1,3})?\\s*(day|week|wk|month|mo|year|yr)s?\\b`,
  'i',
);
const everyYear = /\b(?:yearly|annual(?:ly)?|every year)\b/i;
const tomorrow = /\btomorrow\b/i;

/**
 * The day that a text plans for: a date in it, or `in 6 months` counted from a day; of `in 2 to 3 weeks` the earlier.
 * Undefined where it names none.
 */
export function timeIn(text: string, from: IsoDate): IsoDate | undefined {
  for (const [date] of text.matchAll(/\d{4}-\d{2}-\d{2}/g)) {
    const value = readDate(date).value;
    if (value !== undefined) return value;
  }
  const match = interval.exec(text);
  if (match === null) return tomorrow.test(text) ? addDays(from, 1) : undefined;
  return dayAfter(match, from);
}

/** The day of a visit to look again, of which the interval is written alone: `skin check 6 months`, `yearly skin check`. */
export function recallDay(text: string, from: IsoDate): IsoDate | undefined {
  const match = bareInterval.exec(text);
  return (
    timeIn(text, from) ??
    (match !== null ? dayAfter(match, from) : everyYear.test(text) ? addMonths(from, 12) : undefined)
  );
}

function dayAfter(match: RegExpExecArray, from: IsoDate): IsoDate {
  const count = Number(match[1]) || (numbers.get(match[1]!.toLowerCase()) ?? 1);
  const unit = match[2]!.toLowerCase();
  if (unit === 'day') return addDays(from, count);
  if (unit === 'week' || unit === 'wk') return addDays(from, count * 7);
  return addMonths(from, unit.startsWith('m') ? count : count * 12);
}

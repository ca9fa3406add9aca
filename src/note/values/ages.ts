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
import { notUnderstood } from './quantity.ts';
import type { Age } from './values.ts';

type AgeUnit = Age['typedUnit'];

const unitWords: Readonly<Record<AgeUnit, string>> = {
  years: 'year years yr yrs y yo y/o',
  months: 'month months mo mos mth mths',
  weeks: 'week weeks wk wks w',
  days: 'day days d',
};

const units: ReadonlyMap<string, AgeUnit> = new Map(
  (Object.entries(unitWords) as [AgeUnit, string][]).flatMap(([unit, words]) =>
    words.split(' ').map((word): [string, AgeUnit] => [word, unit]),
  ),
);

/** A mean month of the Gregorian calendar as ages are counted: 365.25 days / 12. */
const daysPerMonth = 365.25 / 12;

const monthsPer: Readonly<Record<AgeUnit, number>> = {
  years: 12,
  months: 1,
  weeks: 7 / daysPerMonth,
  days: 1 / daysPerMonth,
};

/** The older units after which a younger one may be: `2 years 3 months`. */
const younger: ReadonlyMap<AgeUnit, AgeUnit> = new Map([
  ['years', 'months'],
  ['months', 'weeks'],
  ['weeks', 'days'],
]);

const highestAge = 120;
const oldestInMonths = 36;

const form = /^(\d{1,4}(?:\.\d{1,4})?)[\s-]*([A-Za-z/]*)\.?/;

/**
 * Reads an age. A number without a unit is taken for years and reported; `m` is not taken for months, since
 * `64 M` says something else.
 */
export function readAge(text: string): Reading<Age> {
  const typed = trimmed(text);
  const first = form.exec(typed.typed);
  if (!first || typed.typed.length > longestRead) return unread(unreadable(typed));
  if (first[0] === typed.typed && first[2] === '') return withoutUnit(typed, Number(first[1]));
  const unit = units.get(first[2]!.toLowerCase());
  if (unit === undefined) return unread(unknownUnit(typed, first[0], first[1]!, first[2]!));
  const months = Number(first[1]) * monthsPer[unit];
  const rest = behind(typed, first[0].length);
  if (rest.typed === '') return judged(typed, { months, typedUnit: unit });
  const second = form.exec(rest.typed);
  const secondUnit = second && secondUnitOf(unit, second[2]!.toLowerCase());
  if (second && secondUnit && behind(rest, second[0].length).typed === '')
    return judged(typed, { months: months + Number(second[1]) * monthsPer[secondUnit], typedUnit: unit });
  return unread(notUnderstood(rest, typed));
}

/** After years `m` can only be months. */
function secondUnitOf(first: AgeUnit, word: string): AgeUnit | undefined {
  const unit = first === 'years' && word === 'm' ? 'months' : units.get(word);
  return unit === younger.get(first) ? unit : undefined;
}

/** What is after an age, without `old`, which says nothing new. */
function behind(stretch: Stretch, from: number): Stretch {
  const gap = /^[\s,-]*(?:(?:old|of age)\b[\s,]*)?/.exec(stretch.typed.slice(from));
  return part(stretch, from + (gap?.[0].length ?? 0));
}

function judged(typed: Stretch, value: Age): Reading<Age> {
  return value.months <= highestAge * 12
    ? { value, problems: noProblems }
    : {
        value,
        problems: [
          problemAt(typed, 'quantity/implausible', { form: 'age', args: { bound: `${highestAge} years` } }),
        ],
      };
}

function withoutUnit(typed: Stretch, years: number): Reading<Age> {
  const instead = [`${typed.typed} years`, ...(years <= oldestInMonths ? [`${typed.typed} months`] : [])];
  const missing = problemAt(typed, 'quantity/unit-missing', {
    form: instead.length === 1 ? 'years' : 'age',
    instead,
    ...(instead.length === 1 ? { sure: true } : { adds: true }),
  });
  const { value, problems } = judged(typed, { months: years * 12, typedUnit: 'years' });
  // A number that can't be years is one fault, not two.
  return { value, problems: problems.length > 0 ? problems : [missing] };
}

function unknownUnit(
  typed: Stretch,
  head: string,
  number: string,
  word: string,
): ReturnType<typeof problemAt> {
  if (word === '') return unreadable(typed);
  const at = part(typed, 0, head.length);
  return problemAt(at, 'quantity/unknown-unit', {
    form: 'age',
    args: { unit: word },
    instead: word.toLowerCase() === 'm' ? [`${number} months`, `${number} years`] : [],
    adds: true,
  });
}

const unreadable = (typed: Stretch): ReturnType<typeof problemAt> =>
  problemAt(typed, 'quantity/unreadable', { args: { wanted: 'an age', example: '64 years or 7 months' } });

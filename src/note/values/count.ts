import type { Problem } from '../tree/finding.ts';
import { readNumber, splitNumber } from './numbers.ts';
import { notUnderstood } from './quantity.ts';
import {
  longestRead,
  noProblems,
  problemAt,
  trimmed,
  unread,
  type Reading,
  type Stretch,
} from './reading.ts';

const numberWords: ReadonlyMap<string, number> = new Map(
  'none one two three four five six seven eight nine ten eleven twelve'
    .split(' ')
    .map((word, at) => [word, at]),
);
/** Words after a count that say only what is counted. */
const counted: ReadonlySet<string> = new Set([
  'stitch',
  'stitches',
  'suture',
  'sutures',
  'staple',
  'staples',
  'days',
  'day',
]);
const mostCounted = 10_000;

/** Reads a whole number of things, none included. */
export function readCount(text: string): Reading<number> {
  if (/^(?:0|[1-9]\d{0,3})$/.test(text)) return { value: Number(text), problems: noProblems };
  const typed = trimmed(text);
  if (typed.typed.length > longestRead) return unread(notWhole(typed));
  const word = numberWords.get(typed.typed.toLowerCase());
  if (word !== undefined) return { value: word, problems: noProblems };
  const { value, problems } = numberOf(typed, notWhole(typed));
  if (value === undefined) return { value, problems };
  if (!Number.isInteger(value)) return unread(notWhole(typed));
  return value <= mostCounted
    ? { value, problems }
    : {
        value,
        problems: [problemAt(typed, 'quantity/implausible', { form: 'count', args: { bound: '10,000' } })],
      };
}

/** Reads a limit in a practice file, a number above zero without a unit. */
export function readDecimal(text: string): Reading<number> {
  const typed = trimmed(text);
  const unreadable = problemAt(typed, 'quantity/unreadable', {
    args: { wanted: 'a number', example: '4.5' },
  });
  if (typed.typed.length > longestRead) return unread(unreadable);
  const limit = numberOf(typed, unreadable);
  return limit.value === 0 ? unread(problemAt(typed, 'quantity/not-positive', { form: 'limit' })) : limit;
}

function numberOf(typed: Stretch, unreadable: Problem): Reading<number> {
  if (/^[-−–]\s*[\d.]/.test(typed.typed))
    return unread(problemAt(typed, 'quantity/not-positive', { form: 'negative' }));
  const split = splitNumber(typed);
  if (split === undefined) return unread(unreadable);
  const { digits, problem } = readNumber(split.number);
  if (digits === undefined) return unread(problem ?? unreadable);
  if (split.rest.typed !== '' && !counted.has(split.rest.typed.toLowerCase()))
    return unread(notUnderstood(split.rest, typed));
  return { value: Number(digits), problems: problem === undefined ? noProblems : [problem] };
}

const notWhole = (typed: Stretch): Problem =>
  problemAt(typed, 'quantity/unreadable', { args: { wanted: 'a whole number', example: '2' } });

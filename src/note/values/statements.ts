import { readDate } from './dates.ts';
import { readNumber, splitNumber } from './numbers.ts';
import { notUnderstood } from './quantity.ts';
import {
  longestRead,
  noRemarks,
  part,
  remarkOn,
  trimmed,
  unread,
  type Reading,
  type Remark,
  type Stretch,
} from './reading.ts';
import type { Weighed } from './values.ts';

const answers: ReadonlyMap<string, boolean> = new Map([
  ...['yes', 'y', 'true', 'done', 'taken', 'obtained', 'in chart', 'on file', 'attached'].map(
    (word): [string, boolean] => [word, true],
  ),
  ...['no', 'n', 'false', 'none', 'not done', 'not taken', 'declined', 'refused'].map(
    (word): [string, boolean] => [word, false],
  ),
]);

/** Reads yes or no. */
export function readYesNo(text: string): Reading<boolean> {
  const usual = answers.get(text);
  if (usual !== undefined) return { value: usual, remarks: noRemarks };
  const typed = trimmed(text);
  const value = typed.typed.length > longestRead ? undefined : answers.get(typed.typed.toLowerCase());
  if (value !== undefined) return { value, remarks: noRemarks };
  const behind = /^(yes|no)\b[\s,;:.]*/i.exec(typed.typed);
  return behind
    ? unread(notUnderstood(part(typed, behind[0].length), typed))
    : unread(remarkOn(typed, 'quantity/unreadable', { form: 'yesno' }));
}

const numberWords: ReadonlyMap<string, number> = new Map(
  'none one two three four five six seven eight nine ten eleven twelve'
    .split(' ')
    .map((word, at) => [word, at]),
);
/** Words behind a count that say only what is counted. */
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
  if (/^(?:0|[1-9]\d{0,3})$/.test(text)) return { value: Number(text), remarks: noRemarks };
  const typed = trimmed(text);
  if (typed.typed.length > longestRead) return unread(notWhole(typed));
  const word = numberWords.get(typed.typed.toLowerCase());
  if (word !== undefined) return { value: word, remarks: noRemarks };
  const { value, remarks } = numberOf(typed, notWhole(typed));
  if (value === undefined) return { value, remarks };
  if (!Number.isInteger(value)) return unread(notWhole(typed));
  return value <= mostCounted
    ? { value, remarks }
    : {
        value,
        remarks: [remarkOn(typed, 'quantity/implausible', { form: 'count', args: { bound: '10,000' } })],
      };
}

/** Reads a limit in a practice file, a number above zero without a unit. */
export function readDecimal(text: string): Reading<number> {
  const typed = trimmed(text);
  const unreadable = remarkOn(typed, 'quantity/unreadable', { args: { wanted: 'a number', example: '4.5' } });
  if (typed.typed.length > longestRead) return unread(unreadable);
  const limit = numberOf(typed, unreadable);
  return limit.value === 0 ? unread(remarkOn(typed, 'quantity/not-positive', { form: 'limit' })) : limit;
}

function numberOf(typed: Stretch, unreadable: Remark): Reading<number> {
  if (/^[-−–]\s*[\d.]/.test(typed.typed))
    return unread(remarkOn(typed, 'quantity/not-positive', { form: 'negative' }));
  const split = splitNumber(typed);
  if (split === undefined) return unread(unreadable);
  const { digits, remark } = readNumber(split.number);
  if (digits === undefined) return unread(remark ?? unreadable);
  if (split.rest.typed !== '' && !counted.has(split.rest.typed.toLowerCase()))
    return unread(notUnderstood(split.rest, typed));
  return { value: Number(digits), remarks: remark === undefined ? noRemarks : [remark] };
}

const notWhole = (typed: Stretch): Remark =>
  remarkOn(typed, 'quantity/unreadable', { args: { wanted: 'a whole number', example: '2' } });

const waysOfWeighing: ReadonlyMap<string, Weighed['how']> = new Map([
  ['measured', 'measured'],
  ['weighed', 'measured'],
  ['scale', 'measured'],
  ['today', 'measured'],
  ['measured today', 'measured'],
  ['weighed today', 'measured'],
  ['yes', 'measured'],
  ['stated', 'stated'],
  ['reported', 'stated'],
  ['self-reported', 'stated'],
  ['said', 'stated'],
  ['patient', 'stated'],
  ['per patient', 'stated'],
  ['by patient', 'stated'],
  ['patient-reported', 'stated'],
  ['patient reported', 'stated'],
  ['per parent', 'stated'],
  ['by parent', 'stated'],
  ['parent-reported', 'stated'],
  ['parent reported', 'stated'],
  ['chart', 'chart'],
  ['from chart', 'chart'],
  ['in chart', 'chart'],
]);

/** Reads how a weight was learned, measured, stated or from the chart, with or without the date. A date alone is that of measuring. */
export function readWeighed(text: string): Reading<Weighed> {
  const typed = trimmed(text);
  if (typed.typed.length > longestRead) return unread(unreadableWeighing(typed));
  const date = /\b\d{4}-\d\d-\d\d\b/.exec(typed.typed);
  const rest = date === null ? typed.typed : typed.typed.replace(date[0], '');
  const word = rest
    .replace(/\bon\b|[,;:()]/gi, '')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
  const how = word === '' && date !== null ? 'measured' : waysOfWeighing.get(word);
  if (how === undefined) return unread(unreadableWeighing(typed));
  if (date === null) return { value: { how, on: undefined }, remarks: noRemarks };
  const { value: on, remarks } = readDate(date[0]);
  return on === undefined
    ? unread({ ...remarks[0]!, from: typed.from + date.index, to: typed.from + date.index + date[0].length })
    : { value: { how, on }, remarks: noRemarks };
}

const unreadableWeighing = (typed: Stretch): Remark =>
  remarkOn(typed, 'quantity/unreadable', {
    args: {
      wanted: 'how the weight was learned',
      example: 'measured, stated or chart, with the date if known',
    },
  });

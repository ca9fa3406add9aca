import type { Problem } from '../tree/finding.ts';
import { readDate } from './dates.ts';
import {
  longestRead,
  noProblems,
  problemAt,
  trimmed,
  unread,
  type Reading,
  type Stretch,
} from './reading.ts';
import type { Weighed } from './values.ts';

const waysOfWeighing: ReadonlyMap<string, Weighed['how']> = new Map([
  ['measured', 'measured'],
  ['weighed', 'measured'],
  ['scale', 'measured'],
  ['today', 'measured'],
  ['measured today', 'measured'],
  ['weighed today', 'measured'],
  ['yes', 'measured'],
  ['clinic scale', 'measured'],
  ['office scale', 'measured'],
  ['today scale', 'measured'],
  ['scale today', 'measured'],
  ['in clinic', 'measured'],
  ['in office', 'measured'],
  ['weighed here', 'measured'],
  ['weighed here today', 'measured'],
  ['by us', 'measured'],
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
  ['estimated', 'estimated'],
  ['estimate', 'estimated'],
  ['est', 'estimated'],
  ['est.', 'estimated'],
  ['approximate', 'estimated'],
  ['estimated by parent', 'estimated'],
  ['estimated by patient', 'estimated'],
]);

/** Reads how a weight was learned, measured, stated, from the chart or estimated, with or without the date. A date alone is that of measuring. */
export function readWeighed(text: string): Reading<Weighed> {
  const typed = trimmed(text);
  if (typed.typed.length > longestRead) return unread(unreadableWeighing(typed));
  const date = /\b\d{4}-\d\d-\d\d\b/.exec(typed.typed);
  const rest = date === null ? typed.typed : typed.typed.replace(date[0], '');
  const word = rest
    .replace(/\b(?:on|at|the|our)\b|[,;:()]/gi, '')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
  const how = word === '' && date !== null ? 'measured' : waysOfWeighing.get(word);
  if (how === undefined) return unread(unreadableWeighing(typed));
  if (date === null) return { value: { how, on: undefined }, problems: noProblems };
  const { value: on, problems } = readDate(date[0]);
  if (on !== undefined) return { value: { how, on }, problems: noProblems };
  const start = typed.from + date.index;
  return unread({ ...problems[0]!, at: { start, end: start + date[0].length } });
}

const unreadableWeighing = (typed: Stretch): Problem =>
  problemAt(typed, 'quantity/unreadable', {
    args: {
      wanted: 'how the weight was learned',
      example: 'measured, stated, chart or estimated, with the date if known',
    },
  });

import type { Word } from './word.ts';

/** A number at a place of a text, and the place after it. */
export interface NumberRead {
  readonly digits: string;
  readonly end: number;
}

const units: ReadonlyMap<string, number> = new Map(
  (
    'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen ' +
    'eighteen nineteen'
  )
    .split(' ')
    .map((word, value) => [word, value]),
);
const tens: ReadonlyMap<string, number> = new Map(
  'twenty thirty forty fifty sixty seventy eighty ninety'
    .split(' ')
    .map((word, at) => [word, (at + 2) * 10] as const),
);
const zeros: ReadonlySet<string> = new Set(['oh', 'o', 'zero', 'ought', 'aught', '0']);

/** Whether a word is zero as people say it. */
export const isZero = ({ low }: Word): boolean => zeros.has(low);

/** Whether a word can be part of a number in words. */
export const isNumberWord = (word: Word | undefined): boolean =>
  word !== undefined && (word.kind === 'number' || units.has(word.low) || tens.has(word.low));

/** The number that begins at a place, in figures or in words: "one point five", "two hundred thousand", "one and a half". */
export function numberAt(words: readonly Word[], at: number): NumberRead | undefined {
  const first = words[at];
  if (first === undefined) return undefined;
  if (first.low === 'point' || (isZero(first) && words[at + 1]?.low === 'point'))
    return decimals(words, first.low === 'point' ? at : at + 1, '0');
  const whole = first.kind === 'number' ? typedNumber(words, at) : spoken(words, at);
  if (whole === undefined) return fractionAt(words, at);
  const { digits, end } = whole;
  if (digits.includes('.')) return whole;
  return decimals(words, end, digits) ?? withFraction(words, whole) ?? whole;
}

/** A typed number; `1 ½`, `1 1/2` and `1/2` are one. */
function typedNumber(words: readonly Word[], at: number): NumberRead {
  const digits = words[at]!.digits!;
  const typed = typedFraction(words, at);
  if (typed !== undefined) return typed;
  const next = words[at + 1];
  if (next?.text !== undefined && /^[½¼¾]$/.test(next.text))
    return { digits: sum(digits, next.digits!), end: at + 2 };
  if (next?.low === 'thousand' && /^\d{1,3}$/.test(digits)) return { digits: `${digits}000`, end: at + 2 };
  const rest = /^\d+$/.test(digits) ? typedFraction(words, at + 1) : undefined;
  return rest === undefined ? { digits, end: at + 1 } : { digits: sum(digits, rest.digits), end: rest.end };
}

const typedFractions: ReadonlyMap<string, string> = new Map([
  ['1/2', '0.5'],
  ['1/4', '0.25'],
  ['3/4', '0.75'],
]);

function typedFraction(words: readonly Word[], at: number): NumberRead | undefined {
  if (words[at + 1]?.text !== '/') return undefined;
  const digits = typedFractions.get(`${words[at]?.text}/${words[at + 2]?.text}`);
  return digits === undefined ? undefined : { digits, end: at + 3 };
}

/** A whole number in words, up to the millions. */
function spoken(words: readonly Word[], at: number): NumberRead | undefined {
  let total = 0;
  let group: number | undefined;
  let end = at;
  for (; ; end += 1) {
    const low = words[end]?.low ?? '';
    if (low === 'thousand' && (group ?? 1) > 0 && total === 0) {
      total = (group ?? 1) * 1000;
      group = 0;
      continue;
    }
    const next = low === 'a' ? articleAt(words, at, end) : added(group, low);
    if (next === undefined) break;
    group = next;
  }
  return group === undefined ? undefined : { digits: String(total + group), end };
}

/** The "a" of "a hundred". */
const articleAt = (words: readonly Word[], at: number, end: number): number | undefined =>
  end === at && isScale(words[end + 1]) ? 1 : undefined;

/** What a number below a thousand becomes with one more word; undefined where the word does not go on with it. */
function added(group: number | undefined, low: string): number | undefined {
  const unit = units.get(low);
  if (unit !== undefined) return fitsUnit(group, unit) ? (group ?? 0) + unit : undefined;
  const ten = tens.get(low);
  if (ten !== undefined)
    return group === undefined || (group > 0 && group % 100 === 0) ? (group ?? 0) + ten : undefined;
  return low === 'hundred' && isHundred(group) ? (group ?? 1) * 100 : undefined;
}

/** "Hundred" without a number before it is one hundred. */
const isHundred = (group: number | undefined): boolean => group === undefined || (group > 0 && group < 100);

const isScale = (word: Word | undefined): boolean => word?.low === 'hundred' || word?.low === 'thousand';

function fitsUnit(group: number | undefined, unit: number): boolean {
  if (group === undefined || (group > 0 && group % 100 === 0)) return true;
  return group > 0 && group % 10 === 0 && unit < 10 && unit > 0;
}

/** The digits after a "point". */
function decimals(words: readonly Word[], at: number, whole: string): NumberRead | undefined {
  if (words[at]?.low !== 'point') return undefined;
  let digits = '';
  let end = at + 1;
  for (; ; end += 1) {
    const word = words[end];
    const value = word === undefined ? undefined : digitOf(word, digits === '');
    if (value === undefined) break;
    digits += value;
  }
  return digits === '' ? undefined : { digits: `${whole}.${digits}`, end };
}

function digitOf(word: Word, first: boolean): string | undefined {
  if (word.kind === 'number') return first && /^\d{1,3}$/.test(word.text) ? word.text : undefined;
  if (isZero(word)) return '0';
  const unit = units.get(word.low);
  if (unit !== undefined && (unit < 10 || first)) return String(unit);
  const ten = tens.get(word.low);
  return ten !== undefined && first ? String(ten) : undefined;
}

const parts: ReadonlyMap<string, string> = new Map([
  ['half', '0.5'],
  ['quarter', '0.25'],
]);

/** "Half a", "a half", "one quarter of a", "three quarters". */
function fractionAt(words: readonly Word[], at: number): NumberRead | undefined {
  const low = words[at]?.low;
  const second = words[at + 1]?.low ?? '';
  if (low === 'three' && second.startsWith('quarter'))
    return { digits: '0.75', end: afterOfA(words, at + 2) };
  const lead = low === 'a' || low === 'one' ? 1 : 0;
  const digits = parts.get(words[at + lead]?.low ?? '');
  return digits === undefined ? undefined : { digits, end: afterOfA(words, at + lead + 1) };
}

function afterOfA(words: readonly Word[], at: number): number {
  const of = words[at]?.low === 'of' ? at + 1 : at;
  return words[of]?.low === 'a' || words[of]?.low === 'an' ? of + 1 : at;
}

/** "One and a half"; "one half" and "three quarters" are no sums. */
function withFraction(words: readonly Word[], { digits, end }: NumberRead): NumberRead | undefined {
  if (words[end]?.low === 'and') {
    const part = fractionAt(words, end + 1);
    return part === undefined ? undefined : { digits: sum(digits, part.digits), end: part.end };
  }
  const alone = digits === '1' || digits === '3' ? fractionAt(words, end - 1) : undefined;
  return alone !== undefined && alone.end > end ? alone : undefined;
}

const sum = (one: string, other: string): string => String(Number(one) + Number(other));

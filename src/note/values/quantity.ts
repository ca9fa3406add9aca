import type { Problem } from '../tree/finding.ts';
import { clean, formatNumber } from './format.ts';
import { readNumber, splitNumber, trailingZero } from './numbers.ts';
import {
  longestRead,
  noProblems,
  part,
  problemAt,
  trimmed,
  unread,
  type Reading,
  type Stretch,
} from './reading.ts';
import { unitNear } from './unit-near.ts';
import { kinds, toBase, unitOf, unitOfAnotherKind, type Kind, type KindRow, type UnitRow } from './units.ts';
import type { Quantity } from './values.ts';

export type { Kind } from './units.ts';

/** What says that a number is only about right. */
const estimate = /^(?:[~≈]|(?:about|around|approx(?:\.|imately)?|circa|ca?\.)\s)\s*(?=\d)/i;

const estimateAfter = /(?:,? ?\b|,? ?\()(?:est\b\.?|estimated?|approx(?:\b\.?|imately))\)?$/i;

/** How a weight was learned, which has a key of its own. */
const weighing =
  /^\(?(?:measured|weighed|stated|(?:self-)?reported|(?:by|per) (?:patient|parent)|(?:from |in )?chart)\b/i;

const notKnown =
  /^(?:(?:is )?unknown|not (?:known|taken|weighed|recorded|obtained|measured|done)|refused|declined)$/i;

/** Whether a text says that an amount is not known, which is no amount and no slip. */
export const saysNotKnown = (text: string): boolean => notKnown.test(text.trim());

/** What nearly everybody types: digits, perhaps decimals, a unit of one word. */
const usualForm = /^(\d+(?:\.\d+)?) ?([A-Za-zµμ%][A-Za-z/]*[2²]?)$/;

/** Whether zeros at its ends make a number one to look at: 05, 1.0. */
const hasOddZeros = (digits: string): boolean =>
  (digits.startsWith('0') && digits.length > 1 && digits[1] !== '.') ||
  (digits.endsWith('0') && digits.includes('.'));

/** Keys whose lengths are of another order than those of a lesion. */
const rulesOfKey: ReadonlyMap<string, KindRow> = new Map([
  ['height', { ...kinds.length, usual: ['cm', 'in'], low: 300, high: 2500 }],
]);

const rulesOf = (kind: Kind, key: string): KindRow => rulesOfKey.get(key) ?? kinds[kind];

/** Reads an amount with its unit, in the base unit of its kind. `key` only narrows what is plausible. */
export function readQuantity(text: string, kind: Kind, key = ''): Reading<Quantity> {
  const usual = usualForm.exec(text);
  const unit = usual && unitOf(kind, usual[2]!);
  if (!usual || !unit || unit.instead !== undefined || hasOddZeros(usual[1]!))
    return readUnusual(text, kind, key);
  const value = quantityOf(usual[1]!, usual[2]!, unit);
  const rules = rulesOf(kind, key);
  if (value.amount >= rules.low && value.amount <= rules.high) return { value, problems: noProblems };
  return judged(value, rules, { typed: text, from: 0 }, []);
}

function quantityOf(digits: string, typedUnit: string, unit: UnitRow): Quantity {
  return {
    amount: toBase(digits, unit),
    unit: kinds[unit.kind].base,
    typedAmount: Number(digits),
    typedUnit,
  };
}

/** Refuses what is below zero or none, and asks about what is out of all proportion. */
function judged(
  value: Quantity,
  { low, high, zero, base }: KindRow,
  typed: Stretch,
  problems: readonly Problem[],
): Reading<Quantity> {
  if (value.amount === 0)
    return zero ? { value, problems } : unread(problemAt(typed, 'quantity/not-positive', { form: 'zero' }));
  if (!Number.isFinite(value.amount))
    return unread(problemAt(typed, 'quantity/unreadable', { form: 'number' }));
  if (value.amount >= low && value.amount <= high) return { value, problems };
  const form = value.amount > high ? 'high' : 'low';
  const bound = `${formatNumber(form === 'high' ? high : low)} ${base}`;
  return {
    value,
    problems: [...problems, problemAt(typed, 'quantity/implausible', { form, args: { bound } })],
  };
}

function readUnusual(text: string, kind: Kind, key: string): Reading<Quantity> {
  const typed = trimmed(text);
  if (kind === 'weight' && saysNotKnown(typed.typed)) return { value: undefined, problems: noProblems };
  if (typed.typed.length > longestRead) return unread(unreadable(typed, kind));
  const sign = /^[-−–]\s*(?=[\d.,])/.exec(typed.typed);
  if (sign) return unread(problemAt(typed, 'quantity/not-positive', { form: 'negative' }));
  const about = kind === 'length' ? null : estimate.exec(typed.typed);
  if (about !== null && kind !== 'weight')
    return unread(problemAt(typed, 'quantity/unreadable', { form: 'about' }));
  if (about !== null) return estimated(part(typed, about[0].length), typed, key);
  const after = kind === 'weight' ? estimateAfter.exec(typed.typed) : null;
  if (after !== null) return estimated(part(typed, 0, after.index), typed, key);
  const pieces = readPieces(typed, kind, rulesOf(kind, key));
  if ('code' in pieces) return unread(pieces);
  return judged(pieces.value, rulesOf(kind, key), typed, pieces.problems);
}

/** A weight that is only about right: it is used, and said to be an estimate. */
function estimated(amount: Stretch, whole: Stretch, key: string): Reading<Quantity> {
  const pieces = readPieces(amount, 'weight', rulesOf('weight', key));
  if ('code' in pieces) return unread(pieces);
  const problems = [
    ...pieces.problems,
    problemAt(whole, 'quantity/estimate', { args: { read: amount.typed } }),
  ];
  return judged(pieces.value, rulesOf('weight', key), amount, problems);
}

/** Pairs of units that are typed together, the second being less than one of the first: `8 lb 4 oz`, `5 ft 6 in`. */
const pairs: ReadonlyMap<string, string> = new Map([
  ['lb', 'oz'],
  ['st', 'lb'],
  ['ft', 'in'],
  ['kg', 'g'],
]);

/** A second number right after the first: a range, a ratio, a fraction, a product. */
const anotherNumber = /^(?:(?:[-−–:/x×*+]|to\b|or\b)\s*)?[\d.]/i;

/** Words after an amount that change nothing about it. */
const harmless: Readonly<Partial<Record<Kind, RegExp>>> = {
  volume: /^(?:in )?total$|^(?:injected|given|infiltrated)$/i,
  concentration: /^(?:HCl|hydrochloride)$/i,
};

interface Piece {
  readonly digits: string;
  readonly unit: UnitRow;
  readonly unitTyped: Stretch;
  /** What is after the unit. */
  readonly rest: Stretch;
  readonly problems: readonly Problem[];
}

/** Reads a number with its unit and, for some units, a second one of less: whole, or the problem that says why not. */
function readPieces(
  typed: Stretch,
  kind: Kind,
  rules: KindRow,
): { value: Quantity; problems: readonly Problem[] } | Problem {
  const first = readPiece(typed, kind, rules);
  if ('code' in first) return first;
  const value = quantityOf(first.digits, first.unitTyped.typed, first.unit);
  if (first.rest.typed === '' || harmless[kind]?.test(first.rest.typed) === true)
    return { value, problems: first.problems };
  const second = /^[\d.]/.test(first.rest.typed) ? readPiece(first.rest, kind, rules) : undefined;
  if (
    second === undefined ||
    'code' in second ||
    second.rest.typed !== '' ||
    pairs.get(first.unit.name) !== second.unit.name
  )
    return notUnderstood(first.rest, typed, kind === 'weight' && weighing.test(first.rest.typed));
  const typedAmount = value.typedAmount + toBase(second.digits, second.unit) / toBase('1', first.unit);
  return {
    value: { ...value, amount: toBase(String(typedAmount), first.unit), typedAmount: clean(typedAmount) },
    problems: [...first.problems, ...second.problems],
  };
}

function readPiece(typed: Stretch, kind: Kind, rules: KindRow): Piece | Problem {
  const split = splitNumber(typed);
  if (split === undefined) return unreadable(typed, kind);
  const { number, rest } = split;
  if (anotherNumber.test(rest.typed))
    return problemAt(typed, 'quantity/unreadable', { form: kind === 'length' ? 'range' : 'numbers' });
  const { digits, problem } = readNumber(number);
  if (digits === undefined) return problem ?? unreadable(typed, kind);
  if (rest.typed === '') return unitMissing(typed, rules);
  const found = readUnit(rest, kind);
  if ('code' in found) return found;
  const zero = rules.dose ? trailingZero(number) : undefined;
  const misread = found.unit.instead === undefined ? undefined : misreadUnit(found.unitTyped, found.unit);
  return {
    digits,
    ...found,
    problems: [problem, problem === undefined ? zero : undefined, misread].filter((one) => one !== undefined),
  };
}

type FoundUnit = Pick<Piece, 'unit' | 'unitTyped' | 'rest'>;

/** The longest unit of the kind with which a stretch begins, or the problem that says what is wrong with it. */
function readUnit(stretch: Stretch, kind: Kind): FoundUnit | Problem {
  for (const end of unitEnds(stretch.typed)) {
    const unitTyped = part(stretch, 0, end);
    const unit = unitOf(kind, unitTyped.typed.replace(/\s+/g, ' '));
    if (unit === undefined) continue;
    const behind = stretch.typed.slice(end);
    return { unit, unitTyped, rest: part(stretch, end + behind.length - behind.trimStart().length) };
  }
  return unitFault(stretch, kind);
}

/** Where a unit may end: before digits, at spaces and marks, the farthest first; no unit has more than four words. */
function unitEnds(text: string): readonly number[] {
  const ends = [text.length];
  const boundary = /(?<=[^\s,;(])(?=[\s,;(]|\d)|(?<=["'″′”’])/g;
  for (const match of text.slice(0, 40).matchAll(boundary)) ends.unshift(match.index);
  return [...new Set(ends)].sort((a, b) => b - a);
}

/** One fault of a unit: it belongs to another kind, or nobody knows it. */
function unitFault(stretch: Stretch, kind: Kind): Problem {
  for (const end of unitEnds(stretch.typed)) {
    const typed = part(stretch, 0, end);
    const other = unitOfAnotherKind(kind, typed.typed.replace(/\s+/g, ' '));
    if (other === undefined) continue;
    return problemAt(typed, 'quantity/wrong-unit', {
      args: { other: kinds[other.kind].title, wanted: kinds[kind].title, example: kinds[kind].example },
    });
  }
  const word = part(stretch, 0, /^[^\s,;(]+/.exec(stretch.typed)?.[0].length ?? stretch.typed.length);
  const near = unitNear(kind, word.typed);
  const { example } = kinds[kind];
  if (near === undefined) return problemAt(word, 'quantity/unknown-unit', { args: { example } });
  const name = near.unit.instead ?? near.unit.name;
  return problemAt(word, 'quantity/unknown-unit', {
    form: 'near',
    args: { near: name },
    instead: [name],
    ...(near.other ? { adds: true } : { sure: near.sure }),
  });
}

function misreadUnit(typed: Stretch, unit: UnitRow): Problem {
  const instead = unit.instead ?? unit.name;
  return problemAt(typed, 'quantity/misread-unit', { instead: [instead], sure: true, args: { instead } });
}

function unitMissing(typed: Stretch, { usual }: KindRow): Problem {
  return problemAt(typed, 'quantity/unit-missing', {
    args: { units: usual.join(' or ') },
    instead: usual.map((unit) => (unit === '%' ? `${typed.typed}%` : `${typed.typed} ${unit}`)),
    adds: true,
  });
}

function unreadable(typed: Stretch, kind: Kind): Problem {
  return problemAt(typed, 'quantity/unreadable', {
    ...(kind === 'length' ? { form: 'length' } : {}),
    args: { wanted: kinds[kind].title, example: kinds[kind].example },
  });
}

/** Words after a quantity that could change it (`each side`, `x 2`): the quantity is not used until they are gone. */
export function notUnderstood(words: Stretch, whole: Stretch, isWeighing = false): Problem {
  return problemAt(words, 'quantity/not-understood', {
    form: isWeighing ? 'weighed' : 'behind',
    args: { read: whole.typed.slice(0, words.from - whole.from).trim() },
  });
}

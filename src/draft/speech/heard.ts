import { laidOut } from './layout.ts';
import { isNumberWord, isZero, numberAt } from './numbers.ts';
import { rawWordsOf } from './raw.ts';
import { lowAt, type Kind, type Span, type Speech, type Word } from './word.ts';

/** Sounds that say nothing. */
const sounds: ReadonlySet<string> = new Set('um uh uhm umm erm er hmm hm mhm ah eh'.split(' '));

/** Marks as they are spoken; they count where a text has hardly any that are typed. */
const spokenMarks: ReadonlyMap<string, string> = new Map([
  ['comma', ','],
  ['period', '.'],
  ['full stop', '.'],
  ['colon', ':'],
  ['semicolon', ';'],
  ['semi colon', ';'],
  ['new line', '\n'],
  ['newline', '\n'],
  ['next line', '\n'],
  ['new paragraph', '\n'],
  ['next paragraph', '\n'],
  ['paragraph', '\n'],
  ['question mark', '?'],
  ['open paren', '('],
  ['open parenthesis', '('],
  ['open bracket', '('],
  ['close paren', ')'],
  ['close parenthesis', ')'],
  ['close bracket', ')'],
]);

const unitNames: Readonly<Record<string, string>> = {
  mm: 'mm mms millimeter millimeters millimetre millimetres',
  cm: 'cm cms centimeter centimeters centimetre centimetres',
  in: 'inch inches',
  mL: 'ml mls cc ccs milliliter milliliters millilitre millilitres',
  '%': '% percent pct',
  g: 'g gm gms gram grams gramme grammes',
  mg: 'mg milligram milligrams',
  mcg: 'mcg microgram micrograms',
  kg: 'kg kgs kilo kilos kilogram kilograms',
  lb: 'lb lbs pound pounds',
  years: 'year years yr yrs yo y/o y.o. y',
  months: 'month months mo mos',
  weeks: 'week weeks wk wks w',
  days: 'day days d',
  hours: 'hour hours hr hrs',
  minutes: 'minute minutes min mins',
};
const units: ReadonlyMap<string, string> = new Map(
  Object.entries(unitNames).flatMap(([unit, names]) => names.split(' ').map((name) => [name, unit] as const)),
);
const lengths: ReadonlySet<string> = new Set(['mm', 'cm', 'in']);

/** Reads a text as it was meant to be heard: fillers and spoken marks taken out, numbers and strengths in figures. */
export function heard(text: string): Speech {
  const raw = laidOut(text, rawWordsOf(text));
  const passed: Span[] = [];
  const marked = withMarks(raw, speaksMarks(raw), passed);
  const words: Word[] = [];
  for (let at = 0; at < marked.length;) {
    const { word, end } = readAt(marked, at);
    words.push(word);
    at = end;
  }
  return { words, passed };
}

/** Whether marks are spoken in a text: it says "comma" or "period" and types neither. */
function speaksMarks(raw: readonly Word[]): boolean {
  let said = 0;
  let typed = 0;
  for (const [at, { low, kind }] of raw.entries()) {
    if (kind === 'mark' && (low === '.' || low === ',')) typed += 1;
    else if (low === 'comma' || low === 'period' || (low === 'full' && raw[at + 1]?.low === 'stop'))
      said += 1;
  }
  return said > typed;
}

/** Takes out sounds, and puts marks where they are spoken. */
function withMarks(raw: readonly Word[], speaks: boolean, passed: Span[]): readonly Word[] {
  const words: Word[] = [];
  for (let at = 0; at < raw.length; at += 1) {
    const word = raw[at]!;
    if (word.kind === 'word' && sounds.has(word.low)) {
      passed.push({ from: word.from, to: word.to });
      if (lowAt(raw, at + 1) === ',') at += 1;
      continue;
    }
    const spoken = speaks ? markAt(raw, at) : undefined;
    words.push(spoken?.word ?? word);
    if (spoken === undefined) continue;
    passed.push({ from: spoken.word.from, to: spoken.word.to });
    at = spoken.end - 1;
  }
  return words;
}

/** The mark that is spoken at a place, in one word or two. */
function markAt(raw: readonly Word[], at: number): Read | undefined {
  const two = spokenMarks.get(`${lowAt(raw, at)} ${lowAt(raw, at + 1)}`);
  const mark = two ?? spokenMarks.get(lowAt(raw, at));
  if (mark === undefined) return undefined;
  const end = two === undefined ? at + 1 : at + 2;
  const kind = mark === '\n' ? 'line' : 'mark';
  return made(raw, at, end, kind, mark, { joined: false });
}

interface Read {
  readonly word: Word;
  readonly end: number;
}

/** The word at a place, with those that belong to it. */
function readAt(words: readonly Word[], at: number): Read {
  const first = words[at]!;
  if (first.kind === 'ratio') return { word: { ...first, ...named(ratioText(first.text)) }, end: at + 1 };
  if (first.kind === 'suture') return { word: { ...first, ...named(sutureText(first.text)) }, end: at + 1 };
  if (first.kind === 'mark' && (first.text === '&' || first.text === '+'))
    return { word: { ...first, ...named('and'), kind: 'word' }, end: at + 1 };
  if (first.kind !== 'number' && first.kind !== 'word') return { word: first, end: at + 1 };
  const number = numberAt(words, at);
  return number === undefined ? { word: first, end: at + 1 } : numeric(words, at, number.digits, number.end);
}

const named = (text: string): Pick<Word, 'text' | 'low'> => ({ text, low: text.toLowerCase() });
const sutureText = (typed: string): string => `${/^\d+/.exec(typed)![0]}-0`;

/** A ratio with its zeros in groups. */
function ratioText(typed: string): string {
  const second = typed.replace(/^1\s?[:/]\s?/, '').replaceAll(',', '');
  return `1:${grouped(/k$/i.test(second) ? Number(second.slice(0, -1)) * 1000 : Number(second))}`;
}

const grouped = (number: number): string => String(number).replace(/\B(?=(?:\d{3})+$)/g, ',');

/** What a number begins: a suture, a ratio, sides, a range, a quantity, or itself. */
function numeric(words: readonly Word[], at: number, digits: string, end: number): Read {
  return (
    sutureAt(words, at, digits, end) ??
    ratioAt(words, at, digits, end) ??
    sidesAt(words, at, digits, end) ??
    rangeAt(words, at, digits, end) ??
    quantityAt(words, at, digits, end) ??
    plainNumber(words, at, digits, end)
  );
}

const made = (
  words: readonly Word[],
  at: number,
  end: number,
  kind: Kind,
  text: string,
  more: Partial<Word> = {},
): Read => ({
  word: {
    ...named(text),
    kind,
    from: words[at]!.from,
    to: words[end - 1]!.to,
    joined: words[at]!.joined,
    ...more,
  },
  end,
});

const dashes: ReadonlySet<string> = new Set(['dash', 'hyphen', '-', '–']);

/** "Four oh", "4 dash 0". */
function sutureAt(words: readonly Word[], at: number, digits: string, end: number): Read | undefined {
  if (!/^(?:[1-9]|1[0-2])$/.test(digits)) return undefined;
  const zero = dashes.has(lowAt(words, end)) ? end + 1 : end;
  const word = words[zero];
  if (word === undefined || !isZero(word) || isNumberWord(words[zero + 1])) return undefined;
  const next = lowAt(words, zero + 1);
  if (next === 'point' || units.has(next)) return undefined;
  // "Ten, one zero" says a number again.
  if (word.kind === 'word' && words[zero + 1]?.kind !== 'word') return undefined;
  return made(words, at, zero + 1, 'suture', `${digits}-0`);
}

const ofRatio: ReadonlySet<string> = new Set(['to', 'in', ':', 'colon', 'per', '/']);
const leastRatio = 1000;

/** "One to one hundred thousand", "1 in 200000". */
function ratioAt(words: readonly Word[], at: number, digits: string, end: number): Read | undefined {
  if (digits !== '1') return mixtureAt(words, at, digits, end);
  if (!ofRatio.has(words[end]?.low ?? '')) return undefined;
  const second = numberAt(words, end + 1);
  if (second === undefined) return undefined;
  const thousands = words[second.end]?.low === 'k' ? 1000 : 1;
  const value = Number(second.digits) * thousands;
  if (value < leastRatio || !Number.isInteger(value)) return undefined;
  return made(words, at, second.end + (thousands > 1 ? 1 : 0), 'ratio', `1:${grouped(value)}`);
}

const buffers: ReadonlySet<string> = new Set(['buffered', 'buffer', 'bicarbonate', 'bicarb']);

/** "Buffered nine to one". */
function mixtureAt(words: readonly Word[], at: number, digits: string, end: number): Read | undefined {
  const joint = lowAt(words, end);
  const last = lowAt(words, end + 1);
  if ((joint !== 'to' && joint !== ':') || (last !== '1' && last !== 'one')) return undefined;
  const near = words.slice(Math.max(0, at - 3), end + 6);
  return near.some(({ low }) => buffers.has(low))
    ? made(words, at, end + 2, 'ratio', `${digits}:1`)
    : undefined;
}

const times: ReadonlySet<string> = new Set(['x', '×', 'by', '*']);

/** "Five by six millimeters", `5 mm x 6 mm`. */
function sidesAt(words: readonly Word[], at: number, digits: string, end: number): Read | undefined {
  const sides = [digits];
  let [place, unit] = afterUnit(words, end);
  while (times.has(words[place]?.low ?? '') && sides.length < 3) {
    const next = numberAt(words, place + 1);
    if (next === undefined) break;
    sides.push(next.digits);
    const [after, own] = afterUnit(words, next.end);
    if (unit !== undefined && own !== undefined && own !== unit) return undefined;
    [place, unit] = [after, own ?? unit];
  }
  if (sides.length < 2 || unit === undefined) return undefined;
  return made(words, at, place, 'sides', `${sides.join(' x ')} ${unit}`, { unit, digits: sides[0]! });
}

function afterUnit(words: readonly Word[], at: number): [after: number, unit: string | undefined] {
  const unit = units.get(words[at]?.low ?? '');
  return unit !== undefined && lengths.has(unit) ? [at + 1, unit] : [at, undefined];
}

/** "Ten to fourteen days", `2-3 mm`. */
function rangeAt(words: readonly Word[], at: number, digits: string, end: number): Read | undefined {
  const hasUnit = units.has(lowAt(words, end)) && joins.has(lowAt(words, end + 1));
  const from = hasUnit ? end + 1 : end;
  const isJoined = words[from]?.joined === true;
  if (!isJoined && !joins.has(lowAt(words, from))) return undefined;
  const second = numberAt(words, isJoined ? from : from + 1);
  const unit = second && units.get(lowAt(words, second.end));
  if (second === undefined || unit === undefined) return undefined;
  const text = `${digits}-${second.digits} ${unit}`;
  return made(words, at, second.end + 1, 'range', text, { unit, digits });
}

const joins: ReadonlySet<string> = new Set(['to', 'or', '-', '–']);

function quantityAt(words: readonly Word[], at: number, digits: string, end: number): Read | undefined {
  const isPercent = lowAt(words, end) === 'per' && lowAt(words, end + 1) === 'cent';
  const unit = isPercent ? '%' : units.get(lowAt(words, end));
  if (unit === undefined) return undefined;
  const after = end + (isPercent ? 2 : 1);
  if (/^mc?g$/.test(unit) && isPerMl(words, after))
    return made(words, at, after + 2, 'quantity', `${digits} ${unit}/mL`, { unit: `${unit}/mL`, digits });
  const text = unit === '%' ? `${digits}%` : `${digits} ${unit}`;
  return made(words, at, after, 'quantity', text, { unit, digits });
}

const isPerMl = (words: readonly Word[], at: number): boolean =>
  (lowAt(words, at) === '/' || lowAt(words, at) === 'per') && units.get(lowAt(words, at + 1)) === 'mL';

/** A number alone keeps its words, so that "the left one" stays what it is. */
function plainNumber(words: readonly Word[], at: number, digits: string, end: number): Read {
  const first = words[at]!;
  if (end === at + 1) return { word: first.kind === 'number' ? first : { ...first, digits }, end };
  return made(words, at, end, 'number', digits, { digits });
}

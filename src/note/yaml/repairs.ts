/**
 * What people type that YAML takes for a sign of its own. Each rule looks at one line at which the parser stumbled,
 * says what is wrong with it, and covers it so that a second parse reads the rest of the note as it was meant.
 */
import type { Fault } from './compose.ts';
import type { Problem, TextEdit } from '../tree/finding.ts';
import type { KeyNames } from '../tree/key-names.ts';
import { quoted } from '../text/quote.ts';
import { rowAt, rowBehind, type Row } from './line.ts';
import type { Range } from '../tree/tree.ts';

export interface Repair {
  readonly problem: Problem;
  /** The line, so that each line is blamed once. */
  readonly row: number;
  /** What is put over the text for the next parse; as long as what it covers. */
  readonly cover?: TextEdit;
  /** The text that was meant, by where it begins once it is covered. */
  readonly mark?: { readonly at: number; readonly meant: Range };
  /** Where the fault is that this explains. */
  readonly explains?: number;
  /** Whether the line was still being typed, so that a key may be missing only because of it. */
  readonly unfinished?: boolean;
}

interface Stumble {
  readonly text: string;
  readonly fault: Fault;
  readonly row: Row;
  readonly keys: KeyNames;
}

type Rule = (stumble: Stumble) => Repair | undefined;

/** What a line with a fault was probably meant to be; undefined where no rule knows. */
export function repairOf(text: string, fault: Fault, keys: KeyNames): Repair | undefined {
  const stumble = { text, fault, row: rowAt(text, Math.min(fault.start, text.length)), keys };
  for (const rule of rules) {
    const repair = rule(stumble);
    if (repair !== undefined) return { ...repair, explains: fault.start };
  }
  return undefined;
}

const rules: readonly Rule[] = [
  openBracket,
  openQuote,
  bareQuestion,
  insideBrackets,
  leadingSign,
  innerColon,
  deeperRow,
  missingColon,
];

/** Covers a range by letters, which YAML reads as a text. */
const covered = ({ start, end }: Range, sign = 'x'): TextEdit => ({
  start,
  end,
  text: sign.repeat(end - start),
});

function needsQuotes(row: Row, meant: Range, text: string, form: string): Repair {
  const typed = text.slice(meant.start, meant.end);
  return {
    problem: {
      code: 'yaml/needs-quotes',
      form,
      at: meant,
      args: { text: typed, sign: typed[0] ?? '' },
      data: { text: quoted(typed) },
    },
    row: row.start,
    cover: covered(meant),
    mark: { at: meant.start, meant },
  };
}

/** `{…` or `[…` that is never closed, often because a `#` made the rest of its line a comment. */
function openBracket({ text, fault, row }: Stumble): Repair | undefined {
  if (fault.code !== 'BAD_INDENT' && fault.code !== 'MISSING_CHAR') return undefined;
  const hash = hashBefore(text, fault.start);
  if (hash !== undefined) return swallowed(text, rowAt(text, hash), hash);
  const open = unclosed(text, fault.start);
  if (open < 0) return undefined;
  const own = open >= row.start ? row : rowAt(text, open);
  return {
    problem: {
      code: 'yaml/unclosed-bracket',
      at: { start: open, end: open + 1 },
      args: { open: text[open] ?? '', close: text[open] === '[' ? ']' : '}' },
      data: { at: own.value.end },
    },
    row: own.start,
  };
}

/** A `#` that hides a closing bracket: after an open one, in the line of a fault or in the last line before it. */
function hashBefore(text: string, at: number): number | undefined {
  const before = text.slice(Math.max(0, at - 2000), at).trimEnd();
  const row = rowAt(text, Math.max(0, at - 2000) + Math.max(0, before.length - 1));
  const hash = /[ \t]#(?=[^\s#])/.exec(row.text);
  if (hash === null) return undefined;
  const place = row.start + hash.index + 1;
  return unclosed(text, place) < 0 ? undefined : place;
}

/** Where the last bracket opens that is still open at a place; looks back over one line of brackets at most. */
function unclosed(text: string, until: number): number {
  const from = Math.max(0, until - 2000);
  let depth = 0;
  for (let at = Math.min(until, text.length) - 1; at >= from; at--) {
    const sign = text[at];
    if (sign === ']' || sign === '}') depth += 1;
    else if (sign === '[' || sign === '{') {
      if (depth === 0) return opensValue(text, at) ? at : -1;
      depth -= 1;
    }
  }
  return -1;
}

const opensValue = (text: string, at: number): boolean => at === 0 || /[\s:,[{-]/.test(text[at - 1] ?? '');

/** `{lesion: papule #2 on left, site: …}`: the rest of the line is a comment for YAML. */
function swallowed(text: string, row: Row, hash: number): Repair {
  const before = text.slice(row.start, hash);
  const from = row.start + Math.max(...[': ', ',', '{', '['].map((sign) => lastBehind(before, sign)));
  const start = from + (/^\s*/.exec(text.slice(from, hash))?.[0].length ?? 0);
  const meant = { start, end: flowEnd(text, hash, row.end) };
  const typed = text.slice(meant.start, meant.end);
  return {
    problem: {
      code: 'yaml/comment-swallows',
      form: 'bracket',
      at: { start: hash, end: meant.end },
      args: { text: text.slice(hash, meant.end) },
      data: { start, text: quoted(typed) },
    },
    row: row.start,
    cover: covered(meant),
    mark: { at: start, meant },
  };
}

function lastBehind(text: string, sign: string): number {
  const at = text.lastIndexOf(sign);
  return at < 0 ? 0 : at + sign.length;
}

/** Where a value inside of brackets ends: before the next comma or closing bracket, without spaces. */
function flowEnd(text: string, from: number, limit: number): number {
  const match = /[,}\]]/.exec(text.slice(from, limit));
  const stop = match === null ? limit : from + match.index;
  return from + text.slice(from, stop).trimEnd().length;
}

/** A quote that is never closed makes all lines after it one text. */
function openQuote({ text, fault, row }: Stumble): Repair | undefined {
  if (fault.code !== 'QUOTE') return undefined;
  const start = fault.start;
  const inside = isInside(row, start, text);
  const end = inside ? flowEnd(text, start + 1, row.end) : Math.max(row.value.end, start + 1);
  const meant = { start, end };
  const alone = row.key === undefined && !inside && row.first === start && row.start === row.first;
  return {
    problem: {
      code: 'yaml/unclosed-quote',
      at: meant,
      args: { quote: text[start] ?? '' },
      data: { at: end, text: text[start] ?? '', sure: !inside },
    },
    row: row.start,
    cover: covered(meant, alone ? ' ' : 'x'),
    mark: { at: start, meant },
  };
}

/** A single question mark is a sign of YAML; the note's word for "not yet known" is `??`. */
function bareQuestion({ row }: Stumble): Repair | undefined {
  const match = /(^|[\s:,[{-])\?(?=\s*($|[,}\]]|\s#))/.exec(row.text);
  if (match === null) return undefined;
  const start = row.start + match.index + match[0].length - 1;
  const meant = { start, end: start + 1 };
  return {
    problem: { code: 'yaml/bare-question-mark', at: meant },
    row: row.start,
    cover: covered(meant),
    mark: { at: start, meant },
  };
}

/** Whether a place is inside of brackets that its line opens or closes. */
function isInside(row: Row, at: number, text: string): boolean {
  const { value } = row;
  if (at > value.start && /[[{]/.test(text[value.start] ?? '')) return true;
  let depth = 0;
  for (const sign of text.slice(at, row.end)) {
    if (sign === '[' || sign === '{') depth += 1;
    else if ((sign === ']' || sign === '}') && --depth < 0) return true;
  }
  return false;
}

function insideBrackets({ text, fault, row, keys }: Stumble): Repair | undefined {
  const { code, start } = fault;
  if (!isInside(row, start, text)) return undefined;
  if (code === 'BAD_SCALAR_START' || code === 'SIGN')
    return needsQuotes(row, { start, end: Math.max(start + 1, flowEnd(text, start, row.end)) }, text, 'sign');
  if (code !== 'BLOCK_IN_FLOW') return undefined;
  const two = /^(.*?\S)[ \t]+([\w-]+):(?=\s)/.exec(text.slice(start, Math.min(fault.end, row.end)));
  if (two !== null && keys.has(two[2] ?? '')) return missingComma(row, start + (two[1] ?? '').length);
  const form = text[start] === '-' ? 'sign' : 'colon';
  return needsQuotes(row, { start, end: flowEnd(text, start, row.end) }, text, form);
}

/** `{volume: 1 mL time: 10:13}` */
function missingComma(row: Row, at: number): Repair {
  return {
    problem: {
      code: 'yaml/syntax',
      form: 'comma',
      at: { start: at, end: at + 1 },
      data: { start: at, end: at, text: ',' },
    },
    row: row.start,
    cover: { start: at, end: at + 1, text: ',' },
  };
}

const signs = /^(?:[@`%*&!,}\]]|[-?](?:\s|$))/;
const header = /^[|>](?:[+-]?\d?|\d[+-])$/;

/** A value that begins with a sign of YAML, or with a quote or bracket that closes before the value ends. */
function leadingSign({ text, row, fault, keys }: Stumble): Repair | undefined {
  const { value } = row;
  if (row.key === undefined && row.first === row.start) return undefined;
  if (fault.start < value.start || fault.start > value.end) return undefined;
  const typed = text.slice(value.start, value.end);
  const folded = /^[|>]/.test(typed) && !header.test(typed);
  if (!signs.test(typed) && !folded && !closesEarly(typed)) return undefined;
  return lostBreak(row, text, keys) ?? needsQuotes(row, value, text, 'sign');
}

const pairs: ReadonlyMap<string, string> = new Map([
  ['[', ']'],
  ['{', '}'],
  ['"', '"'],
  ["'", "'"],
]);

function closesEarly(typed: string): boolean {
  const close = pairs.get(typed[0] ?? '');
  if (close === undefined) return false;
  const at = typed.indexOf(close, 1);
  return at > 0 && at < typed.length - 1 && /^\s*[^\s,\]}]/.test(typed.slice(at + 1));
}

/** `question: AK vs: SCC` */
function innerColon({ text, fault, row, keys }: Stumble): Repair | undefined {
  if (fault.code !== 'BLOCK_AS_IMPLICIT_KEY' || row.key === undefined) return undefined;
  return /:(?:\s|$)/.test(text.slice(row.value.start, row.value.end))
    ? (lostBreak(row, text, keys) ?? needsQuotes(row, row.value, text, 'colon'))
    : undefined;
}

/**
 * `allergies: none  implants: pacemaker`, `remarks: consent: given`: a key in a value was a line of its own, and in quotes it
 * would vanish. Where a bracket closes that never opened, as in `anesthetic: agent: lidocaine}`, nobody knows what was meant.
 */
function lostBreak(row: Row, text: string, keys: KeyNames): Repair | undefined {
  const { start, end } = row.value;
  const value = text.slice(start, end);
  const inner = Array.from(value.matchAll(/(?:^|(?<=\S)[ \t]+)(?=([\w-]+):(?:\s|$))/g)).find(([, key = '']) =>
    keys.has(key),
  );
  if (inner === undefined || row.key === undefined) return undefined;
  const [{ length }, key = ''] = inner;
  const at = start + inner.index;
  const lineBreak = text[row.end] === '\r' ? '\r\n' : '\n';
  const opens = /^[^[{]*[\]}]/.test(value) ? undefined : lineBreak + ' '.repeat(row.first - row.start);
  return {
    problem: {
      code: 'yaml/syntax',
      form: 'line',
      at: { start: at + length, end: at + length + key.length },
      args: { key },
      ...(opens === undefined ? {} : { data: { start: at, end: at + length, text: opens } }),
    },
    row: row.start,
    cover: covered(row.value),
    mark: { at: start, meant: row.value },
    unfinished: true,
  };
}

/** A line that is indented below a line whose key has its value already. */
function deeperRow({ text, fault, row }: Stumble): Repair | undefined {
  const below = rowBehind(text, row);
  if (row.key === undefined || below?.key === undefined) return undefined;
  if (fault.code !== 'MULTILINE_IMPLICIT_KEY' && fault.code !== 'BLOCK_AS_IMPLICIT_KEY') return undefined;
  const [column, wanted] = [below.first - below.start, row.first - row.start];
  if (column <= wanted) return undefined;
  return {
    problem: {
      code: 'yaml/indentation',
      form: 'deeper',
      at: { start: below.first, end: below.first + below.key.length },
      args: { key: below.key },
      // A dash would be lost with the spaces before it.
      ...(text.slice(below.start, below.first).trim() === ''
        ? { data: { start: below.start, end: below.first, text: ' '.repeat(wanted) } }
        : {}),
    },
    row: below.start,
  };
}

/** A line with a word and no colon, or with no space after its colon. */
function missingColon({ text, fault, row, keys }: Stumble): Repair | undefined {
  if (row.key !== undefined || row.value.start === row.value.end) return undefined;
  if (fault.code !== 'MULTILINE_IMPLICIT_KEY' && fault.code !== 'MISSING_CHAR') return undefined;
  const meant = row.value;
  const typed = text.slice(meant.start, meant.end);
  if (!/^[\w-]/.test(typed) || /^-(\s|$)/.test(text.slice(row.start).trimStart())) return undefined;
  const joined = /^([\w-]+):(\S.*)$/.exec(typed);
  if (joined !== null) return missingBlank(row, meant, joined[1] ?? '', joined[2] ?? '');
  return {
    problem: {
      code: 'yaml/missing-colon',
      at: meant,
      args: { text: typed },
      ...(keys.has(typed) ? { data: { start: meant.end, end: meant.end, text: ':' } } : {}),
    },
    row: row.start,
    cover: covered(meant, ' '),
    unfinished: true,
  };
}

/** `volume:1.5 mL` */
function missingBlank(row: Row, place: Range, key: string, rest: string): Repair {
  const colon = place.start + key.length + 1;
  const value = { start: colon, end: place.end };
  return {
    problem: {
      code: 'yaml/missing-colon',
      form: 'blank',
      at: place,
      args: { key, text: rest },
      data: { start: colon, end: colon, text: ' ' },
    },
    row: row.start,
    cover: { start: colon, end: place.end, text: ` ${'x'.repeat(rest.length - 1)}` },
    mark: { at: colon + 1, meant: value },
    unfinished: true,
  };
}

import type { WordRow } from '../../reference/types.ts';
import { remembered } from '../text/remembered.ts';
import type { Leaf } from '../tree/leaf.ts';
import { asMeant, rowMeant } from './as-meant.ts';
import { phrasesOf } from './phrases.ts';
import { tokensOf, type Token } from './phrase-tokens.ts';
import type { WordTable } from './word-table.ts';

/** Words of a text that no table knows, at characters `from` to `to` of it. */
export interface UnknownWords extends Stretch {
  readonly text: string;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

interface Part extends Stretch {
  readonly text: string;
}

interface Named<Row> extends Part {
  readonly row: Row;
}

interface Said<Row> extends Stretch {
  readonly row: Row;
  readonly denied: boolean;
}

/**
 * The last or first word of a list that belongs to each of its parts: "bacterial, fungal and AFB cultures", "stains for
 * AFB and fungus".
 */
const heads: ReadonlyMap<string, string> = new Map([
  ['culture', 'culture'],
  ['cultures', 'culture'],
  ['cx', 'culture'],
  ['stain', 'stain'],
  ['stains', 'stain'],
]);
const anyHead = /\b(?:cultures?|cx|stains?)\b/i;
const joint = /,\s*(?:and|plus|then)\s|,|;|\+|\s&\s|\s(?:and|plus|then|with)\s/gi;
/** A longer text is no list of words. */
const longestList = 200;

function partsOf(text: string): readonly Part[] {
  const parts: Part[] = [];
  let from = 0;
  for (const { index, 0: between } of text.matchAll(joint)) {
    parts.push(trimmedPart(text, from, index));
    from = index + between.length;
  }
  parts.push(trimmedPart(text, from, text.length));
  return parts;
}

function trimmedPart(text: string, from: number, to: number): Part {
  const own = text.slice(from, to);
  const start = from + own.length - own.trimStart().length;
  return { text: own.trim(), from: start, to: start + own.trim().length };
}

/** The rows that parts of a list name together with the word that all parts share. */
function sharingHead<Row extends WordRow>(table: WordTable<Row>, text: string): readonly Named<Row>[] {
  if (text.length > longestList || !anyHead.test(text)) return [];
  const parts = partsOf(text);
  const named: Named<Row>[] = [];
  for (const [at, part] of parts.entries()) {
    const words = part.text.toLowerCase().split(/\s+/);
    const last = heads.get(words.at(-1)!);
    if (last !== undefined) named.push(...alike(parts.slice(0, at).reverse(), last, table));
    const first = words[1] === 'for' ? heads.get(words[0]!) : undefined;
    if (first === undefined) continue;
    const rest = { ...part, text: part.text.replace(/^\S+\s+\S+\s*/, '') };
    named.push(...alike([rest, ...parts.slice(at + 1)], first, table));
  }
  return named;
}

/** The parts from the first on that name a row when the shared word is put after them. */
function alike<Row extends WordRow>(
  parts: readonly Part[],
  head: string,
  table: WordTable<Row>,
): readonly Named<Row>[] {
  const named: Named<Row>[] = [];
  for (const part of parts) {
    const row = table.find(`${part.text} ${head}`);
    if (row === undefined) break;
    named.push({ ...part, row });
  }
  return named;
}

/** The rows that a text names, in its order, and how it says them. */
function saidIn<Row extends WordRow>(table: WordTable<Row>, text: string): readonly Said<Row>[] {
  const whole = table.find(text);
  if (whole !== undefined) return [{ row: whole, from: 0, to: text.length, denied: false }];
  const mentions = phrasesOf(table)
    .mentionsIn(text)
    .map(({ row, from, to, standing }) => ({ row, from, to, denied: standing === 'denied' }));
  const shared = sharingHead(table, text);
  const others = shared.length === 0 ? mentions : mentions.filter((one) => !overlaps(one, shared));
  const own = [...shared, ...answersIn(table, text, mentions)];
  if (own.length === 0) return others;
  const added = own.map(({ row, from, to }) => ({ row, from, to, denied: false }));
  return [...others, ...added].sort((a, b) => a.from - b.from);
}

const overlaps = (one: Stretch, others: readonly Stretch[]): boolean =>
  others.some(({ from, to }) => from < one.to && one.from < to);

/** Parts of a list that are a word of the table and that free text takes for something else: "None, rinsed with saline". */
function answersIn<Row extends WordRow>(
  table: WordTable<Row>,
  text: string,
  mentions: readonly Stretch[],
): readonly Named<Row>[] {
  if (text.length > longestList) return [];
  return partsOf(text).flatMap((part) => {
    const row = table.find(part.text);
    return row === undefined || overlaps(part, mentions) ? [] : [{ ...part, row }];
  });
}

const readings = new WeakMap<object, (text: string) => readonly WordRow[]>();

/**
 * The rows that a word of the trade names: itself, or what a longer text says without denying it. Of "petrolatum, gauze
 * and tape" each part counts.
 */
export function rowsIn<Row extends WordRow>(
  table: WordTable<Row>,
  leaf: Leaf<string> | undefined,
): readonly Row[] {
  const text = leaf?.value;
  if (text === undefined) return [];
  const row = table.find(text);
  if (row !== undefined) return [row];
  let reading = readings.get(table) as ((text: string) => readonly Row[]) | undefined;
  if (reading === undefined) readings.set(table, (reading = remembered((one) => rowsMeant(table, one))));
  return reading(text);
}

/** The rows that a text names and does not deny, its words read as what they are surely slips of. */
function rowsMeant<Row extends WordRow>(table: WordTable<Row>, text: string): readonly Row[] {
  const meant = asMeant(text, table);
  const rows = rowsSaid(table, meant);
  const whole = rows.length > 0 ? undefined : rowMeant(table, text);
  return whole === undefined ? rows : [whole];
}

/** The rows that a free text names and does not deny. */
export const rowsSaid = <Row extends WordRow>(table: WordTable<Row>, text: string): readonly Row[] =>
  saidIn(table, text).flatMap(({ row, denied }) => (denied ? [] : [row]));

/** Words that change nothing about the word of the trade beside which they are written; the longest that fits counts. */
export class Qualifiers {
  private readonly words: ReadonlySet<string>;
  private readonly most: number;

  constructor(words: readonly string[]) {
    this.words = new Set(words.map((one) => wordsOf(tokensOf(one))));
    this.most = Math.max(0, ...words.map((one) => tokensOf(one).length));
  }

  /** How many of the tokens from one on are a qualifier. */
  countAt(tokens: readonly Token[], at: number): number {
    for (let count = Math.min(this.most, tokens.length - at); count > 0; count--)
      if (this.words.has(wordsOf(tokens.slice(at, at + count)))) return count;
    return 0;
  }
}

const wordsOf = (tokens: readonly Token[]): string => tokens.map(({ text }) => text).join(' ');

export interface Understood<Row> {
  /** What the text says, without what it denies. */
  readonly rows: readonly Row[];
  readonly unknown: readonly UnknownWords[];
}

/** Numbers, and the units of lengths, times, volumes and strengths. */
const measure = /^(?:x?\d+(?:st|nd|rd|th)?%?|x|\d*(?:mm|cm|ml|min|mins|minutes?|sec|secs|seconds?|%))$/;
const signs: ReadonlySet<string> = new Set(['.', ',', ';', ':', '!', '?', '(', ')', '>', '\n']);
const denials: ReadonlySet<string> = new Set(['no', 'not', 'without', 'w/o', 'never', 'neither', 'nor']);

/**
 * What a text says in the place of words of one table, and which of its words nobody knows. What a denial says of a
 * known word to the end of its clause belongs to the denial: "no cautery because of ICD".
 */
export function understand<Row extends WordRow>(
  table: WordTable<Row>,
  text: string,
  qualifiers: Qualifiers,
): Understood<Row> {
  const said = saidIn(table, text);
  const tokens = tokensOf(text);
  const covered = tokens.map(({ text: word }) => signs.has(word) || measure.test(word));
  const cover = (from: number, to: number): void => {
    for (let at = firstAfter(tokens, from); at < tokens.length && tokens[at]!.from < to; at++)
      covered[at] = true;
  };
  for (const { from, to, denied } of said) {
    cover(from, to);
    if (denied) cover(...denialAround(tokens, from, text.length));
  }
  for (let at = 0; at < tokens.length; at++)
    for (let count = qualifiers.countAt(tokens, at); count > 0; count--) covered[at + count - 1] = true;
  return {
    rows: said.flatMap(({ row, denied }) => (denied ? [] : [row])),
    unknown: runsOf(text, tokens, covered),
  };
}

/** From the denial before a word to the end of the clause. */
function denialAround(tokens: readonly Token[], at: number, length: number): [from: number, to: number] {
  const here = firstAfter(tokens, at);
  let before = here - 1;
  while (before >= 0 && !denials.has(tokens[before]!.text) && !signs.has(tokens[before]!.text)) before -= 1;
  let end = here;
  while (end < tokens.length && !(tokens[end]!.from >= at && signs.has(tokens[end]!.text))) end += 1;
  const denial = tokens[before];
  return [denial !== undefined && denials.has(denial.text) ? denial.from : at, tokens[end]?.from ?? length];
}

/** The index of the first token that ends after a place of the text. */
function firstAfter(tokens: readonly Token[], place: number): number {
  let [low, high] = [0, tokens.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (tokens[middle]!.to > place) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The words that nothing covers, those side by side together. */
function runsOf(
  text: string,
  tokens: readonly Token[],
  covered: readonly boolean[],
): readonly UnknownWords[] {
  const runs: UnknownWords[] = [];
  let from: number | undefined;
  for (const [at, token] of tokens.entries()) {
    if (covered[at] === true) from = undefined;
    else if (from === undefined) {
      from = token.from;
      runs.push({ text: text.slice(from, token.to), from, to: token.to });
    } else runs[runs.length - 1] = { text: text.slice(from, token.to), from, to: token.to };
  }
  return runs;
}

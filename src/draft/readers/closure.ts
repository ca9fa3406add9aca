import { wordSet, type Gather } from '../gather.ts';
import { claimOf, type Term } from '../scan.ts';

const joints = wordSet('and then , ; plus followed by');
const stitches = wordSet('suture sutures stitch stitches interrupted simple');

interface Piece {
  readonly key: 'size' | 'material' | 'technique' | 'layer' | 'count';
  readonly value: string;
  readonly at: number;
  readonly end: number;
}

/** Reads stitches: what is between two words that join belongs together, unless it has no size of its own. */
export function readClosures(gather: Gather): void {
  const { scan } = gather;
  const terms = new Map(scan.terms.map((term) => [term.at, term]));
  let from = 0;
  while (from < scan.words.length) {
    const { to } = gather.sentenceAt(from);
    if (isOfStitches(gather, from, to, terms)) readSentence(gather, from, to, terms);
    from = to;
  }
}

/** Whether a sentence has the size of a suture or a material that stitches are of. */
function isOfStitches(gather: Gather, from: number, to: number, terms: ReadonlyMap<number, Term>): boolean {
  for (let at = from; at < to; at += 1) {
    if (gather.held(at) !== undefined || gather.isTaken(at)) continue;
    if (gather.word(at)!.kind === 'suture') return true;
    const term = terms.get(at);
    if (term !== undefined && claimOf(term, 'material') !== undefined && gather.has(stitches, from, to)) return true;
  }
  return false;
}

function readSentence(gather: Gather, from: number, to: number, terms: ReadonlyMap<number, Term>): void {
  const groups: Piece[][] = [[]];
  for (let at = from; at < to;) {
    if (joints.has(gather.low(at)) && groups.at(-1)!.length > 0) groups.push([]);
    const piece = gather.held(at) === undefined && !gather.isTaken(at) ? pieceAt(gather, at, from, terms) : undefined;
    if (piece !== undefined) groups.at(-1)!.push(...piece);
    at = piece?.at(-1)?.end ?? at + 1;
  }
  const entries = merged(groups.filter((group) => group.length > 0));
  for (const pieces of entries) {
    if (!pieces.some(({ key }) => key === 'size' || key === 'material')) continue;
    for (const { key, value, at, end } of pieces)
      gather.put({ level: 'procedure', key: ['closure', '#', key], value, at, end, entry: pieces[0]!.at });
  }
}

/** Groups of which each has a size or a material; what has neither belongs to the one before, or to the next. */
function merged(groups: readonly Piece[][]): readonly Piece[][] {
  const entries: Piece[][] = [];
  let waiting: Piece[] = [];
  for (const group of groups) {
    const last = entries.at(-1);
    const starts = group.some(({ key }) => key === 'size' || key === 'material');
    const keys = new Set(last?.map(({ key }) => key));
    const fits = last !== undefined && !group.some(({ key }) => keys.has(key));
    if (fits && (!starts || !group.some(({ key }) => key === 'layer'))) last.push(...waiting, ...group);
    else if (starts) entries.push([...waiting, ...group]);
    else {
      waiting = group;
      continue;
    }
    waiting = [];
  }
  return entries.map(withoutTwice);
}

/** What is said twice in one entry, and differently, is placed by neither. */
const withoutTwice = (pieces: readonly Piece[]): Piece[] =>
  pieces.filter(
    (one, at) => pieces.findIndex(({ key }) => key === one.key) === at && !pieces.some((other) => other.key === one.key && other.value !== one.value),
  );

function pieceAt(
  gather: Gather,
  at: number,
  from: number,
  terms: ReadonlyMap<number, Term>,
): readonly Piece[] | undefined {
  const word = gather.word(at)!;
  if (word.kind === 'suture') return [{ key: 'size', value: word.text, at, end: at + 1 }];
  const count = countAt(gather, at, from);
  if (count !== undefined) return [count];
  const term = terms.get(at);
  return term === undefined ? undefined : ofTerm(term);
}

const longestCount = 6;

/** "Three simple interrupted", `x 3`. */
function countAt(gather: Gather, at: number, from: number): Piece | undefined {
  const word = gather.word(at)!;
  const times = /^x(\d{1,2})$/.exec(word.low)?.[1];
  if (times !== undefined) return { key: 'count', value: times, at, end: at + 1 };
  if (!/^\d{1,2}$/.test(word.digits ?? '') || (word.kind !== 'number' && word.kind !== 'word')) return undefined;
  const piece: Piece = { key: 'count', value: word.digits!, at, end: at + 1 };
  const before = gather.low(at - 1);
  if (at > from && (before === 'x' || before === 'times' || before === '×')) return piece;
  for (let next = at + 1; next <= at + longestCount; next += 1) {
    const low = gather.low(next);
    if (low === '' || low === ',' || low === 'and' || gather.word(next)!.kind === 'number') return undefined;
    if (stitches.has(low)) return piece;
  }
  return undefined;
}

function ofTerm(term: Term): readonly Piece[] | undefined {
  const { at, end } = term;
  const material = claimOf(term, 'material');
  if (material !== undefined) return [{ key: 'material', value: material.row.name, at, end }];
  const technique = claimOf(term, 'technique');
  const layer = claimOf(term, 'layer');
  if (layer !== undefined) return [{ key: 'layer', value: layer.row.name, at, end }];
  return technique === undefined ? undefined : [{ key: 'technique', value: technique.row.name, at, end }];
}


import type { Gather } from '../gather.ts';
import { wordSet } from '../word-set.ts';
import { claimOf, type Term } from '../scan.ts';
import type { Word } from '../speech/word.ts';

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
  if (areOut(gather, from, to)) return false;
  for (let at = from; at < to; at += 1) {
    if (gather.held(at) !== undefined || gather.isTaken(at)) continue;
    if (gather.word(at)!.kind === 'suture') return true;
    if (dottedSize(gather.word(at)!, terms.get(at + 1)) !== undefined) return true;
    const term = terms.get(at);
    if (term !== undefined && claimOf(term, 'material') !== undefined && gather.has(stitches, from, to))
      return true;
  }
  return false;
}

/** "All 5 nylon sutures were removed today": stitches of an earlier visit. */
const areOut = (gather: Gather, from: number, to: number): boolean =>
  gather.has(removing, from, to) &&
  gather.has(stitches, from, to) &&
  !gather.has(placing, from, to) &&
  gather.has(wordSet('were was have had'), from, to);
const removing = wordSet('removed');
const placing = wordSet('closed closure placed repaired approximated sutured used');

function readSentence(gather: Gather, from: number, to: number, terms: ReadonlyMap<number, Term>): void {
  const groups: Piece[][] = [[]];
  for (let at = from; at < to;) {
    if (joints.has(gather.low(at)) && groups.at(-1)!.length > 0) groups.push([]);
    const isFree = gather.held(at) === undefined && !gather.isTaken(at);
    const piece = isFree ? pieceAt(gather, at, from, terms) : undefined;
    if (piece !== undefined) addTo(groups, piece);
    at = piece?.end ?? at + 1;
  }
  for (const pieces of merged(groups.filter((group) => group.length > 0)))
    if (pieces.some(isThread)) putStitches(gather, pieces);
}

/** Adds a piece to the last of some stitches; a second size begins others. */
function addTo(groups: Piece[][], piece: Piece): void {
  const last = groups.at(-1)!;
  if (isSize(piece) && last.some(isSize)) groups.push([...countBefore(last, piece.at), piece]);
  else last.push(piece);
}

function putStitches(gather: Gather, pieces: readonly Piece[]): void {
  for (const { key, value, at, end } of pieces)
    gather.put({ level: 'procedure', key: ['closure', '#', key], value, at, end, entry: pieces[0]!.at });
}

const isSize = ({ key }: Piece): boolean => key === 'size';

/** Takes a count that is right before a new size out of the stitches before it. */
function countBefore(pieces: Piece[], at: number): Piece[] {
  const last = pieces.at(-1);
  return last?.key === 'count' && last.end === at && pieces.filter(({ key }) => key === 'count').length > 1
    ? [pieces.pop()!]
    : [];
}

const isThread = ({ key }: Piece): boolean => key === 'size' || key === 'material';

/** Groups of which each has a size or a material; what has neither belongs to the one before, or to the next. */
function merged(groups: readonly Piece[][]): readonly Piece[][] {
  const entries: Piece[][] = [];
  let waiting: Piece[] = [];
  for (const group of groups) {
    const last = entries.at(-1);
    const starts = group.some(isThread);
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
    (one, at) =>
      pieces.findIndex(({ key }) => key === one.key) === at &&
      !pieces.some((other) => other.key === one.key && other.value !== one.value),
  );

function pieceAt(
  gather: Gather,
  at: number,
  from: number,
  terms: ReadonlyMap<number, Term>,
): Piece | undefined {
  const word = gather.word(at)!;
  if (word.kind === 'suture') return { key: 'size', value: word.text, at, end: at + 1 };
  const dotted = dottedSize(word, terms.get(at + 1));
  if (dotted !== undefined) return { key: 'size', value: dotted, at, end: at + 1 };
  const term = terms.get(at);
  return countAt(gather, at, from) ?? (term === undefined ? undefined : ofTerm(term));
}

/** "4.0 nylon" is 4-0. */
const dottedSize = ({ kind, text }: Word, next: Term | undefined): string | undefined =>
  kind === 'number' &&
  /^[2-7]\.0$/.test(text) &&
  next !== undefined &&
  claimOf(next, 'material') !== undefined
    ? text.replace('.', '-')
    : undefined;

const longestCount = 6;

/** "Three simple interrupted", `x 3`. */
function countAt(gather: Gather, at: number, from: number): Piece | undefined {
  const { low, kind, digits = '' } = gather.word(at)!;
  const times = /^x(\d{1,2})$/.exec(low)?.[1];
  if (times !== undefined) return { key: 'count', value: times, at, end: at + 1 };
  if (low === 'single' && countsStitches(gather, at)) return { key: 'count', value: '1', at, end: at + 1 };
  if (!/^\d{1,2}$/.test(digits) || (kind !== 'number' && kind !== 'word')) return undefined;
  const isTimes = at > from && /^(?:x|times|×)$/.test(gather.low(at - 1));
  return isTimes || countsStitches(gather, at) ? { key: 'count', value: digits, at, end: at + 1 } : undefined;
}

const noCount = wordSet(', and layer layers');

/** Whether stitches follow a number, with nothing else to count between. */
function countsStitches(gather: Gather, at: number): boolean {
  for (let next = at + 1; next <= at + longestCount; next += 1) {
    const low = gather.low(next);
    if (low === '' || noCount.has(low) || gather.word(next)!.kind === 'number') return false;
    if (stitches.has(low) || gather.word(next)!.kind === 'suture') return true;
  }
  return false;
}

function ofTerm(term: Term): Piece | undefined {
  for (const key of ['material', 'layer', 'technique'] as const) {
    const claim = claimOf(term, key);
    if (claim !== undefined) return { key, value: claim.row.name, at: term.at, end: term.end };
  }
  return undefined;
}

import type { Gather } from '../gather.ts';
import { wordSet } from '../word-set.ts';
import { claimOf, cuesBetween } from '../scan.ts';
import type { Kind } from '../speech/word.ts';

const lengths = wordSet('mm cm');
const punches = wordSet('punch punches trephine');
const betweenPunch = wordSet(
  'disposable sterile biopsy skin dermal round sharp keyes biopsies , of with using size diameter a was',
);
const margins = wordSet('margin margins');
const ofMargin = wordSet(
  'of with was were a the clinical normal surgical free skin peripheral lateral narrow excised : at',
);
const ofSample = wordSet(
  'specimen sample excision ellipse elliptical excised tissue biopsy shave shaved removed ellipses fusiform saucerized',
);
const measured = wordSet('measuring measured measures size sized dimensions');
const notSample = wordSet('defect length repair repaired scar incision');
const near = 3;

/** Reads the diameter of a punch, margins, and the size of what was taken. */
export function readSizes(gather: Gather): void {
  for (const [at, { kind, unit = '' }] of gather.scan.words.entries()) {
    if (!sized.has(kind) || !lengths.has(unit) || gather.isTaken(at) || gather.held(at) !== undefined)
      continue;
    if (isBeside(gather, at, margins, ofMargin)) put(gather, at, 'margin');
    else if (kind !== 'range' && isSize(gather, at)) put(gather, at, 'size');
  }
}

const sized: ReadonlySet<Kind> = new Set<Kind>(['quantity', 'sides', 'range']);

const isSize = (gather: Gather, at: number): boolean =>
  isBeside(gather, at, punches, betweenPunch) || isOfSample(gather, at) || isApart(gather, at);

const put = (gather: Gather, at: number, key: string): void => {
  gather.put({ level: 'procedure', key: [key], value: gather.word(at)!.text, at, end: at + 1 });
};

/** Whether one of some words is beside a place, with nothing but certain words between. */
function isBeside(
  gather: Gather,
  at: number,
  words: ReadonlySet<string>,
  between: ReadonlySet<string>,
): boolean {
  for (const step of [1, -1])
    for (let place = at + step; Math.abs(place - at) <= near + 1; place += step) {
      const low = gather.low(place);
      if (words.has(low)) return true;
      if (!between.has(low)) break;
    }
  return false;
}

/** "Excision measuring 12 x 6 mm", "size of the specimen 8 mm". */
function isOfSample(gather: Gather, at: number): boolean {
  const { from } = gather.clauseAt(at);
  if (!gather.has(ofSample, from, at) || gather.has(notSample, from, at)) return false;
  return gather.has(measured, at - near - 1, at);
}

/** "Deep shave, 9 x 8 mm", "a 12 x 5 mm wedge": a size of the method beside it and of no lesion. */
function isApart(gather: Gather, at: number): boolean {
  const { from, to } = gather.clauseAt(at);
  const { from: start } = gather.sentenceAt(at);
  const isSides = gather.word(at)!.kind === 'sides';
  if (
    isSides &&
    (taken.has(gather.low(at + 1)) || (gather.low(at - 1) === 'size' && !gather.has(seen, from, to)))
  )
    return true;
  const method = cuesBetween(gather.scan.terms, start, at).findLast(
    (term) => claimOf(term, 'method') !== undefined,
  );
  if (method === undefined || gather.has(seen, method.end, at)) return false;
  if (isSides && method.end === at) return true;
  const isFirst = gather.scan.words.slice(from, at).every(({ kind }) => kind === 'mark');
  return isFirst && (to === at + 1 || gather.word(at + 1)!.kind !== 'word');
}

const taken = wordSet('wedge ellipse specimen excision shave disc disk');
const seen = wordSet('papule plaque macule nodule patch lesion mole nevus ulcer cyst');

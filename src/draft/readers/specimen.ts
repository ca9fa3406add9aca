import type { Gather } from '../gather.ts';
import { phrases } from '../trie.ts';
import { wordSet } from '../word-set.ts';
import { plainOf } from '../scan.ts';
import { timeAt } from './visit.ts';

const heads = wordSet(
  'specimen specimens jar bottle container vial label labels labeled labelled cup part is',
);
const between = wordSet('as label letter number # : was is were and it with , ¬');
const after = wordSet('was is in were to for sent and : , . ) ; formalin placed submitted from at of');

/** Reads labels of specimens: "specimen A", "labeled as B", "jar 1", and lists of them. */
export function readLabels(gather: Gather): void {
  const entries = new Map<string, number>();
  for (const at of gather.scan.words.keys()) {
    const first = labelPlace(gather, at);
    const places = first === undefined ? [] : listFrom(gather, first);
    for (const [nth, place] of places.entries()) {
      const value = labelAt(gather, place) ?? gather.word(place)!.text.toUpperCase();
      if (gather.isTaken(place)) continue;
      if (!entries.has(value)) entries.set(value, entries.size);
      const listed = places.length > 1 ? { nth, of: places.length } : {};
      const entry = entries.get(value)!;
      const rests = place === at ? [] : ([[at, at + 1]] as const);
      gather.put({
        level: 'procedure',
        key: labelKey,
        value,
        at: place,
        end: place + 1,
        rests,
        entry,
        ...listed,
      });
    }
  }
}

const labelKey = ['specimen', '#', 'label'];

/** The place of the label that a word leads to: "specimen A", or the word itself: "A: formalin". */
function labelPlace(gather: Gather, at: number): number | undefined {
  if (gather.held(at) !== undefined) return undefined;
  if (isLetter(gather, at) && gather.low(at + 1) === ':' && gather.clauseAt(at).from === at) return at;
  const low = gather.low(at);
  if (!heads.has(low) || (low === 'is' && !isLetter(gather, at + 1))) return undefined;
  let place = at + 1;
  while (between.has(gather.low(place)) && place < at + 7) place += 1;
  return labelAt(gather, place) === undefined ? undefined : place;
}

/** A capital that means a specimen. */
const isLetter = (gather: Gather, at: number): boolean =>
  !gather.isCapitals && /^[A-H]$/.test(gather.word(at)?.text ?? '') && gather.low(at + 1) !== '.';

/** The places of labels in a list that begins at one: "A, B and C". */
function listFrom(gather: Gather, first: number): readonly number[] {
  const places = [first];
  for (let at = first + 1; /^(?:,|and)$/.test(gather.low(at)); at += 1) {
    if (/^[a-h]$/.test(gather.low(at + 1))) places.push(at + 1);
    else if (gather.low(at + 1) !== 'and') break;
    if (/^[a-h]$/.test(gather.low(at + 1))) at += 1;
  }
  return places;
}

const other = wordSet('other another second remaining');
const portions = wordSet('half piece portion part sample specimen');

/** Says of which specimen a place speaks: after a label of that one, after "the other half" of the next. */
export function specimensIn(gather: Gather): (at: number) => number {
  const starts = gather.found.flatMap((one) =>
    one.key === labelKey && one.nth === undefined ? [{ at: one.at, entry: one.entry! }] : [],
  );
  for (const at of gather.scan.words.keys())
    if (other.has(gather.low(at)) && portions.has(gather.low(at + 1)))
      starts.push({ at, entry: Math.max(0, ...starts.map(({ entry }) => entry)) + 1 });
  starts.sort((one, next) => one.at - next.at);
  return (at) => starts.findLast((one) => one.at <= at)?.entry ?? 0;
}

function labelAt(gather: Gather, at: number): string | undefined {
  const word = gather.word(at);
  if (word === undefined) return undefined;
  if (word.kind === 'number' && /^\d$/.test(word.text)) return word.text;
  if (!/^[a-h]$/.test(word.low)) return undefined;
  const next = gather.word(at + 1);
  const isLabel = word.low !== 'a' || next?.kind !== 'word' || after.has(next.low);
  const isCapital = word.text !== word.low && !gather.isCapitals;
  return isLabel || isCapital ? word.text.toUpperCase() : undefined;
}

const marking = wordSet(
  'mark marks marked marking tag tags tagged tagging orient oriented orienting orientation short long',
);
const marks = wordSet('suture stitch silk ink inked notch nick suture:');
const margins = wordSet(
  "o'clock superior inferior medial lateral anterior posterior cephalad caudal tip apex",
);

/** Reads how an excised piece is oriented: "a suture marks the superior tip at 12 o'clock". */
export function readOrientation(gather: Gather): void {
  const { clauses } = gather.scan;
  for (const [number, { from, to }] of clauses.entries()) {
    const isSaid =
      gather.has(marking, from, to) && gather.has(marks, from, to) && gather.has(margins, from, to);
    if (!isSaid || gather.held(from) !== undefined || gather.isTaken(from, to)) continue;
    const [first, last] = trimmed(gather, from, lastMark(gather, number));
    if (last - first > longestMark) continue;
    const value = plainOf(gather.scan, first, last);
    gather.put({
      level: 'procedure',
      key: ['specimen', '#', 'orientation'],
      value,
      at: first,
      end: last,
      entry: 0,
    });
  }
}

/** "Short stitch superior, long stitch lateral": the end of the marks that follow each other. */
function lastMark(gather: Gather, number: number): number {
  const { clauses } = gather.scan;
  let last = number;
  while (clauses[last + 1]?.sentence === clauses[number]!.sentence) {
    const { from, to } = clauses[last + 1]!;
    if (!gather.has(marks, from, to) || !gather.has(margins, from, to)) break;
    last += 1;
  }
  return clauses[last]!.to;
}

const longestMark = 16;
const unsaying = wordSet('a the and with');

/** A clause without its mark at the end and the words that say nothing before it. */
function trimmed(gather: Gather, from: number, to: number): readonly [number, number] {
  let [first, last] = [from, to];
  while (last > first && isOutside(gather, last - 1)) last -= 1;
  while (first < last && unsaying.has(gather.low(first))) first += 1;
  return [first, last];
}

/** Reads when the tissue was taken: "collected at 10:25". */
export function readCollected(gather: Gather): void {
  for (const [at, { low }] of gather.scan.words.entries()) {
    if (low !== 'collected' && low !== 'collection') continue;
    const place = [at + 1, at + 2, at + 3].find((one) => gather.word(one)?.kind === 'time');
    if (place === undefined || gather.held(at) !== undefined || gather.isTaken(place)) continue;
    const time = timeAt(gather, place);
    if (time === undefined) continue;
    const rests = [[at, at + 1]] as const;
    gather.put({
      level: 'procedure',
      key: ['specimen', '#', 'collected'],
      value: time.value,
      at: place,
      end: time.end,
      entry: 0,
      rests,
    });
  }
}

const things = wordSet('specimen tissue sample pathology path histology lab');
const tests = wordSet('culture cultures dif immunofluorescence stain stains saline');
const notSent = phrases(
  ['not sent', 'not submitted', 'discarded', 'no specimen', 'no tissue'].map((words) => [words, true]),
);

/** Reads that nothing was sent, with what is said about it to the end of the sentence. */
export function readNotSent(gather: Gather): void {
  for (const at of gather.scan.words.keys()) {
    const isSaid = notSent.longest(gather.scan.words, at) !== undefined;
    if (isSaid && !gather.isTaken(at)) putNotSent(gather, at);
  }
}

function putNotSent(gather: Gather, at: number): void {
  const { from } = gather.clauseAt(at);
  const { to } = gather.sentenceAt(at);
  if (gather.has(tests, from, to) || (from !== at && !gather.has(things, from, to))) return;
  if (gather.held(at) !== undefined && gather.held(at) !== 'denied') return;
  let end = to;
  while (isOutside(gather, end - 1)) end -= 1;
  if (gather.isTaken(from, end)) return;
  const value = plainOf(gather.scan, from, end);
  gather.put({ level: 'procedure', key: ['specimen', '#', 'not-sent'], value, at: from, end });
}

/** Whether a word at the end of a statement is none of it. */
const isOutside = (gather: Gather, at: number): boolean =>
  gather.word(at)!.kind === 'mark' || gather.word(at)!.kind === 'line' || gather.low(at) === 'and';

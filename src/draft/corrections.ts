import type { CueAt } from './cues.ts';
import type { Claim } from './lexicon.ts';
import type { Word } from './speech/word.ts';

/** What was taken back: the words at places `at` to `end`, the words that take it back, and the place of what counts. */
export interface Correction {
  readonly struck: readonly [at: number, end: number];
  readonly cue: readonly [at: number, end: number];
  readonly counts: number;
}

interface Valued {
  readonly at: number;
  readonly end: number;
  readonly claims: readonly Claim[];
}

/** Words that take something back only where a value of the same kind is right beside them on both sides. */
const weak: ReadonlySet<string> = new Set(['no', 'actually', 'rather', 'sorry', 'wait']);
/** How many words away the value may be that counts, and the one that is taken back. */
const reach = { strong: [20, 20], weak: [3, 20], no: [3, 4] } as const;
const sides: ReadonlySet<string> = new Set(['left', 'right', 'l', 'r', 'lt', 'rt', 'both', 'bilateral']);

/** Finds what a speaker took back: a value before "correction" and its like, and one of the same kind after it. */
export function correctionsIn(
  words: readonly Word[],
  cues: readonly CueAt[],
  terms: readonly Valued[],
): readonly Correction[] {
  const termAt = new Map(terms.map((term) => [term.at, term]));
  const endAt = new Map(terms.map((term) => [term.end, term]));
  const found: Correction[] = [];
  for (const cue of takingBack(words, cues)) {
    const one = correctionAt(words, cue, termAt, endAt);
    if (one !== undefined) found.push(one);
  }
  return found;
}

interface Taking {
  readonly at: number;
  readonly end: number;
  readonly isWeak: boolean;
}

function takingBack(words: readonly Word[], cues: readonly CueAt[]): readonly Taking[] {
  const said = cues.flatMap(({ at, end, cues: several }) =>
    several.some((cue) => 'corrects' in cue)
      ? [{ at, end, isWeak: end === at + 1 && weak.has(words[at]!.low) }]
      : [],
  );
  const starts = new Set(said.map(({ at }) => at));
  const noes = words.flatMap(({ low }, at) =>
    low === 'no' && !starts.has(at) ? [{ at, end: at + 1, isWeak: true }] : [],
  );
  return [...said, ...noes];
}

function correctionAt(
  words: readonly Word[],
  { at, end, isWeak }: Taking,
  termAt: ReadonlyMap<number, Valued>,
  endAt: ReadonlyMap<number, Valued>,
): Correction | undefined {
  const isNo = isWeak && words[at]!.low === 'no';
  const [ahead, back] = reach[isNo ? 'no' : isWeak ? 'weak' : 'strong'];
  for (let next = end; next < Math.min(words.length, end + ahead); next += 1) {
    const kind = kindAt(words, next, termAt);
    if (kind === undefined) continue;
    if (isNo && kind.name === 'term') return undefined;
    const struck = struckBefore(kind, at, isWeak ? sentenceFrom(words, at, back) : at - back, (place) => ({
      at: endAt.get(place + 1)?.at ?? place,
      kind: kindAt(words, endAt.get(place + 1)?.at ?? place, termAt),
    }));
    if (struck !== undefined) return { struck, cue: [at, end], counts: next };
    if (isWeak) return undefined;
  }
  return undefined;
}

/** The nearest value of a kind before a place. */
function struckBefore(
  kind: KindOf,
  at: number,
  first: number,
  valueAt: (place: number) => { readonly at: number; readonly kind: KindOf | undefined },
): readonly [number, number] | undefined {
  for (let place = at - 1; place >= Math.max(0, first); place -= 1) {
    const before = valueAt(place);
    if (isSameKind(kind, before.kind)) return [before.at, place + 1];
  }
  return undefined;
}

/** Where a sentence begins, at most some words back. */
function sentenceFrom(words: readonly Word[], at: number, back: number): number {
  let from = at;
  while (from > Math.max(0, at - back) && words[from - 1]!.text !== '.') from -= 1;
  return from;
}

interface KindOf {
  readonly name: string;
  readonly tables: readonly string[];
  readonly value: string;
}

/** What kind of value begins at a place. */
function kindAt(words: readonly Word[], at: number, termAt: ReadonlyMap<number, Valued>): KindOf | undefined {
  const { kind, unit, low, digits } = words[at]!;
  if (kind === 'quantity' || kind === 'range') return { name: `of ${unit}`, tables: [], value: low };
  if (kind === 'sides' || kind === 'ratio' || kind === 'suture' || kind === 'date' || kind === 'time')
    return { name: kind, tables: [], value: low };
  if (sides.has(low)) return { name: 'side', tables: [], value: low };
  if (/^[A-H]$/.test(words[at]!.text)) return { name: 'label', tables: [], value: low };
  const term = termAt.get(at);
  if (term !== undefined) {
    const rows = term.claims.map(({ row }) => row.name).join('|');
    return { name: 'term', tables: term.claims.map(({ table }) => table), value: rows };
  }
  return digits === undefined ? undefined : { name: 'number', tables: [], value: digits };
}

const isSameKind = (one: KindOf, other: KindOf | undefined): boolean =>
  other !== undefined &&
  one.value !== other.value &&
  (one.name === other.name || (one.name.startsWith('of ') && other.name === 'number')) &&
  (one.name !== 'term' || one.tables.some((table) => other.tables.includes(table)));

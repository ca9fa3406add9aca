import type { Hold } from './cues.ts';
import type { Scan, Term } from './scan.ts';
import type { Word } from './speech/word.ts';

/** One thing that a text says, at places `at` to `end` of its words. */
export interface Found {
  /** Whether it is of a procedure, of the visit, or of the patient. */
  readonly level: 'procedure' | 'visit';
  /** Keys of the note below that level; `#` is the position of an entry. */
  readonly key: readonly string[];
  readonly value: string;
  readonly at: number;
  readonly end: number;
  /** Which entry of a list it belongs to, where the key has entries: found values with the same number are one entry. */
  readonly entry?: number;
  /** Whether several of them are no contradiction. */
  readonly several?: true;
  /** Its place in a list of as many things as `of`, which may be one for each procedure. */
  readonly nth?: number;
  readonly of?: number;
  /** Whether it is an amount of all sites together. */
  readonly ofAll?: true;
  /** Other places of words that it rests on. */
  readonly rests?: readonly (readonly [at: number, end: number])[];
}

/** What the readers have found in a text so far; each takes the words that it has read. */
export class Gather {
  readonly found: Found[] = [];
  /** Whether the text is in capitals, so that a capital says nothing. */
  readonly isCapitals: boolean;
  private readonly taken: Uint8Array;

  constructor(readonly scan: Scan) {
    this.taken = new Uint8Array(scan.words.length);
    this.isCapitals = scan.text === scan.text.toUpperCase();
  }

  word(at: number): Word | undefined {
    return this.scan.words[at];
  }

  low(at: number): string {
    return this.scan.words[at]?.low ?? '';
  }

  put(one: Found): void {
    this.found.push(one);
    this.take(one.at, one.end);
    for (const [at, end] of one.rests ?? []) this.take(at, end);
  }

  take(at: number, end: number): void {
    this.taken.fill(1, at, end);
  }

  isTaken(at: number, end = at + 1): boolean {
    for (let place = at; place < end; place += 1) if (this.taken[place] === 1) return true;
    return false;
  }

  /** What keeps a word from being of this visit. */
  held(at: number): Hold | undefined {
    return this.scan.held[at];
  }

  /** The terms that no reader has taken yet. */
  get freeTerms(): readonly Term[] {
    return this.scan.terms.filter(({ at, end }) => !this.isTaken(at, end));
  }

  /** Whether one of some words is among those between two places. */
  has(words: ReadonlySet<string>, at: number, end: number): boolean {
    for (let place = Math.max(0, at); place < end; place += 1) if (words.has(this.low(place))) return true;
    return false;
  }

  clauseAt(at: number): { readonly from: number; readonly to: number; readonly sentence: number } {
    return this.scan.clauses[this.scan.clauseOf[at]!]!;
  }

  /** Whether the sentence of a place is a list under a heading of allergies. */
  isUnderAllergies(at: number): boolean {
    const { from } = this.sentenceAt(at);
    return /^allerg(?:y|ies)$/.test(this.low(from)) && this.low(from + 1) === ':';
  }

  /** The places of the sentence around a place. */
  sentenceAt(at: number): { readonly from: number; readonly to: number } {
    const { clauses, clauseOf } = this.scan;
    const number = clauseOf[at]!;
    const { sentence } = clauses[number]!;
    let [first, last] = [number, number];
    while (clauses[first - 1]?.sentence === sentence) first -= 1;
    while (clauses[last + 1]?.sentence === sentence) last += 1;
    return { from: clauses[first]!.from, to: clauses[last]!.to };
  }
}

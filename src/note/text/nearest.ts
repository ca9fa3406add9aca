import { mayBeMeant } from './real-words.ts';

/** A known word that a text is probably meant to be. */
export interface Nearest {
  readonly word: string;
  /** Whether what was typed is one slip of the hand away, and can be nothing else: no other known word, no real one. */
  readonly sure: boolean;
  /** Whether what was typed may be a word of its own, so that to write the near one may change what is said. */
  readonly other: boolean;
}

const longest = 64;

/** How many slips a word of this length may have: none up to two letters, one up to five, two from there on. */
const allowance = (length: number): number => (length < 3 ? 0 : length < 6 ? 1 : 2);

const itself = (word: string): unknown => word;

/**
 * The known word nearest to a text: fewest letters left out, added, changed or swapped with their neighbor. Case
 * counts for nothing, and a word with other digits is another: it may be another strength, size or finger. Undefined
 * where nothing is near enough. Costs a walk through all words, so it is for texts that are going to be shown as
 * unknown, not for every text of a note.
 * @param meaning what a known word means: two words for one thing, equally near, leave no doubt
 */
export function nearest(
  text: string,
  words: Iterable<string>,
  meaning: (word: string) => unknown = itself,
): Nearest | undefined {
  const found = closest(text, words, meaning, allowance(text.length));
  if (found === undefined) return undefined;
  const { word, slips, rivals } = found;
  const other = slips > 1 || mayBeMeant(changed(text.toLowerCase(), word.toLowerCase()));
  return { word, sure: rivals.length === 0 && !other, other };
}

/** A key that a typed one is probably meant to be. */
export interface NearestKey<Key> {
  readonly key: Key;
  /** The spelling of that key which is nearest. */
  readonly word: string;
  /** Whether it may be read as that key: no other is as near, and it is near enough. */
  readonly meant: boolean;
  /** Whether the right spelling may be put in without a question. */
  readonly sure: boolean;
  /** Spellings of other keys that are as near. */
  readonly rivals: readonly string[];
}

/**
 * The key nearest to an unknown one. A key is nothing but a key, whatever else its letters spell: one slip is allowed
 * however short it is, and two spellings of one key leave no doubt.
 * @param keys the keys that may be meant, by each of their spellings
 */
export function nearestKey<Key>(typed: string, keys: ReadonlyMap<string, Key>): NearestKey<Key> | undefined {
  const meaning = (word: string): Key | undefined => keys.get(word);
  const found = closest(typed, keys.keys(), meaning, Math.max(1, allowance(typed.length)));
  const key = found && keys.get(found.word);
  if (found === undefined || key === undefined) return undefined;
  const { word, slips, rivals } = found;
  const meant = rivals.length === 0 && (slips < 2 || typed.length > 6);
  const real = !isPlural(typed, word) && mayBeMeant(changed(typed.toLowerCase(), word));
  return { key, word, meant, sure: meant && slips < 2 && !real, rivals };
}

const isPlural = (typed: string, word: string): boolean => `${typed}s` === word || typed === `${word}s`;

interface Closest {
  readonly word: string;
  readonly slips: number;
  /** Words of other meaning that are as near. */
  readonly rivals: readonly string[];
}

function closest(
  text: string,
  words: Iterable<string>,
  meaning: (word: string) => unknown,
  limit: number,
): Closest | undefined {
  if (text.length > longest) return undefined;
  const typed = text.toLowerCase();
  const letters = lettersOf(typed);
  let best: string | undefined;
  let least = limit + 1;
  let rivals: string[] = [];
  for (const word of words) {
    const most = Math.min(limit, least);
    if (!mayBeNear(letters, typed.length, word, most)) continue;
    const slips = distance(typed, word.toLowerCase(), most);
    if (slips > limit || slips > least || digitsOf(word) !== digitsOf(text)) continue;
    if (slips < least) [best, least, rivals] = [word, slips, []];
    else if (best !== undefined && meaning(word) !== meaning(best)) rivals.push(word);
  }
  return best === undefined ? undefined : { word: best, slips: least, rivals };
}

/** The words of a text in which it differs from another. */
function changed(typed: string, word: string): string {
  const shorter = Math.min(typed.length, word.length);
  let head = 0;
  while (head < shorter && typed[head] === word[head]) head++;
  let tail = 0;
  while (tail < shorter - head && typed[typed.length - 1 - tail] === word[word.length - 1 - tail]) tail++;
  const from = typed.slice(0, head).search(/[a-z]*$/);
  const to = typed.length - tail;
  return typed.slice(from, to) + (/^[a-z]*/.exec(typed.slice(to))?.[0] ?? '');
}

const digitsOf = (text: string): string => text.replace(/\D/g, '');

/** The letters of a word as bits; other signs fall together with some. */
function lettersOf(word: string): number {
  let letters = 0;
  for (let at = 0; at < word.length; at++) letters |= 1 << (word.charCodeAt(at) & 31);
  return letters;
}

/** Whether so few slips can be between: each brings one letter at most that the other word does not have. */
function mayBeNear(letters: number, length: number, word: string, most: number): boolean {
  if (Math.abs(word.length - length) > most) return false;
  let others = lettersOf(word) & ~letters;
  for (let left = most; others !== 0; left--) {
    if (left === 0) return false;
    others &= others - 1;
  }
  return true;
}

/** Rows of the table of slips, used again and again: most words are compared with hundreds of others. */
const scratch = [0, 1, 2].map(() => new Uint8Array(longest + 4));

/**
 * Slips between two words, counted up to `most`; anything beyond is `most + 1`. Only the cells are worked out that
 * are so near to the diagonal that they can be within `most`.
 */
function distance(a: string, b: string, most: number): number {
  const far = most + 1;
  let [before, last, row] = scratch as [Uint8Array, Uint8Array, Uint8Array];
  for (let j = 0; j <= b.length; j++) last[j] = Math.min(j, far);
  for (let i = 1; i <= a.length; i++) {
    const from = Math.max(1, i - most);
    const to = Math.min(b.length, i + most);
    row[from - 1] = from === 1 ? Math.min(i, far) : far;
    row[to + 1] = far;
    let smallest = row[from - 1]!;
    for (let j = from; j <= to; j++) {
      const same = a.charCodeAt(i - 1) === b.charCodeAt(j - 1);
      let slips = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && isSwapped(a, b, i, j)) slips = Math.min(slips, before[j - 2]! + 1);
      row[j] = slips;
      if (slips < smallest) smallest = slips;
    }
    if (smallest > most) return far;
    [before, last, row] = [last, row, before];
  }
  return Math.min(last[b.length]!, far);
}

const isSwapped = (a: string, b: string, i: number, j: number): boolean =>
  a.charCodeAt(i - 1) === b.charCodeAt(j - 2) && a.charCodeAt(i - 2) === b.charCodeAt(j - 1);

/** A known word that a text is probably meant to be. */
export interface Nearest {
  readonly word: string;
  /** Whether it is so near, and so much nearer than any other, that it may be put in without a question. */
  readonly sure: boolean;
}

const longest = 64;

/** How many slips a word of this length may have: none up to two letters, one up to five, two from there on. */
const allowance = (length: number): number => (length < 3 ? 0 : length < 6 ? 1 : 2);

/**
 * The known word nearest to a text: fewest letters left out, added, changed or swapped with their neighbor. Case
 * counts for nothing, and a word with other digits is another: it may be another strength, size or finger. Undefined
 * where nothing is near enough. Costs a walk through all words, so it is for texts that are going to be shown as
 * unknown, not for every text of a note.
 */
export function nearest(text: string, words: Iterable<string>): Nearest | undefined {
  if (text.length > longest) return undefined;
  const typed = text.toLowerCase();
  const limit = allowance(typed.length);
  const letters = lettersOf(typed);
  let best: string | undefined;
  let least = limit + 1;
  let alone = true;
  for (const word of words) {
    const most = Math.min(limit, least);
    if (!mayBeNear(letters, typed.length, word, most)) continue;
    const slips = distance(typed, word.toLowerCase(), most);
    if (slips > limit || slips > least || digitsOf(word) !== digitsOf(text)) continue;
    alone = slips < least || word === best;
    if (slips < least) best = word;
    least = slips;
  }
  if (best === undefined) return undefined;
  return { word: best, sure: alone && (least < 2 || typed.length > 6) };
}

const digitsOf = (text: string): string => text.replace(/\D/g, '');

/** The letters of a word as bits; other signs fall together with some. */
function lettersOf(word: string): number {
  let letters = 0;
  for (let at = 0; at < word.length; at++) letters |= 1 << (word.charCodeAt(at) & 31);
  return letters;
}

/** Whether so few slips can lie between: each brings one letter at most that the other word does not have. */
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
 * lie so near to the diagonal that they can be within `most`.
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

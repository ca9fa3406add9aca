import { mayBeMeant } from '../../text/real-words.ts';
import type { Token } from '../phrase-tokens.ts';
import { singular } from '../../text/singular.ts';

/** Shorter words are near too many others. */
const shortest = 6;
/** Two words written as one have to be so long together. */
const shortestJoined = 9;

/** Words that are looked for, and those that are known otherwise. */
interface Words {
  /** Names of dangers, of one word or several. */
  readonly names: Iterable<string>;
  /** Other words of the trade, which are never a slip of one of them. */
  readonly others: Iterable<string>;
}

/**
 * Reads a word that is one slip from a long word of a danger, and nothing else, as that word. Candidates share the first
 * two letters, or the first and the last three, so that few are compared.
 */
export class Slips {
  private readonly known = new Set<string>();
  private readonly near = new Map<string, string[]>();
  private readonly joined = new Map<string, readonly [string, string]>();

  constructor({ names, others }: Words) {
    for (const name of names) this.add(name.toLowerCase());
    for (const other of others) for (const word of lettersOf(other.toLowerCase())) this.known.add(word);
  }

  private add(name: string): void {
    const words = lettersOf(name);
    for (const word of words) {
      if (word.length >= shortest && !this.known.has(word)) {
        push(this.near, word.slice(0, 2), word);
        push(this.near, ends(word), word);
      }
      this.known.add(word);
    }
    const [first, second, ...more] = words;
    if (second !== undefined && more.length === 0 && name === `${first} ${second}`)
      this.joined.set(name.replace(' ', ''), [first!, second]);
  }

  /** The tokens of a text with its slips read as what is meant, each of them marked. */
  read(tokens: readonly Token[]): readonly Token[] {
    let read: Token[] | undefined;
    for (const [at, token] of tokens.entries()) {
      const meant = token.text.length < shortest ? undefined : this.meant(token);
      if (meant !== undefined) read ??= tokens.slice(0, at);
      if (read !== undefined) read.push(...(meant ?? [token]));
    }
    return read ?? tokens;
  }

  private meant(token: Token): readonly Token[] | undefined {
    const { text, from } = token;
    if (this.known.has(text) || this.known.has(singular(text))) return undefined;
    const two =
      text.length < shortestJoined ? undefined : (this.joined.get(text) ?? this.joined.get(singular(text)));
    if (two !== undefined) {
      const middle = from + two[0].length;
      return [
        { text: two[0], from, to: middle, slip: true },
        { text: two[1], from: middle, to: token.to, slip: true },
      ];
    }
    const word = this.nearest(text) ?? this.nearest(singular(text));
    return word === undefined || mayBeMeant(text) ? undefined : [{ ...token, text: word, slip: true }];
  }

  /** The only word that is one slip away. */
  private nearest(text: string): string | undefined {
    let found: string | undefined;
    for (const key of [text.slice(0, 2), ends(text)])
      for (const word of this.near.get(key) ?? []) {
        if (word === found || !isOneSlip(text, word)) continue;
        if (found !== undefined && singular(found) !== singular(word)) return undefined;
        found = word;
      }
    return found;
  }
}

const lettersOf = (text: string): readonly string[] => text.split(/[^a-z]+/).filter((word) => word !== '');

const ends = (word: string): string => `${word.slice(0, 1)}*${word.slice(-3)}`;

function push(map: Map<string, string[]>, key: string, word: string): void {
  const words = map.get(key);
  if (words === undefined) map.set(key, [word]);
  else words.push(word);
}

/** Whether two words differ by one letter left out, added, changed, or swapped with its neighbor. */
export function isOneSlip(one: string, other: string): boolean {
  const longer = Math.max(one.length, other.length);
  if (longer - Math.min(one.length, other.length) > 1) return false;
  let head = 0;
  while (head < longer && one[head] === other[head]) head++;
  if (head === longer) return false;
  const [left, right] = [one.slice(head), other.slice(head)];
  if (left.length > right.length) return left.slice(1) === right;
  if (left.length < right.length) return right.slice(1) === left;
  if (left.slice(1) === right.slice(1)) return true;
  return `${left.slice(1, 2)}${left.slice(0, 1)}${left.slice(2)}` === right;
}

/**
 * Writes the list of words that are no slips of the hand: they are one slip from a word of our tables, and are words
 * themselves. English words are those of npm's `word-list` (MIT), one a line.
 */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import file from 'word-list';
import { packed, shortestSlip } from '../../note/text/packed-words.ts';
import { ownWords } from './own-words.ts';

/**
 * The source of the generated file. The text that is there is kept where nothing has changed that it follows from, since
 * a walk through a quarter of a million words takes a second.
 */
export function realWordsText(root: string, keys: Iterable<string>, current: string): string {
  const own = ownWords(keys);
  const { version } = JSON.parse(readFileSync(join(dirname(file), 'package.json'), 'utf8')) as {
    version: string;
  };
  const source = readFileSync(join(root, 'src', 'build', 'words', 'real-words.ts'), 'utf8');
  const digest = digestOf([version, source, ...rowsText(own)]);
  const head = `// Generated from the tables and word-list ${version}, ${digest}. Do not edit.\n`;
  if (current.startsWith(head)) return current;
  const dictionary = readFileSync(file, 'utf8').split('\n');
  return `${head}export const realWords = '${packed(realWords(dictionary, own))}';\n`;
}

type Own = ReadonlyMap<string, ReadonlySet<object>>;

function rowsText(own: Own): readonly string[] {
  const numbers = new Map<object, number>();
  for (const rows of own.values())
    for (const row of rows) if (!numbers.has(row)) numbers.set(row, numbers.size);
  return [...own].map(([word, rows]) => `${word} ${[...rows].map((row) => numbers.get(row)).join(' ')}`);
}

const digestOf = (parts: readonly string[]): string =>
  createHash('sha256').update(parts.join('\n')).digest('hex').slice(0, 16);

/** English words that are one slip from a word of the tables, and words of the tables that are so from another row's. */
export function realWords(dictionary: Iterable<string>, own: Own): readonly string[] {
  const near = new Near(own.keys());
  const found = new Set<string>();
  for (const word of dictionary) if (word.length >= shortestSlip && near.to(word).length > 0) found.add(word);
  for (const [word, rows] of own) {
    if (word.length < shortestSlip) continue;
    const isOfAnother = (other: string): boolean => ![...own.get(other)!].every((row) => rows.has(row));
    if (near.to(word).some(isOfAnother)) found.add(word);
  }
  // A plural is known by its word.
  return [...found].filter((word) => !word.endsWith('s') || !found.has(word.slice(0, -1))).sort();
}

/** Finds words that are one slip away, by what both become without one letter. */
class Near {
  private readonly byRest = new Map<string, string[]>();

  constructor(words: Iterable<string>) {
    for (const word of words) for (const rest of restsOf(word)) this.add(rest, word);
  }

  private add(rest: string, word: string): void {
    const words = this.byRest.get(rest);
    if (words === undefined) this.byRest.set(rest, [word]);
    else words.push(word);
  }

  to(typed: string): readonly string[] {
    const found = new Set<string>();
    for (const rest of restsOf(typed))
      for (const word of this.byRest.get(rest) ?? []) if (isOneSlip(typed, word)) found.add(word);
    return [...found];
  }
}

function restsOf(word: string): readonly string[] {
  const rests = [word];
  for (let at = 0; at < word.length; at++) rests.push(word.slice(0, at) + word.slice(at + 1));
  return rests;
}

/** Whether one letter left out, added, changed or swapped with its neighbor makes one word of the other. */
export function isOneSlip(a: string, b: string): boolean {
  let head = 0;
  while (head < a.length && head < b.length && a[head] === b[head]) head++;
  const [restA, restB] = [a.slice(head), b.slice(head)];
  if (restA.slice(1) === restB || restA === restB.slice(1)) return restA !== restB;
  if (restA.slice(1) === restB.slice(1)) return restA !== restB;
  const [first = '', second = ''] = restB;
  return second !== '' && restA === second + first + restB.slice(2);
}

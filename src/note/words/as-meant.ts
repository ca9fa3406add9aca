import type { WordRow } from '../../reference/types.ts';
import { nearest } from '../text/nearest.ts';
import { once } from '../text/once.ts';
import { wordsRead } from './word-table.ts';
import type { WordTable } from './word-table.ts';
import { singular } from '../text/singular.ts';

/** Longer texts mention what happened, and are read as they are. */
const longest = 200;

/** Shorter words of tables are near too many others. */
const shortest = 5;

/** The single words of a table. */
const vocabularyOf = once(({ rows }: WordTable<WordRow>): ReadonlySet<string> => {
  const words = rows.flatMap(wordsRead).flatMap((text) => text.toLowerCase().split(/[^a-z]+/));
  return new Set(words.filter((word) => word.length >= shortest));
});

/** A word of the tables that begins a longer one has to be so long, or it is there by chance. */
const shortestBegun = 8;

/** What makes another thing of the word before it. */
const changes = /^(?:free|less|like|based|s)$/;

/**
 * A text with each word that is surely a slip of a word of the tables put right: one letter from it and from no other,
 * and no word itself; cut in two, or run into the next word. The text itself where nothing is misspelled. For reading what
 * is surely meant, so that a danger stays one; that it is misspelled is reported elsewhere.
 */
export function asMeant(text: string, ...tables: readonly WordTable<WordRow>[]): string {
  if (text.length > longest) return text;
  const isKnown = (word: string): boolean => tables.some((table) => vocabularyOf(table).has(word));
  // A dash or a stop within a word of the tables is a slip too.
  const joined = text.replace(/(?<![a-z])[a-z]+(?:[-:;,.][a-z]+)+/gi, (words) => {
    const parts = words.toLowerCase().split(/[-:;,.]/);
    const whole = parts.join('');
    if (parts.some(isKnown)) return words;
    return isKnown(whole) || nearest(whole, wordsIn(tables), singular)?.sure === true ? whole : words;
  });
  return withoutCuts(joined, isKnown).replace(/[a-z]+/gi, (word) => {
    const typed = word.toLowerCase();
    if (typed.length < shortest || isKnown(typed)) return word;
    const near = nearest(typed, wordsIn(tables), singular);
    if (near?.sure === true) return near.word;
    return (near === undefined ? apart(typed, isKnown) : undefined) ?? word;
  });
}

/** "Lidoc aine": two words that are nothing here, and one of the tables together. */
function withoutCuts(text: string, isKnown: (word: string) => boolean): string {
  const words = text.split(' ');
  for (let at = words.length - 1; at > 0; at--) {
    const parts = [words[at - 1]!.toLowerCase(), words[at]!.toLowerCase()];
    const whole = parts.join('');
    if (whole.length >= shortestBegun && isKnown(whole) && !parts.some(isKnown))
      words.splice(at - 1, 2, whole);
  }
  return words.join(' ');
}

/** "Lidocainefor": a long word of the tables, and what was run into it. */
function apart(typed: string, isKnown: (word: string) => boolean): string | undefined {
  for (let to = typed.length - 1; to >= shortestBegun; to--) {
    const [word, rest] = [typed.slice(0, to), typed.slice(to)];
    if (isKnown(word)) return changes.test(rest) ? undefined : `${word} ${rest}`;
  }
  return undefined;
}

function* wordsIn(tables: readonly WordTable<WordRow>[]): Iterable<string> {
  for (const table of tables) yield* vocabularyOf(table);
}

/** The row whose word a whole text is surely a slip of. */
export function rowMeant<Row extends WordRow>(table: WordTable<Row>, text: string): Row | undefined {
  const near = nearest(text, table.wordsRead, (word) => table.find(word));
  return near?.sure === true ? table.find(near.word) : undefined;
}

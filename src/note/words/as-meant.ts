import type { WordRow } from '../../reference/types.ts';
import { nearest } from '../text/nearest.ts';
import { once } from '../text/once.ts';
import { wordsRead } from './word-table.ts';
import type { WordTable } from './word-table.ts';

/** Longer texts tell of what happened, and are read as they stand. */
const longest = 200;

/** Shorter words of tables lie near too many others. */
const shortest = 5;

/** The single words of a table. */
const vocabularyOf = once(({ rows }: WordTable<WordRow>): ReadonlySet<string> => {
  const words = rows.flatMap(wordsRead).flatMap((text) => text.toLowerCase().split(/[^a-z]+/));
  return new Set(words.filter((word) => word.length >= shortest));
});

const singular = (word: string): string => word.replace(/s$/, '');

/**
 * A text with each word that is surely a slip of a word of the tables put right: one letter from it and from no other,
 * and no word itself. The text itself where nothing is misspelt. For reading what is surely meant, so that a danger stays
 * one; that it is misspelt is reported elsewhere.
 */
export function asMeant(text: string, ...tables: readonly WordTable<WordRow>[]): string {
  if (text.length > longest) return text;
  const isKnown = (word: string): boolean => tables.some((table) => vocabularyOf(table).has(word));
  // A dash within a word of the tables is a slip too.
  const joined = text.replace(/(?<![a-z])[a-z]+(?:-[a-z]+)+/gi, (words) => {
    const parts = words.toLowerCase().split('-');
    const whole = parts.join('');
    if (parts.some(isKnown)) return words;
    return isKnown(whole) || nearest(whole, wordsIn(tables), singular)?.sure === true ? whole : words;
  });
  return joined.replace(/[a-z]+/gi, (word) => {
    const typed = word.toLowerCase();
    if (typed.length < shortest || isKnown(typed)) return word;
    const near = nearest(typed, wordsIn(tables), singular);
    return near?.sure === true ? near.word : word;
  });
}

function* wordsIn(tables: readonly WordTable<WordRow>[]): Iterable<string> {
  for (const table of tables) yield* vocabularyOf(table);
}

/** The row whose word a whole text is surely a slip of. */
export function rowMeant<Row extends WordRow>(table: WordTable<Row>, text: string): Row | undefined {
  const near = nearest(text, table.wordsRead, (word) => table.find(word));
  return near?.sure === true ? table.find(near.word) : undefined;
}

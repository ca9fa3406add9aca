import type { Leaf } from '../note/tree/leaf.ts';
import { phrasesOf } from '../note/words/phrases.ts';
import { plainWord, type WordTable } from '../note/words/word-table.ts';
import type { WordRow } from '../reference/types.ts';
import { said } from './from-note.ts';
import { listOfWords } from './list-of-words.ts';

/** What the note says, with the generic word for each trade name in it, and what was typed. */
export function saidGeneric(
  leaf: Leaf<unknown> | undefined,
  ...tables: readonly WordTable<WordRow>[]
): string | undefined {
  const text = said(leaf);
  if (text === undefined || leaf?.pending === true) return text;
  const names = new Map<number, readonly [to: number, generic: string]>();
  for (const table of tables)
    for (const { row, from, to } of phrasesOf(table).mentionsIn(text))
      if (!names.has(from) && isTradeName(row, text.slice(from, to))) names.set(from, [to, row.name]);
  if (names.size === 0) return text;
  let written = '';
  let end = 0;
  for (const [from, [to, generic]] of [...names].sort(([one], [other]) => one - other)) {
    if (from < end) continue;
    written += `${text.slice(end, from)}${generic} (typed: ${text.slice(from, to)})`;
    end = to;
  }
  return written + text.slice(end);
}

/** The same of a list, as a sentence lists it; undefined where there is none. */
export function saidGenericList(
  leaves: readonly Leaf<unknown>[] | undefined,
  ...tables: readonly WordTable<WordRow>[]
): string | undefined {
  const words = (leaves ?? []).flatMap((leaf) => saidGeneric(leaf, ...tables) ?? []);
  return words.length === 0 ? undefined : listOfWords(words);
}

const isTradeName = ({ tradeNames = [] }: WordRow, word: string): boolean =>
  tradeNames.some((name) => plainWord(name) === plainWord(word));

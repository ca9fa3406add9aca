import type { Leaf } from '../note/tree/leaf.ts';
import { phrasesOf } from '../note/words/phrases.ts';
import type { WordTable } from '../note/words/word-table.ts';
import type { WordRow } from '../reference/types.ts';

/** The rows that a free text names and does not deny. */
export const rowsSaid = <Row extends WordRow>(table: WordTable<Row>, text: string): readonly Row[] =>
  phrasesOf(table)
    .mentionsIn(text)
    .flatMap(({ row, standing }) => (standing === 'denied' ? [] : [row]));

/** The rows that a word of the trade names: itself, or what a longer text says without denying it. */
export function rowsIn<Row extends WordRow>(
  table: WordTable<Row>,
  leaf: Leaf<string> | undefined,
): readonly Row[] {
  const text = leaf?.value;
  if (text === undefined) return [];
  const row = table.find(text);
  return row === undefined ? rowsSaid(table, text) : [row];
}

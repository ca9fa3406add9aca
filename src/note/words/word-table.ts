import { comparable } from '../text/characters.ts';
import type { WordRow } from '../../reference/types.ts';

/** Rows by each of their words. Lookup ignores case and takes runs of spaces and hyphens for one space. */
export class WordTable<Row extends WordRow> {
  private made: ReadonlyMap<string, Row> | undefined;
  private written: ReadonlyMap<string, Row> | undefined;

  constructor(readonly rows: readonly Row[]) {}

  /** Made when first asked: most starts of the program need few of the tables. */
  private get byWord(): ReadonlyMap<string, Row> {
    return (this.made ??= wordsOf(this.rows, wordsRead));
  }

  /** @throws Error where two rows of the table claim the same word */
  find(text: string): Row | undefined {
    // Most words are typed as the table has them.
    const row = this.byWord.get(text);
    return row !== undefined || usual.test(text) ? row : this.byWord.get(plainWord(text));
  }

  /** Every word that may be written for a row, names and synonyms, in plain form. */
  get words(): Iterable<string> {
    this.written ??= wordsOf(this.rows, namesOf);
    return this.written.keys();
  }

  /** Every word that is read as a row, trade names among them, in plain form. */
  get wordsRead(): Iterable<string> {
    return this.byWord.keys();
  }
}

const namesOf = ({ name, synonyms }: WordRow): readonly string[] => [name, ...synonyms];

/** All words by which a row is read. */
export const wordsRead = (row: WordRow): readonly string[] =>
  row.tradeNames === undefined ? namesOf(row) : [...namesOf(row), ...row.tradeNames];

function wordsOf<Row extends WordRow>(
  rows: readonly Row[],
  wordsIn: (row: Row) => readonly string[],
): ReadonlyMap<string, Row> {
  const byWord = new Map<string, Row>();
  for (const row of rows) {
    for (const word of wordsIn(row)) {
      const key = plainWord(word);
      const other = byWord.get(key);
      if (other !== undefined && other !== row)
        throw new Error(`"${word}" stands for ${other.name} and for ${row.name}`);
      byWord.set(key, row);
    }
  }
  return byWord;
}

/** A word that is in its plain form already, as nearly all of the tables are. */
const usual = /^[a-z0-9]+(?: [a-z0-9]+)*$/;

const beyondAscii = /[\u0080-\uffff]/;

/** The form under which words are compared. */
export function plainWord(text: string): string {
  if (usual.test(text)) return text;
  return (beyondAscii.test(text) ? comparable(text) : text)
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, ' ');
}

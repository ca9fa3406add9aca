import type { WordRow } from '../../reference/types.ts';

/** Rows by each of their words. Lookup ignores case and takes runs of spaces and hyphens for one space. */
export class WordTable<Row extends WordRow> {
  private made: ReadonlyMap<string, Row> | undefined;

  constructor(readonly rows: readonly Row[]) {}

  /** Made when first asked: most starts of the program need few of the tables. */
  private get byWord(): ReadonlyMap<string, Row> {
    return (this.made ??= wordsOf(this.rows));
  }

  /** @throws Error where two rows of the table claim the same word */
  find(text: string): Row | undefined {
    // Most words are typed as the table has them.
    const row = this.byWord.get(text);
    return row !== undefined || usual.test(text) ? row : this.byWord.get(plainWord(text));
  }

  /** Every word that the table knows, names and synonyms, in plain form. */
  get words(): Iterable<string> {
    return this.byWord.keys();
  }
}

function wordsOf<Row extends WordRow>(rows: readonly Row[]): ReadonlyMap<string, Row> {
  const byWord = new Map<string, Row>();
  for (const row of rows) {
    for (const word of [row.name, ...row.synonyms]) {
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

/** The form under which words are compared. */
export function plainWord(text: string): string {
  if (usual.test(text)) return text;
  return text
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, ' ');
}

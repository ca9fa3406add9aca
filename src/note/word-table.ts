import type { WordRow } from '../reference/types.ts';

/** Rows by each of their words. Lookup ignores case and takes runs of spaces and hyphens for one space. */
export class WordTable<Row extends WordRow> {
  private readonly byWord = new Map<string, Row>();

  /** @throws Error where two rows claim the same word */
  constructor(readonly rows: readonly Row[]) {
    for (const row of rows) {
      for (const word of [row.name, ...row.synonyms]) {
        const key = plainWord(word);
        const other = this.byWord.get(key);
        if (other !== undefined && other !== row)
          throw new Error(`"${word}" stands for ${other.name} and for ${row.name}`);
        this.byWord.set(key, row);
      }
    }
  }

  find(text: string): Row | undefined {
    // Most words are typed as the table has them.
    return this.byWord.get(text) ?? this.byWord.get(plainWord(text));
  }

  /** Every word that the table knows, names and synonyms, in plain form. */
  get words(): Iterable<string> {
    return this.byWord.keys();
  }
}

/** The form under which words are compared. */
export function plainWord(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, ' ');
}

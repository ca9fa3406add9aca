/**
 * How sure a value is: `Q` read in the source named, `Q2` read in a secondary page that names the source, `M` from
 * memory. `common` is common practice without a source, `format` is a rule of Wheal's own note format.
 * The mark bounds how loud a check may be.
 */
export type Mark = 'Q' | 'Q2' | 'M' | 'common' | 'format';

export interface Sourced {
  /** Key of the table of sources. */
  readonly source: string;
  readonly mark: Mark;
}

/** A word of the trade and the other words for the same thing. */
export interface WordRow {
  readonly name: string;
  readonly synonyms: readonly string[];
  /** Names of products by which it is read, and never written. */
  readonly tradeNames?: readonly string[];
}

/**
 * How sure a value is: `Q` read in the source named, `Q2` read in a secondary page that names the source, `M` from
 * memory. `common` is common practice without a source, `format` is a rule of Wheal's own note format.
 * The mark bounds how loud a check may be (see `loudest`).
 */
export type Mark = 'Q' | 'Q2' | 'M' | 'common' | 'format';

export interface Sourced {
  /** Key of the table of sources. */
  readonly source: string;
  readonly mark: Mark;
}

/** A word of the trade and the other words for the same thing, all in lower case but for names that need capitals. */
export interface WordRow {
  readonly name: string;
  readonly synonyms: readonly string[];
}

export type AgentClass = 'amide' | 'ester' | 'none';

export interface AgentRow extends WordRow {
  readonly class: AgentClass;
}

/** For whom a limit holds. Ages in months, the upper bound not included. */
export interface Population {
  readonly text: string;
  readonly fromMonths?: number;
  readonly belowMonths?: number;
}

/** One published limit: of one authority, for one agent, with or without epinephrine, for one population. */
export interface LimitRow extends Sourced {
  readonly agent: string;
  readonly epinephrine: boolean;
  readonly authority: string;
  readonly population: Population;
  readonly mgPerKg?: number;
  readonly capMg?: number;
  /** Date of the stored copy that was read, YYYY or YYYY-MM-DD. */
  readonly asOf: string;
}

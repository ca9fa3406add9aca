import type { Mark } from '../../../reference/types.ts';

/** How far the wording has been looked at by people who may vouch for it. */
export type Review = 'draft' | 'reviewed';

/** One sentence of the handout, in each language; `{name}` means what is filled in. */
export interface Sentence {
  readonly id: string;
  readonly en: string;
  readonly es: string;
  /** Key of the table of sources, for the fact in it. */
  readonly source: string;
  readonly mark: Mark;
  readonly review: Review;
}

/** A row of a table of sentences. */
export type Row = readonly [id: string, en: string, es: string];

/** Sentences with one source. None has been reviewed yet by a clinician or a certified translator. */
export const sentences = (source: string, mark: Mark, rows: readonly Row[]): readonly Sentence[] =>
  rows.map(([id, en, es]) => ({ id, en, es, source, mark, review: 'draft' }));

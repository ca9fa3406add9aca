import type { Range } from '../note/tree.ts';
import type { Analysis } from './analysis.ts';

/** A line of words above a part of the note; pressing it does something where `command` is set. */
export interface Lens extends Range {
  readonly title: string;
  /** What pressing does, by a plain id that the editor maps to a command; undefined where the words only tell. */
  readonly command: 'summary' | 'handout' | 'dose' | 'findings' | undefined;
  /** Which procedure it stands over, counted from 0; undefined over the visit. */
  readonly procedure: number | undefined;
}

/** Lenses over the visit and over each procedure, in the order of the text. */
export function lensesOf(_analysis: Analysis): readonly Lens[] {
  return [];
}

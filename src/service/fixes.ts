import type { Finding, Fix, TextEdit } from '../note/finding.ts';
import type { Analysis } from './analysis.ts';

/** A fix with the finding that it mends. Its edits are made for `analysis.text` and fit no other text. */
export interface OfferedFix extends Fix {
  readonly code: string;
  readonly finding: Finding;
  /** `accept` says that the finding is right and considered; `??` is left where a person must write. */
  readonly does: 'mend' | 'fill' | 'accept';
}

/**
 * Fixes for the findings that touch a range, the sure ones first. Record fixes (titled "correct the record: …") are
 * left out of a signed note.
 */
export function fixesAt(_analysis: Analysis, _start: number, _end: number): readonly OfferedFix[] {
  return [];
}

/** The edits of all sure spelling fixes that do not overlap, in the order of the text. */
export function fixAll(_analysis: Analysis): readonly TextEdit[] {
  return [];
}

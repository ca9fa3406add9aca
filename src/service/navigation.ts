import type { Range } from '../note/tree.ts';
import type { Analysis } from './analysis.ts';

/** Words of the note that lead to the page of a check. */
export interface Link extends Range {
  /** The check whose page is meant: `dose/near-limit`; its page is `<code>.md` where the pages are. */
  readonly code: string;
}

/** From words of the note to the places that they mean. */
export interface Definition {
  readonly origin: Range;
  readonly targets: readonly Range[];
}

/** The codes of accepted findings, each to its page. */
export function linksOf(_analysis: Analysis): readonly Link[] {
  return [];
}

/** From an accepted code to its finding, from `same-as` to the label, from an event's procedure to the procedure. */
export function definitionAt(_analysis: Analysis, _offset: number): Definition | undefined {
  return undefined;
}

/** Ranges that a growing selection takes in turn, the innermost first, each inside of the next. */
export function selectionsAt(_analysis: Analysis, _offset: number): readonly Range[] {
  return [];
}

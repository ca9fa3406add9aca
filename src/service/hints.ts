import type { Analysis } from './analysis.ts';

/** A few words that are shown behind a value and are not part of the text. */
export interface Hint {
  readonly offset: number;
  readonly text: string;
  /** Where the words come from. Plain text. */
  readonly tooltip: string;
}

/** What follows from the values between two offsets: mg and share of the limit, epinephrine, weekdays. */
export function hintsIn(_analysis: Analysis, _start: number, _end: number): readonly Hint[] {
  return [];
}

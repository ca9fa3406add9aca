import type { Sourced } from '../../reference/types.ts';
import type { Range } from './tree.ts';

export type Severity = 'error' | 'warning' | 'information' | 'hint';

export type Args = Readonly<Record<string, string | number>>;

/** Another place that belongs to a finding, such as the first of two equal labels. */
export interface Related extends Range {
  /** Which of the check's messages says what is there. */
  readonly form: string;
  readonly args: Args;
}

/** What a check reports, and a reader with the code of the check that it is for: `checks/run.ts` makes a finding of it. */
export interface Report {
  readonly at: Range;
  /** Which of the check's messages applies; `main` where none is named. */
  readonly form?: string;
  /** Where this case is more or less grave than the check's own severity. */
  readonly severity?: Severity;
  readonly args?: Args;
  /** The row of the tables that it rests on: it is no louder than that row's mark allows. */
  readonly rests?: Sourced | undefined;
  readonly related?: readonly Related[];
  /** What the fix needs, so that it need not analyse again. */
  readonly data?: unknown;
}

/** A report of a reader, with the check that gives it severity and words. */
export interface Problem extends Report {
  readonly code: string;
}

/**
 * A report completed by its check, as plain data. Its words come from the check's template, its
 * line and column from whoever shows it, its fix from the check on request.
 */
export interface Finding extends Range {
  /** `family/what`. */
  readonly code: string;
  readonly severity: Severity;
  /** Which of the check's messages applies. */
  readonly form: string;
  readonly args: Args;
  readonly related: readonly Related[];
  /** The row of the tables that it rests on, where the check named it. */
  readonly rests?: Sourced;
  /** What the fix needs, so that it need not analyse again. */
  readonly data?: unknown;
  /** The part of the note that something is missing from: while it is being written nobody is asked for the rest. */
  readonly missingFrom?: Range;
  /** Who accepted it and why, where the note says so. */
  readonly accepted?: { readonly reason: string; readonly by: string };
}

/** A change of the text: the characters from `start` to `end` become `text`. */
export interface TextEdit extends Range {
  readonly text: string;
}

export interface Fix {
  readonly title: string;
  /** A spelling fix changes how a thing is written; a record fix changes what is said to have been done. */
  readonly kind: 'spelling' | 'record';
  /** Whether it is the one right answer; only sure spelling fixes join "fix all". */
  readonly sure: boolean;
  readonly edits: readonly TextEdit[];
}

import type { Checked } from '../judge.ts';

/** How a report looks where people read it. */
export interface Look {
  readonly color: boolean;
  /** Without the count at the end. */
  readonly quiet: boolean;
  /** The address below which the pages of the checks are, with a slash at its end. */
  readonly pages?: string | undefined;
}

/** A form of report, written file by file so that many files need no more memory than one. */
export interface Report {
  readonly begin: () => string;
  readonly file: (checked: Checked) => string;
  readonly end: () => string;
}

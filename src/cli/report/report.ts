import type { Checked } from '../judge.ts';

/** A form of report, written file by file so that many files need no more memory than one. */
export interface Report {
  readonly begin: () => string;
  readonly file: (checked: Checked) => string;
  readonly end: () => string;
}

import type { Severity } from '../../note/tree/finding.ts';
import type { Checked } from '../notes/judge.ts';

/** How a report looks where people read it. */
export interface Look {
  readonly color: boolean;
  /** Without the count at the end. */
  readonly quiet: boolean;
  /** The address below which the pages of the checks are, with a slash at its end. */
  readonly pages?: string | undefined;
}

/** What is reported of a file. */
export interface Entry {
  readonly text: string;
  /** Whether there are errors among the findings. */
  readonly errors: boolean;
  /** What is counted at the end. */
  readonly tally?: Tally;
}

/** What of a file is counted. */
export interface Tally extends Pick<Checked, 'kind' | 'path'> {
  readonly severities: readonly Severity[];
  readonly accepted: number;
  /** Null where no note could be read. */
  readonly dose: { readonly judged: boolean; readonly over: boolean } | null;
}

/** Whether a file has errors. */
export const hasErrors = ({ findings }: Checked): boolean =>
  findings.some(({ severity }) => severity === 'error');

/** A form of report, written file by file so that many files need no more memory than one. */
export interface Report {
  readonly begin: () => string;
  /** What is reported of a file: plain data, in whatever thread it was checked. */
  readonly entry: (checked: Checked) => Entry;
  /** The text of an entry, after those before it. */
  readonly add: (entry: Entry) => string;
  readonly end: () => string;
}

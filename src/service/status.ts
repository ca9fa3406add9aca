import type { Severity } from '../note/finding.ts';
import type { Analysis } from './analysis.ts';

/** The visit in a few words. */
export interface Status {
  /** What the status item shows: `3.1% of limit · 2 to look at`. */
  readonly text: string;
  /** A sentence more. */
  readonly detail: string;
  /** The same in whole words, for a screen reader. */
  readonly spoken: string;
  readonly severity: 'error' | 'warning' | 'none';
  readonly counts: Readonly<Record<Severity, number>>;
  /** Share of the limit; null where there is no dose or it can't be judged. */
  readonly fraction: number | null;
  /** Version of the format as typed; undefined where none is typed. */
  readonly format: string | undefined;
  readonly judged: boolean;
  /** Why the dose, or the whole note, was not judged. */
  readonly why: string | undefined;
}

/** How the visit stands: share of the limit, open findings, version of the format. */
export function statusOf({ judgement }: Analysis): Status {
  const counts = { error: 0, warning: 0, information: 0, hint: 0 };
  for (const { severity } of judgement.findings) counts[severity] += 1;
  return {
    text: '',
    detail: '',
    spoken: '',
    severity: 'none',
    counts,
    fraction: null,
    format: undefined,
    judged: false,
    why: undefined,
  };
}

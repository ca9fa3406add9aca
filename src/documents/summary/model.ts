import type { Severity } from '../../note/tree/finding.ts';

/** One thing that the note says, as a phrase that can stand in a paragraph: `Site: left upper back`. */
export interface Fact {
  readonly topic: string;
  readonly text: string;
}

/** A finding as a summary names it. */
export interface Remark {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  /** Row of the note, from 1. */
  readonly row: number;
  readonly accepted?: { readonly reason: string; readonly by: string };
}

/** What a chart needs to know of one visit, as plain data: only what the note says, and what follows from it. */
export interface SummaryModel {
  readonly wheal: 1;
  readonly readable: true;
  readonly header: readonly Fact[];
  /** What must be read first: errors of the note. */
  readonly alerts: readonly string[];
  readonly procedures: readonly { readonly title: string; readonly facts: readonly Fact[] }[];
  /** Dose of the whole visit, with the limit and its source. */
  readonly dose: readonly string[];
  /** Events and additions after the visit. */
  readonly afterwards: readonly string[];
  /** What is due, outstanding or done since. */
  readonly next: readonly string[];
  readonly accepted: readonly Remark[];
  readonly open: readonly Remark[];
  /** The practice file that was used, and each safety limit that it loosens. */
  readonly practice: readonly string[];
  readonly caution: string;
}

/** A summary of a note that can't be read. */
export interface NoSummary {
  readonly wheal: 1;
  readonly readable: false;
  readonly why: string;
}

/** A heading with the rows below it, as the renderers write them. */
export interface Section {
  readonly heading: string;
  readonly rows: readonly string[];
}

export const title = 'Procedure note';

/** What comes behind the paragraphs of the procedures; sections with nothing to say are left out. */
export function sectionsOf(model: SummaryModel): readonly Section[] {
  return [
    { heading: 'Local anesthetic of the visit', rows: model.dose },
    { heading: 'After the visit', rows: model.afterwards },
    { heading: 'What happens next', rows: model.next },
    { heading: 'Accepted findings', rows: model.accepted.map(rowOf) },
    { heading: 'Open findings', rows: model.open.map(rowOf) },
    { heading: 'Practice', rows: model.practice },
  ].filter(({ rows }) => rows.length > 0);
}

/** The facts of a procedure as one paragraph. */
export function paragraph(facts: readonly Fact[]): string {
  return facts.map(({ text }) => (/[.!?]$/.test(text) ? text : `${text}.`)).join(' ');
}

function rowOf({ code, severity, message, row, accepted }: Remark): string {
  const why =
    accepted === undefined ? '' : ` Accepted by ${accepted.by || 'nobody named'}: ${accepted.reason}`;
  return `${severity}, row ${row}: ${message} [${code}]${why}`;
}

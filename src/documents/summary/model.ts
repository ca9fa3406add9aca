import type { Severity } from '../../note/tree/finding.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Picture } from '../pictures/picture.ts';
import { sentence } from '../from-note.ts';

/** One thing that the note says, as a phrase that can be in a paragraph: `Site: left upper back`. */
export interface Fact {
  readonly topic: string;
  readonly text: string;
}

/** A finding as a summary names it. */
export interface Remark {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  /** What it says, in words that a chart can bear. */
  readonly fact: string;
  /** Row of the note, from 1. */
  readonly row: number;
  readonly accepted?: { readonly reason: string; readonly by: string };
}

/** What a chart needs to know of one visit, as plain data: only what the note says, and what follows from it. */
export interface SummaryModel {
  readonly wheal: 1;
  readonly readable: true;
  readonly header: readonly Fact[];
  /** The day as of which it is written; undefined where nobody said. */
  readonly asOf: string | undefined;
  /** What must be read first: errors of the note that nobody has settled. */
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
  /** What is open, each as a question. */
  readonly questions: readonly string[];
  /** The practice file that was used, and each safety limit that it loosens. */
  readonly practice: readonly string[];
  readonly caution: string;
  /** Pictures of it, drawn when they are asked for; no part of the data. */
  readonly pictures: () => SummaryPictures;
}

/** What can be seen of a visit; each undefined where there is nothing to draw. */
export interface SummaryPictures {
  readonly place: Picture | undefined;
  readonly dose: Picture | undefined;
  readonly time: Picture | undefined;
}

/** What a summary is written with. */
export interface SummaryContext {
  readonly tables: Tables;
  /** The practice file that was used. */
  readonly practice: string | undefined;
  /** The day as of which it is written. */
  readonly today: IsoDate | undefined;
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
  /** The picture that belongs to it. */
  readonly picture?: keyof SummaryPictures;
}

export const title = 'Procedure note';

/** What comes after the paragraphs of the procedures; sections with nothing to say are left out. */
export function sectionsOf(model: SummaryModel): readonly Section[] {
  const sections: readonly Section[] = [
    { heading: 'Local anesthetic of the visit', rows: model.dose, picture: 'dose' },
    { heading: 'After the visit', rows: model.afterwards },
    { heading: 'What happens next', rows: model.next, picture: 'time' },
    { heading: 'Accepted, with the reason', rows: model.accepted.map(acceptedRow) },
    { heading: 'Open questions', rows: model.questions },
    { heading: 'Practice', rows: model.practice },
  ];
  return sections.filter(({ rows }) => rows.length > 0);
}

/** The facts of a procedure as one paragraph. */
export function paragraph(facts: readonly Fact[]): string {
  return facts.map(({ text }) => sentence(text)).join(' ');
}

function acceptedRow({ fact, accepted }: Remark): string {
  return accepted === undefined
    ? fact
    : `${fact} Accepted by ${accepted.by || 'nobody named'}: ${sentence(accepted.reason)}`;
}

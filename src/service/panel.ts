import { caution } from '../documents/caution.ts';
import { handoutOf, type Handout, type Language } from '../documents/handout/index.ts';
import { escapedHtml } from '../documents/html.ts';
import { plain } from '../documents/one-line.ts';
import { dosePicture } from '../documents/pictures/dose.ts';
import { tableHtml, type Picture } from '../documents/pictures/picture.ts';
import { placePicture } from '../documents/pictures/place.ts';
import { timePicture } from '../documents/pictures/time.ts';
import { summaryOf } from '../documents/summary/index.ts';
import { paragraph, sectionsOf, type SummaryModel } from '../documents/summary/model.ts';
import { planOf } from '../followup/schedule.ts';
import type { Severity } from '../note/tree/finding.ts';
import type { Analysis } from './analysis/analysis.ts';
import type { Diagnostic } from './diagnostics/diagnostics.ts';

/** What is shown below the pictures, or in their place: the chart summary, or what the patient takes home. */
export type PanelView = 'summary' | 'handout';

/** A part of the panel beside a note, as HTML that holds no script, no style and no address. */
export interface PanelSection {
  readonly id: 'findings' | 'dose' | 'place' | 'time' | 'summary' | 'handout';
  readonly html: string;
}

export interface PanelOptions {
  readonly view: PanelView;
  /** Of the handout; undefined for that of the note or the practice. */
  readonly language: Language | undefined;
  /** The practice file that the note is judged by. */
  readonly practice: string | undefined;
}

/**
 * What is shown beside a note: its findings, its pictures, and the chart summary; or the handout alone. What can be
 * activated has `data-start`, an offset in the note, or `data-line` and `data-character`, from 0.
 * @param findings as the editor shows them now, which may be later than the note
 */
export function panelOf(
  analysis: Analysis,
  findings: readonly Diagnostic[],
  options: PanelOptions,
): readonly PanelSection[] {
  const own =
    options.view === 'handout'
      ? [section('handout', handoutHtml(analysis, options))]
      : [...picturesOf(analysis), section('summary', summaryHtml(analysis, options))];
  return [section('findings', findingsHtml(findings)), ...own];
}

/** The procedure, counted from 0, in which an offset of a note is; undefined where it is in none. */
export function procedureAt({ note }: Analysis, offset: number): number | undefined {
  const at = (note?.procedures ?? []).findIndex(({ start, end }) => offset >= start && offset <= end);
  return at < 0 ? undefined : at;
}

const section = (id: PanelSection['id'], html: string): PanelSection => ({ id, html });

const order: readonly Severity[] = ['error', 'warning', 'information', 'hint'];

function findingsHtml(findings: readonly Diagnostic[]): string {
  const sorted = [...findings].sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
  const rows = sorted.map(({ severity, message, range: { start } }) =>
    element(
      'li',
      `<button type="button" class="${severity}" data-line="${start.line}" data-character="${start.character}">${element('b', `${severityWords[severity]}, line ${start.line + 1}:`)} ${escapedHtml(message)}</button>`,
    ),
  );
  return `${heading('Open findings')}${rows.length === 0 ? paragraphs(['None.']) : element('ul', rows.join(''))}`;
}

const severityWords: Readonly<Record<Severity, string>> = {
  error: 'Error',
  warning: 'Warning',
  information: 'Information',
  hint: 'Hint',
};

function picturesOf({ note, judgement, context }: Analysis): readonly PanelSection[] {
  if (note === null) return [];
  const { tables, today } = context;
  const linked = { linked: true };
  const { dose } = judgement;
  const time = { visit: note.visit?.value?.date, plan: planOf(note, tables), today };
  const pictures: readonly (readonly ['dose' | 'place' | 'time', Picture | undefined])[] = [
    ['dose', dose === null ? undefined : dosePicture(dose, tables, { id: 'dose', ...linked })],
    ['place', placePicture(note, tables, { id: 'place', intimate: true, ...linked })],
    ['time', timePicture(time, { id: 'time', ...linked })],
  ];
  return pictures.flatMap(([id, picture]) =>
    picture === undefined ? [] : [section(id, pictureHtml(picture))],
  );
}

/** A picture below its heading; its numbers are a table that can be opened. */
const pictureHtml = ({ title, svg, notDrawn, table }: Picture): string =>
  [
    heading(title),
    svg,
    notDrawn.length === 0 ? '' : list(notDrawn),
    `<details>${element('summary', 'The same in numbers')}${tableHtml(table, title)}</details>`,
  ].join('');

function summaryHtml({ source, judgement, context }: Analysis, { practice }: PanelOptions): string {
  if (source === null) return '';
  const model = summaryOf(source, judgement, { tables: context.tables, practice, today: context.today });
  const body = model.readable ? bodyOf(model) : paragraphs([`There is no summary: ${model.why}`]);
  return heading('Chart summary') + body;
}

const bodyOf = (model: SummaryModel): string =>
  [
    list(model.header.map(({ text }) => text)),
    ...model.procedures.map(
      ({ title, facts }, at) =>
        `<div data-procedure="${at}">${element('h3', escapedHtml(plain(title)))}${paragraphs([paragraph(facts)])}</div>`,
    ),
    ...sectionsOf(model).map(({ heading: title, rows }) => element('h3', escapedHtml(title)) + list(rows)),
    paragraphs([model.caution]),
  ].join('');

function handoutHtml({ source, judgement, context }: Analysis, { language }: PanelOptions): string {
  if (source === null) return '';
  const handout = handoutOf(source, judgement, { tables: context.tables, language });
  return heading('Patient handout') + (handout.readable ? pageOf(handout) : noHandout(handout.why));
}

const noHandout = (why: string): string => paragraphs([`There is no handout: ${why}`]);

const pageOf = ({ language, title, practice, header, sections, foot, remarks }: Handout): string =>
  [
    remarks.length === 0 ? '' : paragraphs([`Before it is handed out: ${remarks.join('; ')}.`]),
    `<div lang="${language}">`,
    practice === '' ? '' : paragraphs([practice]),
    element('h3', escapedHtml(plain(title))),
    paragraphs(header),
    ...sections.map(({ heading: name, items }) => element('h4', escapedHtml(plain(name))) + list(items)),
    paragraphs(foot),
    '</div>',
    paragraphs([caution]),
  ].join('');

const element = (name: string, html: string): string => `<${name}>${html}</${name}>`;

const heading = (text: string): string => element('h2', escapedHtml(text));

const paragraphs = (texts: readonly string[]): string =>
  texts.map((text) => element('p', escapedHtml(plain(text)))).join('');

const list = (texts: readonly string[]): string =>
  element('ul', texts.map((text) => element('li', escapedHtml(plain(text)))).join(''));

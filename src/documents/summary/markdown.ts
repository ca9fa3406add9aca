import { paragraph, sectionsOf, title, type SummaryModel } from './model.ts';

/** The summary as Markdown. Nothing in the note can become markup. */
export function summaryMarkdown(model: SummaryModel): string {
  const blocks = [
    [`# ${title}`],
    bullets(model.header.map(({ text }) => text)),
    ...model.alerts.map((alert) => [`> **${escaped(alert)}**`]),
    ...model.procedures.flatMap(({ title: name, facts }) => [
      [`## ${escaped(name)}`],
      [escaped(paragraph(facts))],
    ]),
    ...sectionsOf(model).flatMap(({ heading, rows }) => [[`## ${heading}`], bullets(rows)]),
    [`_${escaped(model.caution)}_`],
  ];
  return `${blocks.map((block) => block.join('\n')).join('\n\n')}\n`;
}

const bullets = (rows: readonly string[]): readonly string[] => rows.map((row) => `- ${escaped(row)}`);

/**
 * Marks of Markdown, links that build themselves, and what would open a list or a quote at the start of a row. What each
 * sign needs around it is after the signs, since looking back is dear where no sign is.
 */
const marks =
  /[\\`*_{}[\]<>#|~&@:.)+=-](?:(?<=[\\`*_{}[\]<>#|~&@])|(?<=:)(?=\/\/)|(?<=www\.)|(?<=^[-+=])(?=\s|[-+=])|(?<=^\d{1,9}[.)])(?=\s|$))/gi;

/** A text in which no sign is markup. It must be on one row. */
export function escaped(text: string): string {
  return text.replace(marks, (mark) => `\\${mark}`);
}

import { paragraph, sectionsOf, title, type SummaryModel } from './model.ts';

/** The summary as plain text, to be pasted into a chart: one row for each paragraph, no wrapping. */
export function summaryText(model: SummaryModel): string {
  const blocks = [
    [title.toUpperCase(), ...model.header.map(({ text }) => text)],
    ...model.alerts.map((alert) => [`!! ${alert}`]),
    ...model.procedures.map(({ title: name, facts }) => [name, paragraph(facts)]),
    ...sectionsOf(model).map(({ heading, rows }) => [heading, ...rows.map((row) => `- ${row}`)]),
    [model.caution],
  ];
  return `${blocks.map((block) => block.join('\n')).join('\n\n')}\n`;
}

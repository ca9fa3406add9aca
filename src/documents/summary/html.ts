import { escapedHtml, htmlPage } from '../html.ts';
import { paragraph, sectionsOf, title, type SummaryModel } from './model.ts';

/** The summary as a page that stands alone. */
export function summaryHtml(model: SummaryModel): string {
  const body = [
    tag('h1', title),
    list(model.header.map(({ text }) => text)),
    ...model.alerts.map((alert) => `<p class="alert">${escapedHtml(alert)}</p>`),
    ...model.procedures.flatMap(({ title: name, facts }) => [tag('h2', name), tag('p', paragraph(facts))]),
    ...sectionsOf(model).flatMap(({ heading, rows }) => [tag('h2', heading), list(rows)]),
    tag('footer', model.caution),
  ];
  return htmlPage(title, 'en', body.join('\n'));
}

const tag = (name: string, text: string): string => `<${name}>${escapedHtml(text)}</${name}>`;

const list = (rows: readonly string[]): string =>
  `<ul>\n${rows.map((row) => tag('li', row)).join('\n')}\n</ul>`;

import { escapedHtml, htmlPage } from '../html.ts';
import type { Format } from '../format.ts';
import { plain } from '../one-line.ts';
import type { Request, RequestRow, Requisition } from './requisition.ts';

const title = 'Laboratory request';
const blank = '____________________';
const missing = 'not in the note';
const check =
  'Compare request and container with the patient present: two identifiers, site and specimen have to be the same on both. The label goes on the container, not on its lid.';

/** Requests as text, with the container labels behind them. */
function requisitionText({ practice, requests }: Requisition): string {
  const from = practice.length === 0 ? '' : `${plain(practice.join(', '))}\n`;
  const parts = requests.map(
    ({ heading, rows }) => `${title}: ${heading}\n${rows.map((row) => rowText(row, 26)).join('')}`,
  );
  const labels = requests.map(({ label }) => label.map((row) => rowText(row, 16)).join(''));
  return `${from}${parts.join('\n')}\nContainer labels\n\n${labels.join('\n')}\n${check}\n`;
}

function rowText({ name, text, hint = missing }: RequestRow, width: number): string {
  const words = text === undefined ? `${blank} (${hint})` : plain(text);
  return `  ${`${name}:`.padEnd(width)} ${words}\n`;
}

/** Requests as a page for printing, each on a sheet of its own, and the labels at the end. */
function requisitionHtml({ practice, requests }: Requisition): string {
  const from = practice.length === 0 ? '' : `<p>${escapedHtml(plain(practice.join(', ')))}</p>\n`;
  const sections = requests.map((request) => sectionHtml(request, from));
  const labels = requests.map(
    ({ label }) => `<table border="1" cellpadding="4">\n${label.map(rowHtml).join('\n')}\n</table>`,
  );
  const body = `${sections.join('\n')}
<section>
<h1>Container labels</h1>
${labels.join('\n<p></p>\n')}
</section>
<footer>${check}</footer>`;
  return htmlPage(title, 'en', body);
}

const sectionHtml = ({ heading, rows }: Request, from: string): string => `<section style="break-after: page">
<h1>${title}: ${escapedHtml(heading)}</h1>
${from}<table>
${rows.map(rowHtml).join('\n')}
</table>
</section>`;

function rowHtml({ name, text, hint = missing }: RequestRow): string {
  const words = text === undefined ? `${blank} <small>(${hint})</small>` : escapedHtml(plain(text));
  return `<tr><th align="left">${escapedHtml(name)}</th><td>${words}</td></tr>`;
}

/** The forms of requests, the usual one first. */
export const requisitionFormats: Readonly<Record<'text' | 'html', Format<[requisition: Requisition]>>> = {
  text: { write: requisitionText, ending: 'txt', title: 'Text' },
  html: { write: requisitionHtml, ending: 'html', title: 'Page for printing' },
};

import { escapedHtml, htmlPage, tag } from '../html.ts';
import { figureHtml } from '../pictures/picture.ts';
import type { Format } from '../format.ts';
import { plain } from '../one-line.ts';
import type { Request, RequestRow, Requisition } from './requisition.ts';

const title = 'Laboratory request';
const blank = '____________________';
const missing = 'not in the note';
const check =
  'Compare request and container with the patient present: two identifiers, site and specimen have to be the same on both. The label goes on the container, not on its lid.';

/** Requests as text, with the container labels after them. */
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

/** A label of 30 × 70 mm; it grows where its words are long, since nothing of it may be cut off. */
const style = `.label { box-sizing: border-box; width: 70mm; min-height: 30mm; padding: 1.5mm 2mm; margin: 0 0 4mm; border: 1px solid #000; font-size: 7.5pt; line-height: 1.25; break-inside: avoid; display: grid; grid-template-columns: 1fr 1fr; gap: 0 2mm; grid-auto-flow: dense; align-content: start; }
.label h3, .label p { font-size: 1em; margin: 0; } .label .wide { grid-column: 1 / -1; }
.blank { border-bottom: 1px solid #000; } .blank small { color: #444; }
@media print { body { line-height: 1.25; } svg { max-height: 68mm; } }`;

/** What may be long, and takes the whole width of a label. */
const wide: ReadonlySet<string> = new Set(['Patient name', 'Site']);

/** Requests as a page for printing, each on a sheet of its own, and the labels on one of theirs. */
function requisitionHtml({ practice, requests, foot }: Requisition): string {
  const from = practice.length === 0 ? [] : [tag('p', plain(practice.join(', ')))];
  const body = [
    '<main>',
    tag('h1', title),
    ...from,
    ...requests.map(sectionHtml),
    `<section>\n<h2>Container labels</h2>\n<p>${check}</p>`,
    ...requests.map(labelHtml),
    '</section>',
    '</main>',
  ];
  return htmlPage(title, 'en', body.join('\n'), { foot, style });
}

function sectionHtml({ heading, rows, place }: Request): string {
  const picture = place();
  return `<section class="sheet">
${tag('h2', heading)}
<table>
<tbody>
${rows.map(rowHtml).join('\n')}
</tbody>
</table>
${picture === undefined ? '' : figureHtml(picture)}
</section>`;
}

const rowHtml = (row: RequestRow): string =>
  `<tr><th scope="row">${escapedHtml(row.name)}</th><td>${wordsHtml(row)}</td></tr>`;

const labelHtml = ({ heading, label }: Request): string =>
  `<div class="label">\n<h3 class="wide">${escapedHtml(heading)}</h3>\n${label.map(labelRow).join('\n')}\n</div>`;

const labelRow = (row: RequestRow): string =>
  `<p${wide.has(row.name) ? ' class="wide"' : ''}><b>${escapedHtml(row.name)}:</b> ${wordsHtml(row, '')}</p>`;

function wordsHtml({ text, hint = missing }: RequestRow, why = `<small>(${hint})</small>`): string {
  if (text !== undefined) return escapedHtml(plain(text));
  return `<span class="blank">${'&nbsp;'.repeat(24)}${why}</span>`;
}

/** The forms of requests, the usual one first. */
export const requisitionFormats: Readonly<Record<'text' | 'html', Format<[requisition: Requisition]>>> = {
  text: { write: requisitionText, ending: 'txt', title: 'Text' },
  html: { write: requisitionHtml, ending: 'html', title: 'Page for printing' },
};

import { plain } from '../one-line.ts';
import { escapedHtml, listHtml, tag } from '../html.ts';
import { element, typeSize } from '../svg.ts';

/** The numbers of a picture. */
export interface PictureTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A picture as a document or a panel shows it: nothing in it is said by color alone, or by the drawing alone. */
export interface Picture {
  readonly title: string;
  /** How it is to be read, where that is not plain. */
  readonly hint?: string;
  /** What it shows, in sentences. */
  readonly alternative: string;
  /** Empty where nothing can be drawn; else a whole `svg` element in `currentColor`, on the color of the variable `--wheal-paper` or that of the page. */
  readonly svg: string;
  readonly table: PictureTable;
  /** What belongs to it and could not be drawn, a sentence each. */
  readonly notDrawn: readonly string[];
}

/** How a picture is written. */
export interface PictureOptions {
  /** Begins the ids of its title and description; each picture of a page needs its own. */
  readonly id?: string;
  /**
   * Whether its marks can be reached and activated: each has `class="wheal-mark"`, `tabindex`, a name, and where its
   * part of the note begins (`data-start`, an offset).
   */
  readonly linked?: boolean;
}

/** A mark of a picture: what belongs to one thing in the note. */
export interface MarkOf {
  /** Offset in the note at which its part begins. */
  readonly start: number | undefined;
  /** Index of the procedure, from 0. */
  readonly procedure: number | undefined;
  /** What it says, for whoever hears it. */
  readonly name: string;
}

/** The shapes of one mark, together. */
export function markGroup({ start, procedure, name }: MarkOf, linked: boolean, shapes: string): string {
  return element(
    'g',
    {
      class: 'wheal-mark',
      'data-start': linked ? start : undefined,
      'data-procedure': procedure,
      ...(linked && start !== undefined ? { tabindex: 0, role: 'button', 'aria-label': plain(name) } : {}),
    },
    shapes,
  );
}

/** What the `svg` element of a picture is made of. */
export interface Drawing {
  readonly id: string;
  readonly title: string;
  readonly alternative: string;
  readonly width: number;
  readonly height: number;
  readonly linked: boolean;
}

/** The `svg` element around the shapes of a picture, with its title and its description. */
export function svgOf({ id, title, alternative, width, height, linked }: Drawing, shapes: string): string {
  const ids = { title: `${id}-title`, text: `${id}-text` };
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${Math.ceil(width)} ${Math.ceil(height)}`,
      width: Math.ceil(width),
      height: Math.ceil(height),
      role: linked ? 'group' : 'img',
      'aria-labelledby': ids.title,
      'aria-describedby': ids.text,
      class: 'wheal-picture',
      fill: 'none',
      stroke: 'currentColor',
      'font-size': typeSize,
    },
    `<title id="${ids.title}">${escapedHtml(title)}</title>`,
    `<desc id="${ids.text}">${escapedHtml(alternative)}</desc>`,
    shapes,
  );
}

/** A picture as a figure of a page: title, drawing, what could not be drawn, and its numbers in a table. */
export function figureHtml({ title, hint, svg, table, notDrawn }: Picture): string {
  const missing = notDrawn.length === 0 ? [] : [listHtml(notDrawn.map(plain))];
  const drawn = svg === '' ? [] : [...(hint === undefined ? [] : [tag('p', hint)]), svg];
  return [
    '<figure>',
    tag('figcaption', title),
    ...drawn,
    ...missing,
    tableHtml(table, title),
    '</figure>',
  ].join('\n');
}

/** A date is never cut at its hyphens. */
const day = /\d{4}-\d\d-\d\d/g;

/** The numbers of a picture as a table. */
export function tableHtml({ head, rows }: PictureTable, name: string): string {
  const cell = (text: string): string =>
    `<td>${escapedHtml(plain(text)).replace(day, '<span class="date">$&</span>')}</td>`;
  return `<table aria-label="${escapedHtml(name)}">
<thead><tr>${head.map((text) => `<th scope="col">${escapedHtml(text)}</th>`).join('')}</tr></thead>
<tbody>
${rows.map((row) => `<tr>${row.map(cell).join('')}</tr>`).join('\n')}
</tbody>
</table>`;
}

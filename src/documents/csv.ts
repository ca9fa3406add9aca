import { plain } from './one-line.ts';

/** How a table is written for the program that opens it. */
export interface CsvLook {
  /** With a byte order mark, by which some spreadsheets know that the text is UTF-8. */
  readonly mark?: boolean;
  /** With identifiers as text, so that a spreadsheet makes no number of 0042 and no date of 3-4. */
  readonly textIds?: boolean;
}

type Value = string | number | undefined;

/** What a spreadsheet would take for the beginning of a formula, in either width. */
const formula = /^\s*[=+\-@＝＋－＠]/;

/** A cell of a table (RFC 4180) that no spreadsheet takes for a formula. */
export function csvCell(value: Value): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return String(value);
  const text = plain(value);
  const harmless = formula.test(text) ? `'${text}` : text;
  return /[",;]|^\s|\s$/.test(harmless) ? quoted(harmless) : harmless;
}

const quoted = (text: string): string => `"${text.replace(/"/g, '""')}"`;

/** Most characters of a text in a formula. */
const longest = 255;

/** An identifier as a formula that is nothing but its text: the one form that stays text in every spreadsheet. */
function textCell(value: Value): string {
  const text = value === undefined ? '' : plain(String(value));
  return text === '' || text.length > longest ? csvCell(text) : quoted(`=${quoted(text)}`);
}

/**
 * A table as CSV with the line ends of RFC 4180.
 * @param ids the columns that hold identifiers
 */
export function csvOf(
  columns: readonly string[],
  rows: readonly (readonly Value[])[],
  ids: readonly string[],
  { mark = false, textIds = false }: CsvLook = {},
): string {
  const cells = columns.map((column) => (textIds && ids.includes(column) ? textCell : csvCell));
  const lines = [
    columns.map(csvCell),
    ...rows.map((row) => row.map((value, at) => (cells[at] ?? csvCell)(value))),
  ];
  return `${mark ? '\ufeff' : ''}${lines.map((line) => `${line.join(',')}\r\n`).join('')}`;
}

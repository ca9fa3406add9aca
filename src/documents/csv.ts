import { plain } from './one-line.ts';

/** What a spreadsheet would take for the beginning of a formula, in either width. */
const formula = /^\s*[=+\-@＝＋－＠]/;

/** A cell of a table (RFC 4180) that no spreadsheet takes for a formula. */
export function csvCell(value: string | number | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return String(value);
  const text = plain(value);
  const harmless = formula.test(text) ? `'${text}` : text;
  return /[",;]|^\s|\s$/.test(harmless) ? `"${harmless.replace(/"/g, '""')}"` : harmless;
}

/** Rows as CSV with the line ends of RFC 4180. */
export const csvOf = (rows: readonly (readonly (string | number | undefined)[])[]): string =>
  rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');

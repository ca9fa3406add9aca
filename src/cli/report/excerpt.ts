import type { LineRange } from '../notes/judge.ts';
import { plain } from '../../documents/one-line.ts';
import { columns } from '../terminal/columns.ts';

/** UTF-16 units of a long line that are shown before and after the start of a fault. */
const before = 50;
const after = 70;

/**
 * The line of a fault with marks under it, each of the two after a margin. Of a long line only the surroundings of
 * the fault are shown, with … where it is cut; of a fault over several lines the first line.
 */
export function excerpt(row: string, { start, end }: LineRange): readonly [string, string] {
  const from = Math.min(start.character, row.length);
  const to = end.line > start.line ? row.length : Math.min(end.character, row.length);
  const left = from > before + 10 ? whole(row, from - before) : 0;
  const right = row.length > from + after + 10 ? whole(row, from + after) : row.length;
  const lead = `${left > 0 ? '…' : ''}${shown(row.slice(left, from))}`;
  const fault = shown(row.slice(from, Math.min(to, right)));
  const rest = shown(row.slice(Math.min(to, right), right));
  const number = String(start.line + 1).padStart(5);
  return [
    `${number} | ${lead}${fault}${rest}${right < row.length ? '…' : ''}`.trimEnd(),
    `${' '.repeat(number.length)} | ${' '.repeat(columns(lead))}${'^'.repeat(Math.max(1, columns(fault)))}`,
  ];
}

/**
 * A tab is shown as two spaces, so that the marks are right whatever the terminal's tab stops are. The mark of byte
 * order that begins some files is not shown.
 */
const shown = (text: string): string => plain(text.replaceAll('\t', '  ').replace(/^\ufeff/, ''));

/** Never between the halves of a surrogate pair. */
const whole = (row: string, at: number): number => (/[\udc00-\udfff]/.test(row.charAt(at)) ? at - 1 : at);

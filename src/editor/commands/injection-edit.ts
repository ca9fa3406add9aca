import type { TextEdit } from '../../note/tree/finding.ts';
import type { Entry } from '../../note/tree/tree.ts';
import type { Analysis } from '../../service/index.ts';
import { flowMap, scalar, type Fields } from '../../service/edits/fields.ts';
import { columnOf, endOfRow, insertion, lineBreakOf } from '../../service/edits/insert.ts';
import { entryOf, lastOffset, mapsOf, type PlacedMap } from '../../note/tree/maps.ts';

/** Keys and values of one entry of `anesthetic`, in the order in which they are written. */
export type InjectionEntry = Fields;

/**
 * The edit that adds an injection to the procedure at an offset or to the only one, otherwise to the visit.
 * @returns undefined where the note has no place for it that is sure: it is broken, signed, or written as one map
 */
export function injectionEdit(
  { text, root, note, damage, shapes }: Analysis,
  offset: number,
  entry: InjectionEntry,
): TextEdit | undefined {
  if (text.trim() === '') return { start: 0, end: text.length, text: `${rowsOf(entry).join('\n')}\n` };
  if (root === null || note === null || damage.length > 0 || note.signed !== undefined) return undefined;
  const maps = mapsOf(root, shapes, 'note');
  const row = endOfRow(text, offset);
  const procedures = maps.filter(({ index }) => index === shapes.get('procedure'));
  const above = procedures.filter(({ node }) => node.start <= row);
  const map = above.at(-1) ?? (procedures.length === 1 ? procedures[0] : maps[0]);
  if (map === undefined) return undefined;
  const there = entryOf(map, 'anesthetic');
  return there === undefined
    ? insertion(text, map, {
        key: 'anesthetic',
        flow: `anesthetic: [${flowMap(entry)}]`,
        rows: rowsOf(entry),
      })
    : added(text, map, there, entry);
}

/** The edit that adds an entry after those that are there already. */
function added(text: string, { node }: PlacedMap, there: Entry, entry: InjectionEntry): TextEdit | undefined {
  const { value } = there;
  if (value === null || (value.kind === 'text' && value.text === '??')) {
    const end = value?.end ?? text.indexOf(':', there.end) + 1;
    const rows = node.flow
      ? `anesthetic: [${flowMap(entry)}]`
      : joined(rowsOf(entry), columnOf(text, there.start), text);
    return { start: there.start, end, text: rows };
  }
  const last = value.kind === 'list' ? value.items.at(-1) : undefined;
  if (value.kind !== 'list' || last === undefined) return undefined;
  if (value.flow) return { start: last.end, end: last.end, text: `, ${flowMap(entry)}` };
  const at = endOfRow(text, lastOffset(value));
  const column = columnOf(text, text.lastIndexOf('-', last.start));
  const break_ = lineBreakOf(text);
  return {
    start: at,
    end: at,
    text: `${break_}${' '.repeat(column)}${joined(itemOf(entry), column, text)}`,
  };
}

const joined = (rows: readonly string[], column: number, text: string): string =>
  rows.join(`${lineBreakOf(text)}${' '.repeat(column)}`);

const rowsOf = (entry: InjectionEntry): readonly string[] => [
  'anesthetic:',
  ...itemOf(entry).map((row) => `  ${row}`),
];

const itemOf = (entry: InjectionEntry): readonly string[] =>
  entry.map(([key, value], index) => `${index === 0 ? '- ' : '  '}${key}: ${scalar(value, false)}`);

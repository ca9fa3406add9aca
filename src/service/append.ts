import type { TextEdit } from '../note/finding.ts';
import type { ListNode, MapNode, Node } from '../note/tree.ts';
import { columnOf, endOfRow, insertion, lineBreakOf, startOfRow } from './insert.ts';
import { entryOf, lastOffset, type PlacedMap } from './maps.ts';

/**
 * The smallest edits that add one map to the list under a key of a part, in the style in which the list is written; the
 * key is put in where the part has none. Undefined where something else stands there.
 * @param rows the map's keys with their values, each as `key: value`
 */
export function itemEdits(
  text: string,
  part: PlacedMap,
  key: string,
  rows: readonly string[],
): readonly TextEdit[] | undefined {
  const entry = entryOf(part, key);
  if (entry === undefined) {
    const block = [`${key}:`, ...blockItem(rows).map((row) => `  ${row}`)];
    return [insertion(text, part, { key, flow: `${key}: [${flowItem(rows)}]`, rows: block })];
  }
  return entry.value === null ? undefined : appended(text, entry.value, rows);
}

const flowItem = (rows: readonly string[]): string => `{${rows.join(', ')}}`;

const blockItem = (rows: readonly string[]): readonly string[] =>
  rows.map((row, at) => `${at === 0 ? '- ' : '  '}${row}`);

/** The items that are there, and one more. */
function appended(text: string, value: Node, rows: readonly string[]): readonly TextEdit[] | undefined {
  if (value.kind === 'text') return undefined;
  if (value.kind === 'map') return value.flow ? wrapped(value, rows) : listed(text, value, rows);
  return value.flow ? [intoFlowList(text, value, rows)] : belowList(text, value, rows);
}

const insert = (at: number, text: string): TextEdit => ({ start: at, end: at, text });

const wrapped = ({ start, end }: MapNode, rows: readonly string[]): readonly TextEdit[] => [
  insert(start, '['),
  insert(end, `, ${flowItem(rows)}]`),
];

function intoFlowList(text: string, { start, items }: ListNode, rows: readonly string[]): TextEdit {
  const last = items.at(-1);
  return last === undefined
    ? insert(text.indexOf('[', start) + 1, flowItem(rows))
    : insert(last.end, `, ${flowItem(rows)}`);
}

function belowList(text: string, list: ListNode, rows: readonly string[]): readonly TextEdit[] | undefined {
  const last = list.items.at(-1);
  const dash = last === undefined ? -1 : text.lastIndexOf('-', last.start - 1);
  if (last === undefined || dash < startOfRow(text, last.start)) return undefined;
  return [rowsBelow(text, lastOffset(last), columnOf(text, dash), rows)];
}

function rowsBelow(text: string, offset: number, column: number, rows: readonly string[]): TextEdit {
  const eol = lineBreakOf(text);
  const block = blockItem(rows).map((row) => `${eol}${' '.repeat(column)}${row}`);
  return insert(endOfRow(text, offset), block.join(''));
}

/** A single map in block style becomes the first item of a list: its rows move in by two. */
function listed(text: string, map: MapNode, rows: readonly string[]): readonly TextEdit[] | undefined {
  const first = map.entries[0];
  if (first === undefined) return undefined;
  const column = columnOf(text, first.start);
  const end = endOfRow(text, lastOffset(map));
  const moved = [...text.slice(first.start, end).matchAll(/(?:\r\n|\r|\n)(?=[^\r\n])/g)].map((match) =>
    insert(first.start + match.index + match[0].length, '  '),
  );
  return [insert(first.start, '- '), ...moved, rowsBelow(text, lastOffset(map), column, rows)];
}

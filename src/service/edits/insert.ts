import type { TextEdit } from '../../note/tree/finding.ts';
import type { Entry } from '../../note/tree/tree.ts';
import { lastOffset, type PlacedMap } from '../../note/tree/maps.ts';

/** A key with its value as it is written between brackets, and as lines below one another. */
export interface Written {
  readonly key: string;
  readonly flow: string;
  /** Lines without the indentation that all of them share. */
  readonly rows: readonly string[];
}

/** A key whose value is not yet known. */
export const unknownYet = (key: string): Written => ({ key, flow: `${key}: ??`, rows: [`${key}: ??`] });

/** The smallest edit that puts a key into a map, where the schema has it; nothing else of the text changes. */
export function insertion(text: string, map: PlacedMap, written: Written): TextEdit {
  const before = entryBefore(map, written.key);
  if (map.node.flow) return intoFlow(text, map, before, written);
  const [first] = map.node.entries;
  const indent = ' '.repeat(first === undefined ? 0 : columnOf(text, first.start));
  const eol = lineBreakOf(text);
  if (before === undefined) {
    const at = first?.start ?? map.node.start;
    return { start: at, end: at, text: written.rows.map((row) => `${row}${eol}${indent}`).join('') };
  }
  const at = endOfRow(text, before.value === null ? before.end : lastOffset(before.value));
  return { start: at, end: at, text: written.rows.map((row) => `${eol}${indent}${row}`).join('') };
}

/** The last entry in the text that the schema has before a key. */
function entryBefore({ node, index }: PlacedMap, key: string): Entry | undefined {
  const order = (name: string | undefined): number => index.shape.keys.findIndex((one) => one.key === name);
  const own = order(key);
  return node.entries.findLast((entry) => {
    const at = order(index.byName.get(entry.key)?.key);
    return at >= 0 && at < own;
  });
}

function intoFlow(text: string, { node }: PlacedMap, before: Entry | undefined, { flow }: Written): TextEdit {
  if (before?.value != null) return { start: before.value.end, end: before.value.end, text: `, ${flow}` };
  const [first] = node.entries;
  if (first !== undefined) return { start: first.start, end: first.start, text: `${flow}, ` };
  const at = text.indexOf('{', node.start) + 1;
  return { start: at, end: at, text: flow };
}

/** The column of an offset, in UTF-16 units from 0. A byte order mark takes no column. */
export function columnOf(text: string, offset: number): number {
  const start = startOfRow(text, offset);
  return offset - start - (start === 0 && text.startsWith('\uFEFF') ? 1 : 0);
}

export const startOfRow = (text: string, offset: number): number =>
  Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1;

/** The end of the line that holds the last character before an offset, without its line break. */
export function endOfRow(text: string, offset: number): number {
  let last = offset;
  while (last > 0 && /[\r\n]/.test(text[last - 1] ?? '')) last -= 1;
  const rest = text.slice(last).search(/[\r\n]/);
  return rest < 0 ? text.length : last + rest;
}

/** The line break that a text uses. */
export const lineBreakOf = (text: string): string => /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';

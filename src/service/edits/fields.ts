import type { TextEdit } from '../../note/tree/finding.ts';
import { quoted } from '../../note/text/quote.ts';
import type { Entry, MapNode, Node } from '../../note/tree/tree.ts';
import { columnOf, endOfRow, insertion, lineBreakOf, startOfRow, type Written } from './insert.ts';
import { entryOf, lastOffset, type PlacedMap } from '../../note/tree/maps.ts';

/** Keys and values in the order in which they are written. */
export type Fields = readonly (readonly [key: string, value: string])[];

/** What is in the way of writing. */
export interface Refused {
  readonly why: string;
}

/** How a map is written below its key: on one line, as lines, or as the first item of a list. */
export type Form = 'row' | 'rows' | 'list';

export const isRefused = (answer: object): answer is Refused => 'why' in answer;

const specialInBlock = /: |:$|#|^(?!\?\?$)\W/;
const specialInFlow = /[,:{}[\]#]|^(?!\?\?$)\W/;

/** A value as it is written after a key: in quotes where YAML would make something else of it. */
export const scalar = (value: string, flow: boolean): string =>
  (flow ? specialInFlow : specialInBlock).test(value) ? quoted(value) : value;

/** A map on one line. */
export const flowMap = (fields: Fields): string =>
  `{${fields.map(([key, value]) => `${key}: ${scalar(value, true)}`).join(', ')}}`;

const blockRows = (fields: Fields): readonly string[] =>
  fields.map(([key, value]) => `${key}: ${scalar(value, false)}`);

const itemRows = (fields: Fields): readonly string[] =>
  blockRows(fields).map((row, at) => `${at === 0 ? '- ' : '  '}${row}`);

const insert = (at: number, text: string): TextEdit => ({ start: at, end: at, text });

const alreadySaid = (text: string, { start, value }: Entry): Refused => ({
  why: `The note already says: ${text.slice(start, Math.min(value?.end ?? start, endOfRow(text, start + 1)))}. Correct it by hand.`,
});

/** Whether nothing is known yet of what an entry says. */
const isOpen = ({ value }: Entry): boolean =>
  value === null || (value.kind === 'text' && (value.text === '??' || value.text.trim() === ''));

/** The edits that write fields into a map: into the gaps that it has, or as lines of their own. */
export function setFields(text: string, map: PlacedMap, fields: Fields): readonly TextEdit[] | Refused {
  const edits: TextEdit[] = [];
  const missing: (readonly [string, string])[] = [];
  for (const field of fields) {
    const [key, value] = field;
    const there = entryOf(map, key);
    if (there === undefined) missing.push(field);
    else if (isOpen(there)) edits.push(filled(text, there, scalar(value, map.node.flow)));
    else if (there.value?.kind !== 'text' || there.value.text !== value) return alreadySaid(text, there);
  }
  return [...edits, ...missingFields(text, map, missing)];
}

function missingFields(text: string, map: PlacedMap, fields: Fields): readonly TextEdit[] {
  if (map.node.flow && map.node.entries.length === 0 && fields.length > 0)
    return [insert(text.indexOf('{', map.node.start) + 1, flowMap(fields).slice(1, -1))];
  return fields.map(([key, value]) =>
    insertion(text, map, {
      key,
      flow: `${key}: ${scalar(value, true)}`,
      rows: [`${key}: ${scalar(value, false)}`],
    }),
  );
}

/** Puts something in the place of `??`, or after a key that has no value yet. */
function filled(text: string, { end, value }: Entry, written: string): TextEdit {
  if (value !== null && value.end > value.start) return { start: value.start, end: value.end, text: written };
  const colon = /^["']?[ \t]*:/.exec(text.slice(end, end + 80));
  return colon === null ? insert(end, `: ${written}`) : insert(end + colon[0].length, ` ${written}`);
}

/** The edits that put a map below a key where nothing is known of it yet. */
export function setMap(
  text: string,
  map: PlacedMap,
  key: string,
  fields: Fields,
  form: Form,
  compact: boolean,
): readonly TextEdit[] | Refused {
  const there = entryOf(map, key);
  const one = form === 'list' ? `[${flowMap(fields)}]` : flowMap(fields);
  if (there !== undefined) return isOpen(there) ? [filled(text, there, one)] : alreadySaid(text, there);
  return [insertion(text, map, writtenAs(key, fields, form, compact))];
}

function writtenAs(key: string, fields: Fields, form: Form, compact: boolean): Written {
  if (form === 'row') {
    const row = `${key}: ${flowMap(fields)}`;
    return { key, flow: row, rows: [row] };
  }
  const inner = form === 'list' ? itemRows(fields) : blockRows(fields);
  const indent = form === 'list' && compact ? '' : '  ';
  return {
    key,
    flow: `${key}: ${form === 'list' ? `[${flowMap(fields)}]` : flowMap(fields)}`,
    rows: [`${key}:`, ...inner.map((row) => `${indent}${row}`)],
  };
}

/** The edits that put a map after those that are below a key already, in the style in which they are written. */
export function addItem(
  text: string,
  map: PlacedMap,
  key: string,
  fields: Fields,
  form: 'row' | 'list',
  compact: boolean,
): readonly TextEdit[] | Refused {
  const there = entryOf(map, key);
  if (there === undefined || isOpen(there)) return setMap(text, map, key, fields, form, compact);
  const edits = there.value === null ? undefined : appended(text, there.value, fields, form);
  return edits ?? notAList(there);
}

/** The edits that put a word among those below a key of a patient; "none" gives way to it. */
export function addWord(
  text: string,
  map: PlacedMap,
  key: string,
  word: string,
): readonly TextEdit[] | Refused {
  const there = entryOf(map, key);
  const written = { flow: `${key}: ${scalar(word, true)}`, rows: [`${key}: ${scalar(word, false)}`] };
  if (there === undefined) return [insertion(text, map, { key, ...written })];
  if (isOpen(there)) return [filled(text, there, scalar(word, map.node.flow))];
  const edit = there.value === null ? undefined : wordBeside(text, there.value, word, map.node.flow);
  return edit === undefined ? notAList(there) : [edit];
}

const isNone = (node: Node | undefined): boolean =>
  node?.kind === 'text' && /^(?:none(?: known)?|no|nil|NKDA|NKA|unknown)$/i.test(node.text.trim());

function wordBeside(text: string, value: Node, word: string, flow: boolean): TextEdit | undefined {
  const { start, end } = value;
  if (value.kind === 'map') return undefined;
  if (value.kind === 'text') {
    if (value.text.includes('\n')) return undefined;
    return isNone(value)
      ? { start, end, text: scalar(word, flow) }
      : { start, end, text: `[${scalar(value.text, true)}, ${scalar(word, true)}]` };
  }
  const last = value.items.at(-1);
  if (last === undefined) return undefined;
  if (value.items.length === 1 && isNone(last))
    return { start: last.start, end: last.end, text: scalar(word, value.flow) };
  if (value.flow) return insert(last.end, `, ${scalar(word, true)}`);
  const dash = dashBefore(text, last);
  if (dash < 0) return undefined;
  const row = `${lineBreakOf(text)}${' '.repeat(columnOf(text, dash))}- ${scalar(word, false)}`;
  return insert(endOfRow(text, lastOffset(last)), row);
}

const notAList = ({ key }: Entry): Refused => ({
  why: `\`${key}\` is written so that nothing can be added to it. Make a list of it by hand, with a dash before each entry.`,
});

/** A bare day is the first of a list as well: `told: 2026-03-10`. */
const loneDay = /^\d{4}-\d\d-\d\d$/;

function appended(
  text: string,
  value: Node,
  fields: Fields,
  form: 'row' | 'list',
): readonly TextEdit[] | undefined {
  const item = flowMap(fields);
  if (value.kind === 'text')
    return loneDay.test(value.text) && value.text === text.slice(value.start, value.end)
      ? [insert(value.start, '['), insert(value.end, `, ${item}]`)]
      : undefined;
  if (value.kind === 'map')
    return value.flow
      ? [insert(value.start, '['), insert(value.end, `, ${item}]`)]
      : listed(text, value, fields, form);
  const last = value.items.at(-1);
  if (!value.flow) return belowList(text, last, fields, form);
  return [
    last === undefined ? insert(text.indexOf('[', value.start) + 1, item) : insert(last.end, `, ${item}`),
  ];
}

function belowList(
  text: string,
  last: Node | undefined,
  fields: Fields,
  form: 'row' | 'list',
): readonly TextEdit[] | undefined {
  const dash = last === undefined ? -1 : dashBefore(text, last);
  if (last === undefined || dash < 0) return undefined;
  const onOneRow = form === 'row' || (last.kind === 'map' && last.flow);
  return [rowsBelow(text, last, columnOf(text, dash), fields, onOneRow)];
}

/** A single map in block style becomes the first item of a list: its lines move in by two. */
function listed(
  text: string,
  map: MapNode,
  fields: Fields,
  form: 'row' | 'list',
): readonly TextEdit[] | undefined {
  const first = map.entries[0];
  if (first === undefined) return undefined;
  const end = endOfRow(text, lastOffset(map));
  const moved = [...text.slice(first.start, end).matchAll(/(?:\r\n|\r|\n)(?=[^\r\n])/g)].map((match) =>
    insert(first.start + match.index + match[0].length, '  '),
  );
  const below = rowsBelow(text, map, columnOf(text, first.start), fields, form === 'row');
  return [insert(first.start, '- '), ...moved, below];
}

/** One more item below a part, with its dash in a column. */
function rowsBelow(text: string, part: Node, column: number, fields: Fields, onOneRow: boolean): TextEdit {
  const rows = onOneRow ? [`- ${flowMap(fields)}`] : itemRows(fields);
  const eol = lineBreakOf(text);
  const indent = ' '.repeat(column);
  return insert(endOfRow(text, lastOffset(part)), rows.map((row) => `${eol}${indent}${row}`).join(''));
}

/** Where the dash of a list item is; -1 where it is on another line. */
function dashBefore(text: string, item: Node): number {
  const dash = text.lastIndexOf('-', item.start - 1);
  return dash < startOfRow(text, item.start) ? -1 : dash;
}

/** Whether a note writes the dashes of its lists in the column of their key. */
export function isCompact(text: string, root: MapNode): boolean {
  for (const { start, value } of root.entries) {
    const first = value?.kind === 'list' && !value.flow ? value.items[0] : undefined;
    if (first === undefined) continue;
    return columnOf(text, dashBefore(text, first)) === columnOf(text, start);
  }
  return false;
}

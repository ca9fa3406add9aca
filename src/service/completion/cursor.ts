import type { KeyIndex, KeyShape } from '../../note/tree/shape.ts';
import { flowFrames, flowKeysIn, type FlowFrame } from './flow.ts';
import { frameAt, type Frame } from './frames.ts';
import { follow, keysOf, type Followed, type Shapes } from './key-path.ts';
import { commentAt, isIdle, tokensOf, type RowToken } from './lines-above.ts';

/** What could be typed at a place of a note. */
export interface Cursor {
  readonly place: 'key' | 'value' | 'nowhere';
  /** Canonical keys from the root to the map, or to the key whose value is typed. */
  readonly path: readonly string[];
  /** The map that a key would join. */
  readonly map: KeyIndex | undefined;
  /** The key whose value is typed. */
  readonly key: KeyShape | undefined;
  /** Canonical keys that the map has already. */
  readonly present: ReadonlySet<string>;
  /** Whether the place is inside `{…}` or `[…]`. */
  readonly flow: boolean;
  /** The column at which a key of this map is, in block style. */
  readonly column: number;
  /** `- ` where a key would have to begin a new item of a list. */
  readonly lead: '' | '- ';
  /** What is typed already of the word, and the offsets that a completion replaces. */
  readonly typed: string;
  readonly start: number;
  readonly end: number;
}

interface Line {
  readonly rows: readonly string[];
  readonly row: number;
  readonly text: string;
  /** Column of the caret. */
  readonly column: number;
  /** Offset of the line's first character. */
  readonly start: number;
}

/**
 * Says what could be typed at an offset, from lines and indentation alone: it needs no valid YAML.
 * @param shapes the keys of the file's maps, by name
 * @param root name of the outermost map
 */
export function cursorAt(text: string, offset: number, shapes: Shapes, root: string): Cursor {
  const rows = text.split(/\r\n|\r|\n/);
  const before = text.slice(0, offset).split(/\r\n|\r|\n/);
  const row = before.length - 1;
  const column = before[row]?.length ?? 0;
  const line: Line = { rows, row, text: rows[row] ?? '', column, start: offset - column };
  const comment = commentAt(line.text);
  if (comment >= 0 && comment < column) return nowhere(offset);
  return flowCursor(line, shapes, root) ?? blockCursor(line, shapes, root);
}

const nowhere = (offset: number): Cursor => ({
  place: 'nowhere',
  path: [],
  map: undefined,
  key: undefined,
  present: new Set(),
  flow: false,
  column: 0,
  lead: '',
  typed: '',
  start: offset,
  end: offset,
});

function blockCursor(line: Line, shapes: Shapes, root: string): Cursor {
  const tokens = tokensOf(line.text).filter((token) => token.column < line.column);
  const key = tokens.find((token) => token.kind === 'key' && token.valueColumn <= line.column);
  if (key !== undefined) return blockValue(line, key, shapes, root);
  const dash = tokens.filter(({ kind }) => kind === 'dash').at(-1);
  const indent = /^ */.exec(line.text.slice(0, line.column))?.[0].length ?? 0;
  return blockKey(line, Math.min(dash?.valueColumn ?? indent, line.column), dash, shapes, root);
}

function blockValue(line: Line, key: RowToken, shapes: Shapes, root: string): Cursor {
  const { parents } = frameAt(line.rows, line.row, key.column);
  if (holdsRowsBelow(line, key)) return nowhere(line.start + line.column);
  const found = follow([...keysOf(parents), key.key], shapes, root);
  const comment = commentAt(line.text);
  const valueEnd = (comment < 0 ? line.text : line.text.slice(0, comment)).trimEnd().length;
  return {
    ...nowhere(line.start + line.column),
    place: found.key === undefined ? 'nowhere' : 'value',
    path: found.path,
    map: found.map,
    key: found.key,
    column: key.column,
    typed: line.text.slice(key.valueColumn, line.column),
    start: line.start + Math.min(key.valueColumn, line.column),
    end: line.start + Math.max(valueEnd, line.column),
  };
}

/** Whether a list or a map belongs to a key already, below its line: a value beside it would damage both. */
function holdsRowsBelow({ rows, row }: Line, { column }: RowToken): boolean {
  for (let at = row + 1; at < rows.length; at++) {
    const below = rows[at] ?? '';
    if (isIdle(below)) continue;
    const [first] = tokensOf(below);
    return (
      first !== undefined && (first.column > column || (first.column === column && first.kind === 'dash'))
    );
  }
  return false;
}

function blockKey(
  line: Line,
  wordColumn: number,
  dash: RowToken | undefined,
  shapes: Shapes,
  root: string,
): Cursor {
  const word = /^[\w-]*/.exec(line.text.slice(line.column))?.[0] ?? '';
  // Nothing is put in front of what is on the line already.
  if (!/^[ \t]*(?:$|:|#)/.test(line.text.slice(line.column + word.length)))
    return nowhere(line.start + line.column);
  const frame = frameAt(line.rows, line.row, wordColumn);
  const found = follow(keysOf(frame.parents), shapes, root);
  const common: Cursor = {
    ...nowhere(line.start + line.column),
    path: found.path,
    typed: line.text.slice(wordColumn, line.column),
    start: line.start + wordColumn,
    end: line.start + line.column + word.length,
  };
  // A list of words, or a value on the line below its key.
  if (found.inner === undefined) {
    return found.key === undefined
      ? common
      : { ...common, place: 'value', map: found.map, key: found.key, column: wordColumn };
  }
  // On a line of its own the indentation is replaced too, so that it can be put right.
  const start = dash === undefined ? line.start : common.start;
  const lead = needsDash(frame, found) ? '- ' : '';
  return {
    ...common,
    start,
    place: 'key',
    map: found.inner,
    key: found.key,
    present: presentIn(frame, found.inner),
    column: dash?.valueColumn ?? columnIn(frame, lead === '' ? 'key' : 'dash'),
    lead,
  };
}

/** Whether a key can only follow a dash here: directly below the key of a list that is not written as one map. */
const needsDash = ({ token, children }: Frame, found: Followed): boolean =>
  token?.kind === 'key' && found.key?.list === true && !children.some(({ kind }) => kind === 'key');

const presentIn = ({ children }: Frame, map: KeyIndex): ReadonlySet<string> =>
  new Set(children.flatMap(({ kind, key }) => (kind === 'key' ? [map.byName.get(key)?.key ?? key] : [])));

/** The column of what is in a frame already, or the usual one. */
const columnIn = ({ token, children }: Frame, kind: RowToken['kind']): number =>
  children.find((child) => child.kind === kind)?.column ?? (token === undefined ? 0 : token.column + 2);

/** The place inside an open bracket that began on this line or a few lines above. */
function flowCursor(line: Line, shapes: Shapes, root: string): Cursor | undefined {
  const opening = openingRow(line);
  if (opening === undefined) return undefined;
  const { row, token } = opening;
  const first = (line.rows[row] ?? '').slice(token.valueColumn);
  const between = line.rows.slice(row + 1, line.row);
  const typed =
    row === line.row
      ? line.text.slice(token.valueColumn, line.column)
      : [first, ...between, line.text.slice(0, line.column)].join('\n');
  const frames = flowFrames(typed);
  if (frames === undefined) return nowhere(line.start + line.column);
  const frame = frames.at(-1);
  if (frame === undefined) return undefined;
  if (isInIndent(line)) return nowhere(line.start + line.column);
  const block = keysOf([...frameAt(line.rows, row, token.column).parents, token]);
  const inside = frames.flatMap(({ key }) => (key === undefined ? [] : [key]));
  const found = follow([...block, ...inside], shapes, root);
  const word = typed.slice(frame.wordStart).trimStart();
  return frame.kind === 'map' && frame.key === undefined
    ? flowKey(line, word, frame, found)
    : flowValue(line, word, found, shapes);
}

/** Whether the caret is in the indentation of a line, where a word would take it away. */
const isInIndent = ({ text, column }: Line): boolean =>
  text.slice(0, column).trim() === '' && /^[ \t]+\S/.test(text.slice(column));

function flowKey(line: Line, typed: string, { keys: before }: FlowFrame, found: Followed): Cursor {
  const caret = line.start + line.column;
  const rest = /^[\w-]*/.exec(line.text.slice(line.column))?.[0] ?? '';
  const keys = [...before, ...keysAfter(line, rest.length)];
  return {
    ...nowhere(caret),
    // A map whose keys are free has words of its own to offer.
    place: found.inner !== undefined ? 'key' : found.key?.open === true ? 'value' : 'nowhere',
    path: found.path,
    map: found.inner,
    key: found.key,
    present: new Set(keys.map((key) => found.inner?.byName.get(key)?.key ?? key)),
    flow: true,
    typed,
    start: caret - typed.length,
    end: caret + rest.length,
  };
}

/** The keys that follow in the same map between brackets, on this line and some below it. */
function keysAfter({ rows, row, text, column }: Line, typed: number): readonly string[] {
  const after = [
    `${typed === 0 ? ',' : ''}${text.slice(column + typed)}`,
    ...rows.slice(row + 1, row + furthest),
  ].join('\n');
  return flowKeysIn(after.replace(/^[ \t]*:(?=\s|$)/, ''));
}

function flowValue(line: Line, typed: string, found: Followed, shapes: Shapes): Cursor {
  const caret = line.start + line.column;
  const rest = restOfValue(line.text.slice(line.column)).trimEnd();
  // A list or map that is here already would be cut in two.
  if (/[[{]/.test(rest)) return nowhere(caret);
  const key = found.inner === undefined ? found.key : bareKey(found.key, shapes);
  return {
    ...nowhere(caret),
    place: key === undefined ? 'nowhere' : 'value',
    path: found.path,
    map: found.map,
    key,
    flow: true,
    typed,
    start: caret - typed.length,
    end: caret + rest.length,
  };
}

/** What is left of a value between brackets: to the comma or bracket that ends it, or to the end of its quotes. */
const restOfValue = (text: string): string =>
  (/^[ \t]*(?:"[^"\\]*"|'[^']*')/.exec(text) ?? /^[^,}\]#]*/.exec(text))?.[0] ?? '';

/** The key that a bare text means where a map may be, or the key itself. */
const bareKey = (key: KeyShape | undefined, shapes: Shapes): KeyShape | undefined =>
  (key?.text === undefined ? undefined : shapes.get(key.map ?? '')?.byName.get(key.text)) ?? key;

/** A map between brackets is looked for on so many lines. */
const furthest = 12;

/** The nearest line at or above the caret whose value opens a bracket that may still be open at the caret. */
function openingRow(line: Line): { row: number; token: RowToken } | undefined {
  for (let row = line.row; row >= 0 && row > line.row - furthest; row--) {
    const text = line.rows[row] ?? '';
    const tokens = tokensOf(text);
    const token = row === line.row ? tokens.findLast((one) => one.valueColumn < line.column) : tokens.at(-1);
    if (token === undefined ? tokens.length === 0 : isPassed(line, row, token)) continue;
    const opens = token !== undefined && /^[[{]/.test(text.slice(token.valueColumn));
    if (opens) return { row, token };
    if (!goesOn(line.rows[row - 1])) return undefined;
  }
  return undefined;
}

/** Whether what a line opens is closed again before the caret, where the line goes on from the one above it. */
function isPassed(line: Line, row: number, { valueColumn }: RowToken): boolean {
  if (row === line.row || !goesOn(line.rows[row - 1])) return false;
  const rows = [...line.rows.slice(row, line.row), line.text.slice(0, line.column)];
  return flowFrames(rows.join('\n').slice(valueColumn))?.length === 0;
}

/** Whether the line after this one may be a part of what is between its brackets. */
const goesOn = (text = ''): boolean => /[,{[]\s*$/.test(text);

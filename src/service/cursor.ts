import type { KeyIndex, KeyShape } from '../note/shape.ts';
import { flowFrames, type FlowFrame } from './flow.ts';
import { commentAt, isIdle, tokensOf, type RowToken } from './rows.ts';

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
  /** The column at which a key of this map stands, in block style. */
  readonly column: number;
  /** `- ` where a key would have to begin a new item of a list. */
  readonly lead: '' | '- ';
  /** What is typed already of the word, and the offsets that a completion replaces. */
  readonly typed: string;
  readonly start: number;
  readonly end: number;
}

type Shapes = ReadonlyMap<string, KeyIndex>;

/** A key or dash above, inside of which the place lies. */
interface Ancestor {
  readonly row: number;
  readonly token: RowToken;
}

interface Line {
  readonly rows: readonly string[];
  readonly row: number;
  readonly text: string;
  /** Column of the caret. */
  readonly column: number;
  /** Offset of the row's first character. */
  readonly start: number;
}

/**
 * Says what could be typed at an offset, from rows and indentation alone: it needs no valid YAML.
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
  const wordColumn = dash?.valueColumn ?? /^ */.exec(line.text.slice(0, line.column))?.[0].length ?? 0;
  return blockKey(line, Math.min(wordColumn, line.column), dash, shapes, root);
}

function blockValue(line: Line, key: RowToken, shapes: Shapes, root: string): Cursor {
  const { parents } = ancestorsOf(line, key.column, 'key');
  const found = follow(
    [...parents.flatMap(({ token }) => (token.kind === 'key' ? [token.key] : [])), key.key],
    shapes,
    root,
  );
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

function blockKey(
  line: Line,
  wordColumn: number,
  dash: RowToken | undefined,
  shapes: Shapes,
  root: string,
): Cursor {
  const { parents, column } = ancestorsOf(line, wordColumn, 'key');
  const parent = parents.at(-1);
  const found = follow(
    parents.flatMap(({ token }) => (token.kind === 'key' ? [token.key] : [])),
    shapes,
    root,
  );
  const word = /^[\w-]*/.exec(line.text.slice(line.column))?.[0] ?? '';
  const common = {
    ...nowhere(line.start + line.column),
    path: found.path,
    typed: line.text.slice(wordColumn, line.column),
    start: line.start + wordColumn,
    end: line.start + line.column + word.length,
  };
  // A list of words, or a value on the row below its key.
  if (found.key !== undefined && found.inner === undefined) {
    return { ...common, place: 'value', map: found.map, key: found.key, column: wordColumn };
  }
  if (found.inner === undefined) return common;
  const children = childrenOf(line, parent);
  const needsDash =
    parent?.token.kind === 'key' && found.key?.list === true && !children.some(({ kind }) => kind === 'key');
  const own = children.find(({ kind }) => kind === (needsDash ? 'dash' : 'key'))?.column;
  const start =
    dash === undefined && line.text.slice(0, wordColumn).trim() === '' ? line.start : common.start;
  return {
    ...common,
    start,
    typed: line.text.slice(start - line.start, line.column).trimStart(),
    place: 'key',
    map: found.inner,
    key: found.key,
    present: new Set(
      children.flatMap((token) =>
        token.kind === 'key' ? [found.inner?.byName.get(token.key)?.key ?? token.key] : [],
      ),
    ),
    column:
      dash?.valueColumn ?? own ?? (parent === undefined ? 0 : Math.max(column, parent.token.column + 2)),
    lead: needsDash ? '- ' : '',
  };
}

/** The keys and dashes inside of which a token at `column` of the caret's row lies, outermost first. */
function ancestorsOf(
  line: Line,
  column: number,
  kind: RowToken['kind'],
): { parents: readonly Ancestor[]; column: number } {
  const parents: Ancestor[] = [];
  let at = column;
  let of = kind;
  let own = column;
  for (let row = line.row; row >= 0; row--) {
    const text = line.rows[row] ?? '';
    if (row !== line.row && isIdle(text)) continue;
    const tokens = tokensOf(text).filter((token) => row !== line.row || token.column < column);
    for (const token of [...tokens].reverse()) {
      const outer = token.column < at || (token.kind === 'key' && of === 'dash' && token.column === at);
      if (!outer) continue;
      if (token.kind === 'key' && token.hasValue) {
        // What stands deeper than a key that has its value already belongs beside that key.
        if (parents.length === 0) own = token.column;
        at = token.column;
        of = 'key';
        continue;
      }
      parents.unshift({ row, token });
      at = token.column;
      of = token.kind;
    }
    if (at === 0 && of === 'key' && parents.length > 0) break;
  }
  return { parents, column: own };
}

/** The dashes or keys directly inside an ancestor (or the root), but for the caret's row. */
function childrenOf(line: Line, parent: Ancestor | undefined): readonly RowToken[] {
  const outer = parent?.token.column ?? -1;
  const first = parent?.row ?? 0;
  const children: RowToken[] = [];
  let column: number | undefined;
  for (let row = first; row < line.rows.length; row++) {
    const text = line.rows[row] ?? '';
    if (row === line.row || isIdle(text)) continue;
    const tokens = tokensOf(text).filter(
      (token) => row !== first || parent === undefined || token.column > outer,
    );
    const leading = tokens[0];
    if (leading === undefined) continue;
    const dashBesideKey = parent?.token.kind === 'key' && leading.kind === 'dash' && leading.column === outer;
    if (row !== first && leading.column <= outer && !dashBesideKey) break;
    column ??= leading.column;
    const child = tokens.find((token) => token.column === column);
    if (child !== undefined) children.push(child);
  }
  return children;
}

interface Followed {
  readonly path: readonly string[];
  /** The map that holds the last key. */
  readonly map: KeyIndex | undefined;
  /** The last key, undefined at the root or where a key is unknown. */
  readonly key: KeyShape | undefined;
  /** The map that the last key opens; the root where the path is empty. */
  readonly inner: KeyIndex | undefined;
}

/** Follows keys from the root; each may be written in any accepted spelling. */
function follow(keys: readonly string[], shapes: Shapes, root: string): Followed {
  let followed: Followed = { path: [], map: undefined, key: undefined, inner: shapes.get(root) };
  for (const typed of keys) {
    const key = followed.inner?.byName.get(typed);
    if (key === undefined)
      return { path: [...followed.path, typed], map: followed.inner, key: undefined, inner: undefined };
    followed = {
      path: [...followed.path, key.key],
      map: followed.inner,
      key,
      inner: key.map === undefined ? undefined : shapes.get(key.map),
    };
  }
  return followed;
}

/** The place inside an open bracket that began on this row or a few rows above. */
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
  const { parents } = ancestorsOf({ ...line, row, text: line.rows[row] ?? '' }, token.column, token.kind);
  const block = [...parents.map((parent) => parent.token), token].flatMap(({ kind, key }) =>
    kind === 'key' ? [key] : [],
  );
  return flowPlace(
    line,
    typed,
    frame,
    follow([...block, ...frames.flatMap(({ key }) => (key === undefined ? [] : [key]))], shapes, root),
    shapes,
  );
}

function flowPlace(line: Line, typed: string, frame: FlowFrame, found: Followed, shapes: Shapes): Cursor {
  const word = typed.slice(frame.wordStart).trimStart();
  const caret = line.start + line.column;
  const rest = /^[^,}\]\n#]*/.exec(line.text.slice(line.column))?.[0].trimEnd() ?? '';
  const common = {
    ...nowhere(caret),
    path: found.path,
    flow: true,
    typed: word,
    start: caret - word.length,
    end: caret + rest.length,
  };
  if (frame.kind === 'map' && frame.key === undefined) {
    const present = frame.keys.map((key) => found.inner?.byName.get(key)?.key ?? key);
    return {
      ...common,
      place: found.inner === undefined ? 'nowhere' : 'key',
      map: found.inner,
      key: found.key,
      present: new Set(present),
    };
  }
  // A bare text in a list of maps stands for one key of the map.
  const bare =
    found.key?.text === undefined ? undefined : shapes.get(found.key.map ?? '')?.byName.get(found.key.text);
  const key = found.inner === undefined ? found.key : (bare ?? found.key);
  return { ...common, place: key === undefined ? 'nowhere' : 'value', map: found.map, key };
}

/** The nearest row at or above the caret whose value opens a bracket that may still be open at the caret. */
function openingRow(line: Line): { row: number; token: RowToken } | undefined {
  for (let row = line.row; row >= 0 && row > line.row - 12; row--) {
    const text = line.rows[row] ?? '';
    const token = tokensOf(text).at(-1);
    if (token === undefined) continue;
    const value = text.slice(token.valueColumn);
    return /^[[{]/.test(value) && (row !== line.row || token.valueColumn < line.column)
      ? { row, token }
      : undefined;
  }
  return undefined;
}

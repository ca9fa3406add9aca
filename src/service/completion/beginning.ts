import { cursorAt, type Cursor } from './cursor.ts';
import type { Writing } from './writing.ts';

/** A part of a note that can begin at a place: the note itself, or one item of a list. */
export interface Beginning {
  /** The name that the schema's shapes give the part. */
  readonly part: string;
  /** What its text would replace, in offsets. */
  readonly start: number;
  readonly end: number;
  /** Written before the first line of the part: its indentation, and the dash where none is there yet. */
  readonly lead: string;
  /** The column of the part's keys. */
  readonly column: number;
}

/** The part that can begin at an offset; none where one is there already, and none inside brackets. */
export function beginningAt(
  text: string,
  offset: number,
  { shapes, root }: Pick<Writing, 'shapes' | 'root'>,
): Beginning | undefined {
  const cursor = cursorAt(text, offset, shapes, root);
  const { place, path, key, flow, present, start, end, column, lead } = cursor;
  const part = path.length === 0 ? root : key?.list === true ? key.map : undefined;
  if (part === undefined || place !== 'key' || flow || present.size > 0) return undefined;
  const atRowStart = /(^|[\r\n])$/.test(text.slice(0, start));
  if (/^[ \t]*:/.test(text.slice(end)) || !(path.length === 0 || isItem(cursor, atRowStart)))
    return undefined;
  const pad = atRowStart ? ' '.repeat(column) : '';
  return { part, start, end, lead: `${pad}${lead}`, column: column + lead.length };
}

/** Whether the line has a dash, or would be given one: a list that is written as one map takes no item. */
const isItem = ({ lead }: Cursor, atRowStart: boolean): boolean => lead !== '' || !atRowStart;

import type { Range } from '../tree/tree.ts';

/** One line of a block: `- key: value  # comment`, as far as it has these parts. */
export interface Row extends Range {
  readonly text: string;
  /** Where the key or the bare value begins, after spaces and list dashes. */
  readonly first: number;
  /** The key as typed; undefined where the line has none. */
  readonly key: string | undefined;
  /** What is after the key, or after the dashes, without a trailing comment. */
  readonly value: Range;
}

const lead = /^[ \t]*(?:- +)*/;
const keyed = /^([^\s#'"[\]{},&*!|>%@`?:-][^#:]*?|-?[^\s#'"[\]{},&*!|>%@`?:-][^#:]*?):(?:[ \t]+|$)/;
/** A comment has a space after its sign; what has none was probably meant as text. */
const comment = /(^|[ \t])#(?=[\s#]|$)/;

/** Of a longer line only the surroundings of the offset are looked at. */
const longRow = 4000;

/** The line of a text that holds an offset. */
export function rowAt(text: string, offset: number): Row {
  const newline = text.indexOf('\n', offset);
  let start = offset === 0 ? 0 : text.lastIndexOf('\n', offset - 1) + 1;
  let end = newline < 0 ? text.length : newline;
  if (end - start > longRow) {
    start = Math.max(start, offset - longRow / 2);
    end = Math.min(end, offset + longRow / 2);
  }
  if (text[end - 1] === '\r' && end > start) end -= 1;
  return rowOf(text.slice(start, end), start);
}

/** The line after another; undefined at the end of the text. */
export function rowBehind(text: string, row: Row): Row | undefined {
  const newline = text.indexOf('\n', row.end);
  return newline < 0 ? undefined : rowAt(text, newline + 1);
}

function rowOf(text: string, start: number): Row {
  const first = lead.exec(text)?.[0].length ?? 0;
  const match = keyed.exec(text.slice(first));
  const from = first + (match?.[0].length ?? 0);
  const rest = text.slice(from);
  const cut = comment.exec(rest);
  const length = (cut === null ? rest : rest.slice(0, cut.index)).trimEnd().length;
  return {
    start,
    end: start + text.length,
    text,
    first: start + first,
    key: match?.[1]?.trimEnd(),
    value: { start: start + from, end: start + from + length },
  };
}

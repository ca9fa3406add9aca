import type { Injection } from '../../note/generated/types.ts';
import type { TextEdit } from '../../note/tree/finding.ts';
import type { Range } from '../../note/tree/tree.ts';

/** Where an entry of an anesthetic belongs: beside a key's value, with the entries that are there. */
export interface Place {
  /** The value of a key of the map that the entry belongs to; undefined where no map is known. */
  readonly beside?: Range;
  readonly entries?: readonly Injection[];
}

const lineEnd = (text: string, at: number): number => {
  const end = text.indexOf('\n', at);
  return end < 0 ? text.length : end;
};

/** The start of the line that holds a place. */
const lineStart = (text: string, at: number): number => text.lastIndexOf('\n', at - 1) + 1;

/** Edits that begin an entry with the words of a free text; undefined where its place is not sure. */
export function beginEntry(
  text: string,
  { beside, entries = [] }: Place,
  words: string,
): readonly TextEdit[] | undefined {
  const quoted = JSON.stringify(words);
  const last = entries.at(-1);
  if (last !== undefined) return besideEntry(text, last, entries.length, quoted);
  if (beside === undefined) return undefined;
  const start = lineStart(text, beside.start);
  const key = /^( *)(- )?[a-z-]+:/.exec(text.slice(start, beside.start));
  if (key === null) return undefined;
  const indent = ' '.repeat(key[1]!.length + (key[2]?.length ?? 0));
  const at = lineEnd(text, beside.end);
  return [{ start: at, end: at, text: `\n${indent}anesthetic: ${quoted}` }];
}

function besideEntry(
  text: string,
  last: Range,
  count: number,
  quoted: string,
): readonly TextEdit[] | undefined {
  const line = text.slice(lineStart(text, last.start), last.start);
  if (/^ *- $/.test(line)) {
    const at = lineEnd(text, last.end);
    return [{ start: at, end: at, text: `\n${line}${quoted}` }];
  }
  if (count === 1 && /^ *(?:- )?anesthetic: $/.test(line) && text[last.start] === '{')
    return [
      { start: last.start, end: last.start, text: '[' },
      { start: last.end, end: last.end, text: `, ${quoted}]` },
    ];
  return undefined;
}

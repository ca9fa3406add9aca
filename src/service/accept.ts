import { familyOf } from '../checks/danger.ts';
import type { Finding, TextEdit } from '../note/finding.ts';
import type { ListNode, MapNode, Node } from '../note/tree.ts';
import type { Analysis } from './analysis.ts';
import type { OfferedFix } from './offered-fix.ts';
import { columnOf, endOfRow, insertion, lineBreakOf, startOfRow } from './insert.ts';
import { entryOf, lastOffset, type PlacedMap } from './maps.ts';

/** Families about how the note is written: those are mended, not accepted. */
const written: ReadonlySet<string> = new Set(['yaml', 'shape', 'practice']);

/**
 * The fix that accepts a finding in the innermost part that may accept it, with `??` for the reason and for who says so.
 * Undefined where there is nothing to accept or no place for it.
 */
export function acceptance(
  analysis: Analysis,
  finding: Finding,
  maps: readonly PlacedMap[],
): OfferedFix | undefined {
  if (analysis.note === null || !isAcceptable(finding)) return undefined;
  const part = maps.findLast((map) => mayAccept(map) && holds(map, finding));
  const edits = part && entryEdits(analysis.text, part, finding.code);
  if (edits === undefined) return undefined;
  const title = `Accept this finding, with a reason (${finding.code})`;
  return { title, kind: 'record', sure: false, edits, code: finding.code, finding, does: 'accept' };
}

/** Whether accepting is an answer to a finding: how a note is written is mended, and what was not judged stays so. */
export function isAcceptable(finding: Finding): boolean {
  if (finding.accepted !== undefined || written.has(familyOf(finding.code))) return false;
  return !/^record\/(accepted-|check-failed|more-findings)/.test(finding.code);
}

const mayAccept = ({ index }: PlacedMap): boolean => index.byName.has('accepted');

const holds = ({ node, head }: PlacedMap, { start, end }: Finding): boolean =>
  node.start === head.start && head.start === head.end
    ? true
    : start >= Math.min(node.start, head.start) && end <= Math.max(node.end, head.end);

const itemRows = (code: string): readonly string[] => [`check: ${code}`, 'reason: ??', 'by: ??'];

const flowItem = (code: string): string => `{${itemRows(code).join(', ')}}`;

const blockItem = (code: string): readonly string[] =>
  itemRows(code).map((row, at) => `${at === 0 ? '- ' : '  '}${row}`);

function entryEdits(text: string, part: PlacedMap, code: string): readonly TextEdit[] | undefined {
  const entry = entryOf(part, 'accepted');
  if (entry === undefined) {
    const rows = ['accepted:', ...blockItem(code).map((row) => `  ${row}`)];
    return [insertion(text, part, { key: 'accepted', flow: `accepted: [${flowItem(code)}]`, rows })];
  }
  return entry.value === null ? undefined : appended(text, entry.value, code);
}

/** The acceptances that are there, and one more, in the style in which they are written. */
function appended(text: string, value: Node, code: string): readonly TextEdit[] | undefined {
  if (value.kind === 'text') return undefined;
  if (value.kind === 'map') return value.flow ? wrapped(value, code) : listed(text, value, code);
  return value.flow ? [intoFlowList(text, value, code)] : belowList(text, value, code);
}

const insert = (at: number, text: string): TextEdit => ({ start: at, end: at, text });

const wrapped = ({ start, end }: MapNode, code: string): readonly TextEdit[] => [
  insert(start, '['),
  insert(end, `, ${flowItem(code)}]`),
];

function intoFlowList(text: string, { start, items }: ListNode, code: string): TextEdit {
  const last = items.at(-1);
  return last === undefined
    ? insert(text.indexOf('[', start) + 1, flowItem(code))
    : insert(last.end, `, ${flowItem(code)}`);
}

function belowList(text: string, list: ListNode, code: string): readonly TextEdit[] | undefined {
  const last = list.items.at(-1);
  const dash = last === undefined ? -1 : text.lastIndexOf('-', last.start - 1);
  if (last === undefined || dash < startOfRow(text, last.start)) return undefined;
  return [rowsBelow(text, lastOffset(last), columnOf(text, dash), code)];
}

function rowsBelow(text: string, offset: number, column: number, code: string): TextEdit {
  const eol = lineBreakOf(text);
  const rows = blockItem(code).map((row) => `${eol}${' '.repeat(column)}${row}`);
  return insert(endOfRow(text, offset), rows.join(''));
}

/** A single acceptance in block style becomes the first item of a list: its rows move in by two. */
function listed(text: string, map: MapNode, code: string): readonly TextEdit[] | undefined {
  const first = map.entries[0];
  if (first === undefined) return undefined;
  const column = columnOf(text, first.start);
  const end = endOfRow(text, lastOffset(map));
  const moved = [...text.slice(first.start, end).matchAll(/(?:\r\n|\r|\n)(?=[^\r\n])/g)].map((match) =>
    insert(first.start + match.index + match[0].length, '  '),
  );
  return [insert(first.start, '- '), ...moved, rowsBelow(text, lastOffset(map), column, code)];
}

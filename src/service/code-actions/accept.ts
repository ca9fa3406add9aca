import { familyOf } from '../../checks/danger.ts';
import type { Finding } from '../../note/tree/finding.ts';
import type { Analysis } from '../analysis/analysis.ts';
import { addItem, isCompact, isRefused, type Fields } from '../edits/fields.ts';
import type { OfferedFix } from './offered-fix.ts';
import type { PlacedMap } from '../../note/tree/maps.ts';

/** Families about how the note is written: those are fixed, not accepted. */
const written: ReadonlySet<string> = new Set(['yaml', 'shape', 'practice']);

/**
 * The fix that accepts a finding in the innermost part that may accept it, with `??` for the reason and for who says so.
 * Undefined where there is nothing to accept or no place for it.
 */
export function acceptance(
  { text, root, note, context }: Analysis,
  finding: Finding,
  maps: readonly PlacedMap[],
): OfferedFix | undefined {
  if (note === null || root === null || !isAcceptable(finding)) return undefined;
  const part = maps.findLast((map) => mayAccept(map) && holds(map, finding));
  if (part === undefined) return undefined;
  const fields: Fields = [
    ['check', finding.code],
    ['reason', '??'],
    ['by', '??'],
    // What comes after signing says when.
    ...(note.keys.has('signed') ? [['on', context.today ?? '??'] as const] : []),
  ];
  const edits = addItem(text, part, 'accepted', fields, 'list', isCompact(text, root));
  if (isRefused(edits)) return undefined;
  const title = `Accept this finding, with a reason (${finding.code})`;
  return { title, kind: 'record', sure: false, edits, code: finding.code, finding, does: 'accept' };
}

/** Whether accepting is an answer to a finding: how a note is written is fixed, and what was not judged stays so. */
export function isAcceptable(finding: Finding): boolean {
  if (finding.accepted !== undefined || written.has(familyOf(finding.code))) return false;
  return !/^record\/(accepted-|check-failed|more-findings)/.test(finding.code);
}

const mayAccept = ({ index }: PlacedMap): boolean => index.byName.has('accepted');

const holds = ({ node, head }: PlacedMap, { start, end }: Finding): boolean =>
  node.start === head.start && head.start === head.end
    ? true
    : start >= Math.min(node.start, head.start) && end <= Math.max(node.end, head.end);

import { notRecorded } from '../../checks/record/judging.ts';
import { together } from '../../checks/together.ts';
import type { Note, Procedure } from '../../note/generated/types.ts';
import type { Finding } from '../../note/tree/finding.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { Analysis } from '../analysis/analysis.ts';
import { missingOf } from '../code-actions/missing-keys.ts';
import { mapsOf, type PlacedMap } from '../analysis/maps.ts';

/** A finding, with what an editor must know to show it at the right moment. */
export interface Watched extends Finding {
  /** The part that something is missing from: while it is being written, nobody is asked for the rest. */
  readonly missingFrom?: Range;
}

/** The findings of a note that is being written, as people are shown them. */
export function watched({ kind, root, shapes, note, judgement }: Analysis): readonly Watched[] {
  const maps = mapsOf(root, shapes, kind);
  return together(judgement.findings, note, true).map((finding) => {
    if (finding.code === notRecorded.code) return { ...finding, missingFrom: partOf(finding, note) };
    if (finding.code === 'shape/empty-value') return { ...finding, missingFrom: partAround(finding, maps) };
    const missing = missingOf(finding, maps);
    return missing === undefined ? finding : { ...finding, missingFrom: missing.map.node };
  });
}

/** The procedure that a finding is about, or the whole note. */
function partOf(finding: Range, note: Note | null): Range {
  const { start, end } = note?.procedures?.find((one) => holds(one, finding)) ?? note ?? finding;
  return { start, end };
}

const holds = ({ head, start, end }: Procedure, finding: Range): boolean =>
  finding.start >= Math.min(head.start, start) && finding.start < end;

/** The part in which a key stands that has no value yet: it is being written for as long as the caret is in there. */
function partAround(finding: Range, maps: readonly PlacedMap[]): Range {
  const around = maps.findLast(({ node }) => finding.start >= node.start && finding.end <= node.end);
  const { start, end } = around?.node ?? finding;
  return { start, end };
}

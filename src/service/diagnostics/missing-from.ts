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

/** The findings of a note that is being written. */
export function watched({ kind, root, shapes, judgement }: Analysis): readonly Watched[] {
  const maps = mapsOf(root, shapes, kind);
  return judgement.findings.map((finding) => {
    if (finding.code === 'shape/empty-value') return { ...finding, missingFrom: partAround(finding, maps) };
    const missing = missingOf(finding, maps);
    return missing === undefined ? finding : { ...finding, missingFrom: missing.map.node };
  });
}

/** The part in which a key stands that has no value yet: it is being written for as long as the caret is in there. */
function partAround(finding: Range, maps: readonly PlacedMap[]): Range {
  const around = maps.findLast(({ node }) => finding.start >= node.start && finding.end <= node.end);
  const { start, end } = around?.node ?? finding;
  return { start, end };
}

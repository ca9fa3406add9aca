import type { Finding } from '../../note/tree/finding.ts';
import { entryOf, mapsOf, type PlacedMap } from '../../note/tree/maps.ts';
import type { KeyIndex } from '../../note/tree/shape.ts';
import type { MapNode, Range } from '../../note/tree/tree.ts';
import type { Check } from '../check.ts';

/**
 * The map that lacks a key: the one that the finding points to, or else the only one that could have the key and does
 * not.
 */
export function lacking(
  key: string | undefined,
  finding: Finding,
  maps: readonly PlacedMap[],
): PlacedMap | undefined {
  if (key === undefined) return undefined;
  const able = maps.filter((map) => map.index.byName.has(key) && entryOf(map, key) === undefined);
  return able.find(({ head }) => head.start === finding.start) ?? (able.length === 1 ? able[0] : undefined);
}

/** A file that findings are about. */
interface Judged {
  readonly root: MapNode | null;
  readonly shapes: ReadonlyMap<string, KeyIndex>;
  readonly kind: 'note' | 'practice';
}

/** The findings, those about something missing with the part that it is missing from. */
export function withMissingParts(
  findings: readonly Finding[],
  byCode: ReadonlyMap<string, Check>,
  { root, shapes, kind }: Judged,
): readonly Finding[] {
  let maps: readonly PlacedMap[] | undefined;
  let completed: Finding[] | undefined;
  for (const [at, finding] of findings.entries()) {
    const check = byCode.get(finding.code);
    if (check === undefined || (check.misses === undefined && check.unfinished !== true)) continue;
    maps ??= mapsOf(root, shapes, kind);
    const missingFrom =
      check.unfinished === true
        ? partAround(finding, maps)
        : lacking(check.misses?.(finding), finding, maps)?.node;
    if (missingFrom !== undefined)
      (completed ??= [...findings])[at] = { ...finding, missingFrom: rangeOf(missingFrom) };
  }
  return completed ?? findings;
}

const rangeOf = ({ start, end }: Range): Range => ({ start, end });

/** The part that holds a key without a value: it is being written for as long as the caret is in there. */
const partAround = (finding: Range, maps: readonly PlacedMap[]): Range =>
  maps.findLast(({ node }) => finding.start >= node.start && finding.end <= node.end)?.node ?? finding;

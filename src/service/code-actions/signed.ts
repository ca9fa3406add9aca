import type { MapNode, Node, Range } from '../../note/tree/tree.ts';
import { comesAfterSigning } from '../../documents/signature/digests.ts';
import type { Analysis } from '../analysis/analysis.ts';

/** Whether somebody has signed the note. */
export const isSigned = ({ note }: Analysis): boolean => note?.keys.has('signed') === true;

/**
 * Tells of places whether what is signed stays as it is when they change: in a signed note they have to lie in what
 * comes later, as results, stitches out, events and addenda do. What was accepted and the signature itself stay too.
 */
export function leavesSigned(analysis: Analysis): (places: readonly Range[]) => boolean {
  if (!isSigned(analysis)) return () => true;
  const later = analysis.root === null ? [] : laterParts(analysis.root);
  return (places) => places.every((place) => later.some((part) => isWithin(place, part)));
}

/** What is put in at the end of a part may belong to the part around it. */
const isWithin = ({ start, end }: Range, part: Range): boolean =>
  start >= part.start && end <= part.end && start < part.end;

function laterParts(root: MapNode): readonly Range[] {
  const found: Range[] = [];
  const visit = (node: Node, depth: number): void => {
    if (node.kind === 'list') for (const item of node.items) visit(item, depth + 1);
    if (node.kind !== 'map') return;
    for (const { key, value } of node.entries)
      if (value !== null) {
        if (comesAfterSigning(key, depth === 0)) found.push(value);
        else visit(value, depth + 1);
      }
  };
  visit(root, 0);
  return found;
}

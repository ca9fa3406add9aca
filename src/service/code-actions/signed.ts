import { newestFormat } from '../../note/signature/parts.ts';
import { laterParts } from '../../note/signature/place.ts';
import { formatOf } from '../../note/signature/verify.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { Analysis } from '../analysis/analysis.ts';

/** Whether somebody has signed the note. */
export const isSigned = ({ note }: Analysis): boolean => note?.keys.has('signed') === true;

/**
 * Tells of places whether what is signed stays as it is when they change: in a signed note they have to be in what
 * comes later, as results, stitches out, events and addenda do. What was accepted and the signature itself stay too.
 */
export function leavesSigned(analysis: Analysis): (places: readonly Range[]) => boolean {
  if (!isSigned(analysis)) return () => true;
  const format = formatOf({ value: analysis.note }) ?? newestFormat;
  const later = analysis.root === null ? [] : laterParts(analysis.root, format);
  return (places) => places.every((place) => later.some((part) => isWithin(place, part)));
}

/** What is put in at the end of a part may belong to the part around it. */
const isWithin = ({ start, end }: Range, part: Range): boolean =>
  start >= part.start && end <= part.end && start < part.end;

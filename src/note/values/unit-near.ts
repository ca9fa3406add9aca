import { nearest } from '../text/nearest.ts';
import { plainUnit, unitOf, unitWords, type Kind, type UnitRow } from './units.ts';

/** The unit of a kind whose word is nearest to a misspelled one; `sure` and `other` as in `nearest`. */
export function unitNear(
  kind: Kind,
  word: string,
): { unit: UnitRow; sure: boolean; other: boolean } | undefined {
  const near = nearest(plainUnit(word), unitWords(kind), (one) => unitOf(kind, one));
  const unit = near && unitOf(kind, near.word);
  return unit && { unit, sure: near.sure, other: near.other };
}

import type { Note } from '../note/generated/types.ts';
import type { Finding } from '../note/tree/finding.ts';
import { byGravity } from '../note/tree/severity.ts';

/**
 * The findings with each that is about a value under `for-all` once, the gravest: several procedures take that value over,
 * and each of them was judged.
 */
export function oncePerValue(findings: readonly Finding[], { forAll }: Note): readonly Finding[] {
  if (forAll === undefined) return findings;
  const gravest = new Map<string, Finding>();
  for (const finding of findings) {
    const place = placeIn(finding);
    const other = gravest.get(place);
    if (other === undefined || byGravity(finding.severity, other.severity) < 0) gravest.set(place, finding);
  }
  const isShared = ({ start, end }: Finding): boolean => start >= forAll.start && end <= forAll.end;
  return findings.filter((finding) => !isShared(finding) || gravest.get(placeIn(finding)) === finding);
}

const placeIn = ({ code, form, start, end }: Finding): string => `${code} ${form} ${start} ${end}`;

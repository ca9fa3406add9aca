import { checkOf } from '../checks/index.ts';
import { familyOf } from '../checks/danger.ts';
import type { Finding, TextEdit } from '../note/finding.ts';
import type { Range } from '../note/tree.ts';
import { acceptance } from './accept.ts';
import type { Analysis } from './analysis.ts';
import { damagedParts } from './damage.ts';
import { fills } from './fill.ts';
import { mapsOf } from './maps.ts';
import type { OfferedFix } from './offered-fix.ts';

/**
 * Fixes for the findings that touch a range: the sure ones first, accepting last. Record fixes (titled "correct the
 * record: …"), filling and accepting are left out of a signed note; inside of a part with a syntax error only that error
 * is mended.
 */
export function fixesAt(analysis: Analysis, start: number, end: number): readonly OfferedFix[] {
  const touched = analysis.judgement.findings.filter((one) => one.start <= end && one.end >= start);
  if (touched.length === 0) return [];
  const damaged = damagedParts(analysis);
  const open = touched.filter((finding) => isOpen(finding, damaged));
  const mending = open.flatMap((finding) => mends(analysis, finding));
  if (isSigned(analysis)) return inOrder(mending.filter(({ kind }) => kind === 'spelling'));
  const maps = mapsOf(analysis.root, analysis.shapes, analysis.kind);
  return inOrder([
    ...mending,
    ...fills(analysis, open, maps),
    ...open.flatMap((finding) => acceptance(analysis, finding, maps) ?? []),
  ]);
}

/** The edits of all sure spelling fixes that do not overlap, in the order of the text. */
export function fixAll(analysis: Analysis): readonly TextEdit[] {
  const damaged = damagedParts(analysis);
  const taken: TextEdit[] = [];
  for (const finding of analysis.judgement.findings) {
    if (checkOf(finding.code)?.fix === undefined || !isOpen(finding, damaged)) continue;
    const fix = mends(analysis, finding).find(({ kind, sure }) => kind === 'spelling' && sure);
    if (fix?.edits.every((edit) => taken.every((other) => !overlap(edit, other))) === true)
      taken.push(...fix.edits);
  }
  return taken.sort((a, b) => a.start - b.start);
}

/** The fixes of the finding's own check. */
function mends({ text, context: { tables } }: Analysis, finding: Finding): readonly OfferedFix[] {
  const fixes = checkOf(finding.code)?.fix?.({ text, tables }, finding) ?? [];
  return fixes.map((fix) => ({ ...fix, code: finding.code, finding, does: 'mend' }));
}

/** Whether a finding is believed: it is an error of the YAML itself, or no such error stands in its part. */
const isOpen = ({ code, start }: Finding, damaged: readonly Range[]): boolean =>
  familyOf(code) === 'yaml' || damaged.every((part) => start < part.start || start >= part.end);

const isSigned = ({ note }: Analysis): boolean => note?.keys.has('signed') === true;

const overlap = (a: Range, b: Range): boolean => a.start === b.start || (a.start < b.end && b.start < a.end);

const order = ['mend', 'fill', 'accept'] as const;

const inOrder = (fixes: readonly OfferedFix[]): readonly OfferedFix[] =>
  [...fixes].sort((a, b) => rank(a) - rank(b));

const rank = ({ does, kind, sure }: OfferedFix): number =>
  order.indexOf(does) * 4 + (kind === 'spelling' ? 0 : 2) + (sure ? 0 : 1);

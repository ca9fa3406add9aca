import { checkOf } from '../../checks/index.ts';
import { familyOf } from '../../checks/danger.ts';
import type { Finding, Fix, TextEdit } from '../../note/tree/finding.ts';
import { byGravity } from '../../note/tree/severity.ts';
import { applyEdits, composed } from '../../note/tree/edit.ts';
import type { Range } from '../../note/tree/tree.ts';
import { acceptance } from './accept.ts';
import { analyse, analysePractice, type Analysis } from '../analysis/analysis.ts';
import { recordFixesOf } from './record-fixes.ts';
import { damagedParts } from './damage.ts';
import { fills } from './missing-keys.ts';
import { mapsOf } from '../../note/tree/maps.ts';
import { nextStep } from './next-steps.ts';
import { plainly } from './plainly.ts';
import { addsNoDamage, holds, keepsDangers } from './holds.ts';
import type { OfferedFix } from './offered-fix.ts';
import { isSigned, leavesSigned } from './signed.ts';

/**
 * Fixes for the findings that touch a range: how a thing is written first and the sure ones of these before the rest, then
 * what is to be done now, what corrects the record, accepting, and what fills in what is missing; where something is
 * missing, filling comes before accepting. Inside of a part with a syntax error only that error is fixed.
 *
 * Of a signed note nothing is changed that the signature covers, and no record is corrected.
 */
export function fixesAt(analysis: Analysis, start: number, end: number): readonly OfferedFix[] {
  const touched = analysis.judgement.findings.filter((one) => one.start <= end && one.end >= start);
  if (touched.length === 0) return [];
  const damaged = damagedParts(analysis);
  const open = touched.filter((finding) => isOpen(finding, damaged));
  const maps = mapsOf(analysis.root, analysis.shapes, analysis.kind);
  const leaves = leavesSigned(analysis);
  return inOrder([
    ...open.flatMap((finding) => mends(analysis, finding)).filter(({ edits }) => leaves(edits)),
    ...fills(analysis, open, maps, leaves),
    ...(isSigned(analysis) ? [] : distinct(open.flatMap((finding) => recordFixes(analysis, finding)))),
    // Both are in parts of the note that come after signing.
    ...open.flatMap((finding) => nextStep(analysis, finding, maps) ?? []),
    ...open.flatMap((finding) => acceptance(analysis, finding, maps) ?? []),
  ]).filter((fix) => holds(analysis, fix));
}

/** A fix often shows more to fix; no note needs as many rounds. */
const mostRounds = 10;

/**
 * The edits of all sure spelling fixes, and of those that they show, in the order of the text: done twice they change
 * nothing more. None in what is signed.
 */
export function fixAll(analysis: Analysis): readonly TextEdit[] {
  let edits = fixOnce(analysis);
  for (let round = 1, more = edits; more.length > 0 && round < mostRounds; round++) {
    more = fixOnce(alike(analysis, applyEdits(analysis.text, edits)));
    if (more.length > 0) edits = composed(analysis.text, edits, more);
  }
  return edits;
}

/** A text judged as another was. */
const alike = ({ kind, context }: Analysis, text: string): Analysis =>
  kind === 'note' ? analyse(text, context) : analysePractice(text, context);

/** The edits of all sure spelling fixes that do not overlap. */
function fixOnce(analysis: Analysis): readonly TextEdit[] {
  const damaged = damagedParts(analysis);
  const leaves = leavesSigned(analysis);
  const taken: TextEdit[] = [];
  for (const finding of analysis.judgement.findings) {
    if (checkOf(finding.code)?.fix === undefined || !isOpen(finding, damaged)) continue;
    const fix = ownFixes(analysis, finding).find(({ kind, sure }) => kind === 'spelling' && sure);
    if (fix === undefined || !leaves(fix.edits)) continue;
    if (!holds(analysis, mending(fix, finding)) || !keepsDangers(analysis, fix.edits)) continue;
    if (fix.edits.every((edit) => taken.every((other) => !overlap(edit, other)))) taken.push(...fix.edits);
  }
  if (!addsNoDamage(analysis, taken) || !keepsDangers(analysis, taken)) return [];
  return taken.sort((a, b) => a.start - b.start);
}

/** The fixes of the finding's own check that change how a thing is written. */
const mends = (analysis: Analysis, finding: Finding): readonly OfferedFix[] =>
  ownFixes(analysis, finding)
    .filter(({ kind }) => kind === 'spelling')
    .map((fix) => mending(fix, finding));

/** What changes the record, of the check itself and of all checks alike. */
const recordFixes = (analysis: Analysis, finding: Finding): readonly OfferedFix[] =>
  [
    ...recordFixesOf(analysis, finding),
    ...plainly(analysis, finding),
    ...ownFixes(analysis, finding).filter(({ kind }) => kind === 'record'),
  ].map((fix) => mending(fix, finding));

const mending = ({ title, kind, sure, edits }: Fix, finding: Finding): OfferedFix => ({
  title,
  kind,
  sure,
  edits,
  code: finding.code,
  finding,
  does: 'mend',
});

const ownFixes = ({ text, context: { tables } }: Analysis, finding: Finding): readonly Fix[] =>
  checkOf(finding.code)?.fix?.({ text, tables }, finding) ?? [];

/** Several findings about one value are corrected alike. */
function distinct(fixes: readonly OfferedFix[]): readonly OfferedFix[] {
  const byEdit = new Map<string, OfferedFix>();
  for (const fix of [...fixes].sort((a, b) => byGravity(a.finding.severity, b.finding.severity))) {
    const edit = JSON.stringify(fix.edits);
    if (!byEdit.has(edit)) byEdit.set(edit, fix);
  }
  return [...byEdit.values()];
}

/** Whether a finding is believed: it is an error of the YAML itself, or no such error is in its part. */
const isOpen = ({ code, start }: Finding, damaged: readonly Range[]): boolean =>
  familyOf(code) === 'yaml' || damaged.every((part) => start < part.start || start >= part.end);

const overlap = (a: Range, b: Range): boolean => a.start === b.start || (a.start < b.end && b.start < a.end);

const inOrder = (fixes: readonly OfferedFix[]): readonly OfferedFix[] =>
  [...fixes].sort((a, b) => rank(a) - rank(b) || byGravity(a.finding.severity, b.finding.severity));

function rank({ does, kind, sure, code }: OfferedFix): number {
  if (does === 'mend') return kind === 'record' ? 3 : sure ? 0 : 1;
  if (does === 'plan') return 2;
  if (does === 'fill') return 5;
  return checkOf(code)?.misses === undefined ? 4 : 6;
}

import type { Finding } from '../note/tree/finding.ts';

type Graded = Pick<Finding, 'code' | 'severity'>;

const dangerFamilies: ReadonlySet<string> = new Set(['dose', 'allergy', 'device']);
const dangerCodes: ReadonlySet<string> = new Set(['specimen/wrong-medium']);

/** Codes that refuse a file as a whole: nothing else can be said about it. */
export const refusals: ReadonlySet<string> = new Set([
  'yaml/too-large',
  'yaml/too-deep',
  'yaml/not-text',
  'yaml/empty',
  'shape/not-a-note',
  'shape/newer-format',
]);

/** Codes of findings that say that not all was judged. */
const incomplete: ReadonlySet<string> = new Set([
  ...refusals,
  'practice/lowered-danger',
  'practice/not-in-force',
  'record/check-failed',
  'record/more-findings',
]);

export const familyOf = (code: string): string => code.slice(0, code.indexOf('/'));

/** An error that can hurt the patient: it stays an error whatever the practice or an acceptance says. */
export function isDanger({ code, severity }: Graded): boolean {
  return severity === 'error' && (dangerFamilies.has(familyOf(code)) || dangerCodes.has(code));
}

/**
 * Whether a finding keeps its severity: a danger, and what says that a part of the note was not judged, since
 * silence about it would look like a clean note.
 */
export function isFixed(finding: Graded): boolean {
  return (
    isDanger(finding) ||
    incomplete.has(finding.code) ||
    (finding.severity === 'error' && familyOf(finding.code) === 'yaml')
  );
}

import type { Report } from '../../note/tree/finding.ts';
import type { Check, Subject } from '../check.ts';
import { format } from '../sources.ts';

/** At the head of the note: what is wrong is in another file. */
function notInForce({ tables: { gap }, dose }: Subject): readonly Report[] {
  if (gap === undefined) return [];
  const given = dose.given.length > 0 || dose.later.some((later) => later.given.length > 0);
  return gap.form === 'file' || given ? [{ at: { start: 0, end: 0 }, form: gap.form }] : [];
}

export const check: Check = {
  code: 'practice/not-in-force',
  severity: 'error',
  title: 'A practice file that is not in force for this note',
  why: 'What a practice wrote down must not give way to published values in silence: its limits may be the stricter ones.',
  sources: [format],
  messages: {
    file: 'The practice file of this note can’t be read, so none of its limits, windows, days and words is in force, and no dose is judged. Correct practice.wheal.yaml.',
    rows: 'An entry of the practice file that may hold a dose limit can’t be read, so the dose is not judged. Correct practice.wheal.yaml.',
  },
  find: notInForce,
};

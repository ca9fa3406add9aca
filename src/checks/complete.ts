import type { Part } from '../note/tree/leaf.ts';
import type { Subject } from './check.ts';

/** Keys that checks find missing, by the part in which they look for them. */
const wanted = {
  visit: ['clinician', 'consent', 'time-out', 'aftercare'],
  patient: ['born', 'allergies'],
  procedure: [
    ...['lesion', 'question', 'depth', 'dressing', 'complications'],
    ...['hemostasis', 'specimen', 'closure'],
  ],
  specimen: ['label', 'medium'],
} as const;

const lacks = ({ keys }: Part, wantedKeys: readonly string[]): boolean => {
  for (const key of wantedKeys) if (!keys.has(key)) return true;
  return false;
};

/** Whether the visit or the patient lacks a key that a careful record has. */
export const isVisitIncomplete = ({ note }: Subject): boolean =>
  lacks(note, wanted.visit) || (note.patient !== undefined && lacks(note.patient, wanted.patient));

/** Whether a procedure lacks such a key. */
export const isProcedureIncomplete = ({ note }: Subject): boolean =>
  note.procedures?.some((procedure) => lacks(procedure, wanted.procedure)) === true;

/** Whether a specimen lacks such a key. */
export const isSpecimenIncomplete = ({ note }: Subject): boolean =>
  note.procedures?.some(({ specimen }) => specimen?.some((one) => lacks(one, wanted.specimen))) === true;

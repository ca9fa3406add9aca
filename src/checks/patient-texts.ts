import type { Note } from '../note/generated/types.ts';
import type { Leaf } from '../note/tree/leaf.ts';

/** What is said of the patient in free words: conditions, medicines, and the remarks of the procedures. */
export function patientTexts({ patient, procedures }: Note): Leaf<string>[] {
  const texts: Leaf<string>[] = [];
  for (const list of [patient?.conditions, patient?.medications])
    for (const leaf of list ?? []) texts.push(leaf);
  for (const { remarks } of procedures ?? []) if (remarks !== undefined) texts.push(remarks);
  return texts;
}

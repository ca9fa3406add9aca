import type { Note, Procedure, Specimen } from '../../note/generated/types.ts';

/** Every specimen of a note that was sent, with its procedure. */
export function sentSpecimens(
  note: Note,
): readonly { readonly procedure: Procedure; readonly specimen: Specimen }[] {
  const found: { readonly procedure: Procedure; readonly specimen: Specimen }[] = [];
  for (const procedure of note.procedures ?? [])
    for (const specimen of procedure.specimen ?? [])
      if (!specimen.keys.has('not-sent')) found.push({ procedure, specimen });
  return found;
}

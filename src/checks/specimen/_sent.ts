import type { Procedure, Specimen } from '../../note/generated/types.ts';
import type { Subject } from '../check.ts';
import { shared } from '../shared.ts';

/** A specimen that was sent, with its procedure. */
export interface Sent {
  readonly procedure: Procedure;
  readonly specimen: Specimen;
}

/** Every specimen of a note that was sent; looked for once for a note. */
export const sentSpecimens = shared(({ note }: Subject): readonly Sent[] => {
  const found: Sent[] = [];
  for (const procedure of note.procedures ?? [])
    for (const specimen of procedure.specimen ?? [])
      if (!specimen.keys.has('not-sent')) found.push({ procedure, specimen });
  return found;
});

import type { Note } from '../../note/generated/types.ts';
import type { Source } from '../../note/read.ts';
import { digestsOf, partsOf } from './digests.ts';

/** A part of a signed note that is not as it was. */
export interface Change {
  /** As the digests call it: `patient`, `procedure 2`. */
  readonly part: string;
  readonly what: 'changed' | 'added' | 'removed';
}

/** Whether a note is as it was signed. */
export type Verification =
  | { readonly kind: 'unsigned' }
  /** Signed in words only: without digests nothing can be compared. */
  | { readonly kind: 'no digests'; readonly by: string; readonly at: string }
  | {
      readonly kind: 'signed';
      readonly by: string;
      readonly at: string;
      readonly changes: readonly Change[];
    };

const acceptedPart = /^accepted \d+$/;

/**
 * Compares a note with the digests of its signature. This shows change, not identity: whoever can write the file can
 * sign it anew.
 */
export async function verify({ value: note, root }: Source<Note>): Promise<Verification> {
  const signed = note?.signed;
  if (signed === undefined || root === null) return { kind: 'unsigned' };
  const [by, at] = [signed.by?.text ?? '', signed.at?.text ?? ''];
  const kept = new Map(
    (signed.digests ?? []).map(({ name, value }) => [name, value.text.trim().toLowerCase()]),
  );
  if (kept.size === 0) return { kind: 'no digests', by, at };
  const now = await digestsOf(partsOf(root, { by, at }));
  return { kind: 'signed', by, at, changes: [...changedParts(kept, now), ...acceptances(kept, now)] };
}

function* changedParts(
  kept: ReadonlyMap<string, string>,
  now: ReadonlyMap<string, string>,
): Generator<Change> {
  for (const [part, digest] of kept) {
    if (acceptedPart.test(part)) continue;
    const present = now.get(part);
    if (present === undefined) yield { part, what: 'removed' };
    else if (present !== digest) yield { part, what: 'changed' };
  }
  for (const part of now.keys())
    if (!kept.has(part) && !acceptedPart.test(part)) yield { part, what: 'added' };
}

/** What was accepted at signing has to be there still; what is accepted later is free to come. */
function* acceptances(
  kept: ReadonlyMap<string, string>,
  now: ReadonlyMap<string, string>,
): Generator<Change> {
  const present = new Set([...now].filter(([part]) => acceptedPart.test(part)).map(([, digest]) => digest));
  for (const [part, digest] of kept)
    if (acceptedPart.test(part) && !present.has(digest)) yield { part, what: 'changed' };
}

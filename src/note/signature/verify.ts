import type { Note } from '../generated/types.ts';
import type { Source } from '../read.ts';
import type { MapNode, Node, Range } from '../tree/tree.ts';
import { readMoment } from '../values/dates.ts';
import { acceptedForm, itemsOf, keyOf } from './canonical.ts';
import {
  acceptedIn,
  digestOfSignature,
  digestsOf,
  partsOf,
  signaturePart,
  type Format,
  type Signer,
} from './parts.ts';
import { sha256 } from './sha256.ts';
import { unreadIn } from './unread.ts';

/** A part of a signed note that is not as it was, or can't be taken for what was signed. */
export interface Change {
  /** As the digests call it: `patient`, `procedure 2`; or what it is: `text`, `an accepted finding`, `an addendum`. */
  readonly part: string;
  readonly what: 'changed' | 'added' | 'removed' | 'not read' | 'without author and date';
  /** Its place, where the part's name does not say it. */
  readonly at?: Range;
}

/** Whether a note is as it was signed. */
export type Verification =
  | { readonly kind: 'unsigned' }
  /** It is signed, and nobody can read how. */
  | { readonly kind: 'unreadable'; readonly why: 'text' | 'format' }
  /** Signed in words only: without digests nothing can be compared. */
  | { readonly kind: 'no digests'; readonly by: string; readonly at: string }
  | {
      readonly kind: 'signed';
      readonly by: string;
      readonly at: string;
      /** The older way, 1, does not cover the list of its parts, nor text that is not read. */
      readonly format: Format;
      readonly changes: readonly Change[];
    };

const acceptedPart = /^accepted \d+$/;

/**
 * Compares a note with the digests of its signature. This shows change, not identity: whoever can write the file can
 * sign it again.
 */
export function verify(source: Source<Note>): Verification {
  const { value: note, asTyped: root, text } = source;
  if (note === null || root === null || !note.keys.has('signed'))
    return seemsSigned(text) ? { kind: 'unreadable', why: 'text' } : { kind: 'unsigned' };
  const who = signerOf(note);
  const kept = digestsIn(note);
  if (kept.size === 0) return { kind: 'no digests', ...who };
  const format = formatOf(source);
  if (format === undefined) return { kind: 'unreadable', why: 'format' };
  const now = digestsOf(partsOf(root, format));
  const changes = [...changedParts(kept, now), ...acceptances(kept, now), ...signature(kept, who, format)];
  const other = format === 1 ? [] : [...unread(source), ...unattributed(root, kept)];
  return { kind: 'signed', ...who, format, changes: [...changes, ...other] };
}

const signerOf = ({ signed }: Note): Signer => ({ by: signed?.by?.text ?? '', at: signed?.at?.text ?? '' });

/** The digests that were written at signing, by the names of their parts. */
const digestsIn = ({ signed }: Note): ReadonlyMap<string, string> =>
  new Map((signed?.digests ?? []).map(({ name, value }) => [name, value.text.trim().toLowerCase()]));

/** How a note is signed; undefined where this version does not know the way. */
export function formatOf({ value: note }: Pick<Source<Note>, 'value'>): Format | undefined {
  const signed = note?.signed;
  if (signed?.keys.has('format') !== true) return 1;
  const text = signed.format?.text.trim();
  return text === '2' ? 2 : text === '1' ? 1 : undefined;
}

/** Whether a text holds a signature that can't be found by reading it. */
const seemsSigned = (text: string): boolean =>
  /^[ \t"'-]*signed["']?[ \t]*:/m.test(text) && text.includes('digests');

function* changedParts(
  kept: ReadonlyMap<string, string>,
  now: ReadonlyMap<string, string>,
): Generator<Change> {
  for (const [part, digest] of kept) {
    if (acceptedPart.test(part) || part === signaturePart) continue;
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

function* signature(kept: ReadonlyMap<string, string>, who: Signer, format: Format): Generator<Change> {
  const digests = new Map([...kept].filter(([part]) => part !== signaturePart));
  const digest = kept.get(signaturePart);
  if (digest === undefined) yield { part: signaturePart, what: 'removed' };
  else if (digest !== digestOfSignature(who, digests, format)) yield { part: signaturePart, what: 'changed' };
}

function* unread(source: Source<Note>): Generator<Change> {
  const seen = new Set<number>();
  for (const at of unreadIn(source)) {
    if (seen.has(at.start)) continue;
    seen.add(at.start);
    yield { part: 'text', what: 'not read', at };
  }
}

/** What came after signing says who wrote it and when. */
function* unattributed(root: MapNode, kept: ReadonlyMap<string, string>): Generator<Change> {
  const signed = new Set([...kept].flatMap(([part, digest]) => (acceptedPart.test(part) ? [digest] : [])));
  for (const { node, place } of acceptedIn(root, 'note', ''))
    if (!signed.has(sha256(acceptedForm(place, node))) && !says(node, 'accepted', 'by', 'on'))
      yield { part: 'an accepted finding', what: 'without author and date', at: node };
  for (const { key, value } of root.entries)
    if (keyOf(key, 'note')?.key === 'addenda')
      for (const node of itemsOf(value))
        if (!says(node, 'addendum', 'by', 'at'))
          yield { part: 'an addendum', what: 'without author and date', at: node };
}

/** Whether a map names its author and a date that can be read. */
function says(node: Node, shape: string, author: string, date: string): boolean {
  if (node.kind !== 'map') return false;
  const text = (name: string): string => {
    const value = node.entries.find(({ key }) => keyOf(key, shape)?.key === name)?.value;
    return value?.kind === 'text' && value.text !== '??' ? value.text.trim() : '';
  };
  return text(author) !== '' && readMoment(text(date)).value !== undefined;
}

import type { MapNode, Node } from '../tree/tree.ts';
import { acceptedForm, canonical, itemsOf, keyOf, type Part } from './canonical.ts';
import { olderAcceptances, olderLater, olderParts } from './older-parts.ts';
import { sha256 } from './sha256.ts';

/** How a note was signed: 1 is the older way, 2 covers the list of its parts too and says so in `signed.format`. */
export type Format = 1 | 2;

export const newestFormat: Format = 2;

/** Who signs, and the local date and time. */
export interface Signer {
  readonly by: string;
  readonly at: string;
}

/** Parts of a note that a signature covers by their names, each in canonical form. */
export type Parts = ReadonlyMap<string, string>;

/**
 * The parts of a note that a signature covers: each key of the visit, each procedure, and each finding that had been
 * accepted. What the schema marks as written after signing is left out: results, stitches out, events, addenda.
 */
export function partsOf(root: MapNode, format: Format): Parts {
  const parts = new Map<string, string>();
  const later = format === 1 ? olderLater : isUnsigned;
  for (const { name, node, shape } of format === 1 ? olderParts(root) : newerParts(root))
    parts.set(unused(parts, name), canonical(node, later, shape));
  const accepted = format === 1 ? olderAcceptances(root) : acceptances(root);
  for (const [index, form] of accepted.entries()) parts.set(`accepted ${index + 1}`, form);
  return parts;
}

export const isUnsigned = (key: string, shape: string | undefined): boolean =>
  keyOf(key, shape)?.unsigned === true;

function* newerParts(root: MapNode): Generator<Part> {
  for (const entry of root.entries) {
    const key = keyOf(entry.key, 'note');
    if (key?.unsigned === true) continue;
    const procedures = key?.key === 'procedures' ? itemsOf(entry.value) : [];
    if (procedures.length > 0)
      for (const [index, node] of procedures.entries())
        yield { name: `procedure ${index + 1}`, node, shape: key?.map };
    else yield { name: key?.key ?? entry.key, node: entry.value, shape: key?.map };
  }
}

const unused = (parts: Parts, name: string): string =>
  parts.has(name) ? unused(parts, `${name} again`) : name;

/** The canonical form of each accepted finding of the visit, with its place; what is accepted of events comes later. */
function acceptances(root: MapNode): readonly string[] {
  const visit: MapNode = {
    ...root,
    entries: root.entries.filter(({ key }) => key === 'accepted' || !isUnsigned(key, 'note')),
  };
  return [...acceptedIn(visit, 'note', '')].map(({ node, place }) => acceptedForm(place, node));
}

/** An accepted finding, with the place of what it is in. */
export interface Acceptance {
  readonly node: Node;
  readonly place: string;
}

/** Each finding that is accepted in a note, wherever it is. */
export function* acceptedIn(
  node: Node | null,
  shape: string | undefined,
  place: string,
): Generator<Acceptance> {
  if (node === null || node.kind === 'text') return;
  if (node.kind === 'list') {
    for (const [index, item] of node.items.entries()) yield* acceptedIn(item, shape, `${place}/${index}`);
    return;
  }
  for (const { key: typed, value } of node.entries) {
    const key = keyOf(typed, shape);
    if (key?.key === 'accepted') for (const item of itemsOf(value)) yield { node: item, place };
    else yield* acceptedIn(value, key?.map, `${place}/${typed}`);
  }
}

/** The digest of each part. */
export const digestsOf = (parts: Parts): ReadonlyMap<string, string> =>
  new Map([...parts].map(([name, form]) => [name, sha256(form)]));

/**
 * The digest over who signs and when, and, other than in the older way, over the list of all parts with their digests, so
 * that no part can be taken out together with its digest.
 */
export function digestOfSignature(
  { by, at }: Signer,
  digests: ReadonlyMap<string, string>,
  format: Format,
): string {
  if (format === 1) return sha256(JSON.stringify({ at, by }));
  const sorted = [...digests].sort(([a], [b]) => (a < b ? -1 : 1));
  return sha256(JSON.stringify({ at, by, format, parts: sorted }));
}

/** The name under which the digest of the signature itself is kept. */
export const signaturePart = 'signature';

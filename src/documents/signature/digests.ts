import { noteIndex } from '../../note/read.ts';
import type { Entry, MapNode, Node } from '../../note/tree/tree.ts';
import { bytesOf } from '../bytes.ts';
import { canonical } from './canonical.ts';

/** Top-level keys that come after signing, or are the signature itself. */
const afterSigning: ReadonlySet<string> = new Set(['signed', 'events', 'accepted', 'addenda']);
/** Keys at any depth that come after signing. What was accepted before is covered on its own. */
const laterInside: ReadonlySet<string> = new Set(['results', 'sutures-out', 'accepted']);

/** Parts that a signature covers by their names, each in canonical form. */
export type SignedParts = ReadonlyMap<string, string>;

/**
 * The parts of a note that a signature covers: each key of the visit, each procedure, who signs and when, and each
 * finding that had been accepted. What comes later is left out: results, stitches out, events, addenda.
 */
export function partsOf(root: MapNode, signed: { readonly by: string; readonly at: string }): SignedParts {
  const parts = new Map<string, string>();
  for (const entry of root.entries) {
    const name = canonicalKey('note', entry.key);
    if (name === 'procedures') {
      for (const [index, node] of itemsOf(entry).entries())
        parts.set(unused(parts, `procedure ${index + 1}`), canonical(node, isLater));
    } else if (!afterSigning.has(name)) parts.set(unused(parts, name), canonical(entry.value, isLater));
  }
  for (const [index, form] of acceptedIn(root).entries()) parts.set(`accepted ${index + 1}`, form);
  parts.set('signature', canonicalPair(signed.by, signed.at));
  return parts;
}

const canonicalPair = (by: string, at: string): string =>
  `{"at":${JSON.stringify(at)},"by":${JSON.stringify(by)}}`;

const isLater = (key: string): boolean => laterInside.has(key) || key === 'result';

/**
 * Whether what stands under a key is written after signing, so that a change there leaves the signature as it is. The
 * signature itself is not, nor are the findings that had been accepted.
 * @param top whether it is a key of the whole note
 */
export function comesAfterSigning(key: string, top: boolean): boolean {
  if (key === 'signed' || key === 'accepted') return false;
  return top ? afterSigning.has(canonicalKey('note', key)) : isLater(key);
}

/** The name of a top-level key, whichever of its spellings is used. */
const canonicalKey = (shape: string, key: string): string =>
  noteIndex.get(shape)?.byName.get(key)?.key ?? key;

function unused(parts: ReadonlyMap<string, string>, name: string): string {
  return parts.has(name) ? unused(parts, `${name} again`) : name;
}

function itemsOf({ value }: Entry): readonly Node[] {
  if (value === null) return [];
  return value.kind === 'list' ? value.items : [value];
}

/** The canonical form of each accepted finding, wherever it stands, with the place where it stands. */
function acceptedIn(root: MapNode): readonly string[] {
  const found: string[] = [];
  const visit = (node: Node | null, place: string): void => {
    if (node === null || node.kind === 'text') return;
    if (node.kind === 'list') {
      for (const [index, item] of node.items.entries()) visit(item, `${place}/${index}`);
      return;
    }
    for (const entry of node.entries) {
      if (entry.key === 'events' || entry.key === 'addenda' || entry.key === 'signed') continue;
      if (entry.key !== 'accepted') visit(entry.value, `${place}/${entry.key}`);
      else for (const item of itemsOf(entry)) found.push(`${JSON.stringify(place)}:${canonical(item)}`);
    }
  };
  visit(root, '');
  return found;
}

/** SHA-256 of a text in UTF-8, as 64 hexadecimal digits. */
export async function sha256(text: string): Promise<string> {
  const bytes = bytesOf(text);
  const digest = await globalThis.crypto.subtle.digest('SHA-256', new Uint8Array(bytes));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** The digest of each part. */
export async function digestsOf(parts: SignedParts): Promise<ReadonlyMap<string, string>> {
  return new Map(
    await Promise.all([...parts].map(async ([name, form]) => [name, await sha256(form)] as const)),
  );
}

import { noteIndex } from '../read.ts';
import type { KeyShape } from '../tree/shape.ts';
import type { Node } from '../tree/tree.ts';

/** What is left out of a map, by its key and the name of its shape; a map of unknown keys has no shape. */
export type LeftOut = (key: string, shape: string | undefined) => boolean;

const nothing: LeftOut = () => false;

/**
 * The canonical form (RFC 8785) of a part of a note as JSON: every scalar is the text as typed, keys are in the order
 * of their UTF-16 units, with nothing between them. Comments, quotes, order of keys and block or flow style leave it
 * as it is.
 * @param shape the name of the map's shape in the schema, where one is known
 */
export function canonical(node: Node | null, leftOut: LeftOut = nothing, shape?: string): string {
  if (node === null) return 'null';
  if (node.kind === 'text') return jsonText(node.text);
  if (node.kind === 'list') return `[${node.items.map((item) => canonical(item, leftOut, shape)).join(',')}]`;
  const kept = node.entries.filter(({ key }) => !leftOut(key, shape));
  // A key that occurs twice is a fault of the note; both count, so that neither can be changed unseen.
  const sorted = [...kept].sort((a, b) => (a.key === b.key ? 0 : a.key < b.key ? -1 : 1));
  const pairs = sorted.map(
    ({ key, value }) => `${jsonText(key)}:${canonical(value, leftOut, keyOf(key, shape)?.map)}`,
  );
  return `{${pairs.join(',')}}`;
}

/** A key of a map by any of its spellings; undefined where the map has no such key. */
export const keyOf = (key: string, shape: string | undefined): KeyShape | undefined =>
  shape === undefined ? undefined : noteIndex.get(shape)?.byName.get(key);

/** RFC 8785 escapes as JSON.stringify does; half a character, which it does not allow, stays as its escape. */
const jsonText = (text: string): string => JSON.stringify(text);

/** A part of a note that a signature covers, before it has its canonical form. */
export interface Part {
  readonly name: string;
  readonly node: Node | null;
  readonly shape: string | undefined;
}

export const itemsOf = (node: Node | null): readonly Node[] =>
  node === null ? [] : node.kind === 'list' ? node.items : [node];

/** How an accepted finding and the place of what it is in are compared. */
export const acceptedForm = (place: string, node: Node): string =>
  `${JSON.stringify(place)}:${canonical(node)}`;

import type { KeyIndex, KeyShape } from '../note/tree/shape.ts';
import type { Entry, MapNode, Node, Range } from '../note/tree/tree.ts';

/** Where a validator's path leads in the tree. */
export interface Place {
  readonly node: Node;
  /** The definition of the map that is here. */
  readonly map: string;
  /** The map that holds the key. */
  readonly holder: MapNode;
  /** Where to point at the whole: its key, or the first key of a list item. */
  readonly at: Range;
  /** The key in whose value this is. */
  readonly key: string;
  readonly required: boolean;
  /** Whether this is an item of a list. */
  readonly item: boolean;
  readonly path: readonly (string | number)[];
}

/** Follows a JSON pointer of canonical keys down the tree. Undefined where it leads nowhere. */
export function placeOf(
  root: MapNode,
  name: string,
  index: ReadonlyMap<string, KeyIndex>,
  respelled: ReadonlyMap<Entry, KeyShape>,
  pointer: string,
): Place | undefined {
  const start = { start: root.start, end: root.start };
  let place: Place | undefined = {
    node: root,
    map: name,
    holder: root,
    at: root.entries[0] ?? start,
    key: name,
    required: false,
    item: false,
    path: [],
  };
  for (const part of pointer.split('/').slice(1)) {
    if (place === undefined) return undefined;
    const segment = part.replace(/~1/g, '/').replace(/~0/g, '~');
    place = place.node.kind === 'list' ? itemOf(place, place.node.items, segment) : valueOf(place, segment);
  }
  return place;

  function valueOf(from: Place, segment: string): Place | undefined {
    if (from.node.kind !== 'map') return undefined;
    const known = index.get(from.map);
    const entry = from.node.entries.find(
      (one) => (known?.byName.get(one.key)?.key ?? respelled.get(one)?.key ?? one.key) === segment,
    );
    if (entry === undefined) return undefined;
    return {
      node: entry.value ?? nothingAt(entry.end),
      map: known?.byName.get(segment)?.map ?? '',
      holder: from.node,
      at: entry,
      key: segment,
      required: known?.shape.required.includes(segment) === true,
      item: false,
      path: [...from.path, segment],
    };
  }
}

function itemOf(from: Place, items: readonly Node[], segment: string): Place | undefined {
  const node = items[Number(segment)];
  if (node === undefined) return undefined;
  const first = node.kind === 'map' ? node.entries[0] : undefined;
  return { ...from, node, at: first ?? node, item: true, path: [...from.path, Number(segment)] };
}

const nothingAt = (at: number): Node => ({ kind: 'text', start: at, end: at, text: '', inner: at });

import type { KeyIndex } from './shape.ts';
import type { Entry, MapNode, Node, Range } from './tree.ts';

type Shapes = ReadonlyMap<string, KeyIndex>;

/** A map of the file with the keys that it may have. */
export interface PlacedMap {
  readonly node: MapNode;
  readonly index: KeyIndex;
  /** Where the file's checks point when something is missing from it: its key, or the first key of its list item. */
  readonly head: Range;
}

/** Every map of a file whose keys the schema knows, the outer ones first. */
export function mapsOf(root: MapNode | null, shapes: Shapes, name: string): readonly PlacedMap[] {
  const found: PlacedMap[] = [];
  const add = (node: Node, index: KeyIndex | undefined, head: Range): void => {
    if (node.kind !== 'map' || index === undefined) return;
    found.push({ node, index, head });
    for (const entry of node.entries) {
      const { value } = entry;
      const key = value === null ? undefined : index.byName.get(entry.key);
      if (value === null || key?.map === undefined) continue;
      const inner = shapes.get(key.map);
      if (value.kind === 'list') for (const item of value.items) add(item, inner, firstKeyOf(item));
      else add(value, inner, entry);
    }
  };
  if (root !== null) add(root, shapes.get(name), { start: root.start, end: root.start });
  return found;
}

const firstKeyOf = (node: Node): Range => (node.kind === 'map' ? (node.entries[0] ?? node) : node);

/** The entry of a map that has a key, in whichever spelling. */
export const entryOf = ({ node, index }: PlacedMap, key: string): Entry | undefined =>
  node.entries.find((entry) => index.byName.get(entry.key)?.key === key);

/** Where the last thing in a node ends; the node itself may run on over empty lines and comments. */
export function lastOffset(node: Node): number {
  if (node.kind === 'text' || node.flow) return node.end;
  const last: Node | Entry | undefined =
    node.kind === 'list' ? node.items.at(-1) : (node.entries.at(-1)?.value ?? node.entries.at(-1));
  if (last === undefined) return node.end;
  return 'kind' in last ? lastOffset(last) : last.end;
}

import type { KeyIndex, KeyShape } from '../note/shape.ts';
import type { Entry, MapNode, Node, Range } from '../note/tree.ts';

/** What stands at an offset of a note that was read. */
export interface Place {
  /** Canonical keys and list indexes from the root. */
  readonly path: readonly (string | number)[];
  /** The innermost key around the offset, with its help. */
  readonly key: KeyShape | undefined;
  readonly entry: Entry | undefined;
  /** Whether the offset is on the key itself and not on its value. */
  readonly onKey: boolean;
  /** The innermost node around the offset. */
  readonly node: Node | undefined;
  /** Ranges around the offset, from the root inwards. */
  readonly around: readonly Range[];
}

/**
 * Finds what stands at an offset.
 * @param shapes the keys of the file's maps, by name
 * @param name name of the root's map
 */
export function locate(
  root: Node | null,
  offset: number,
  shapes: ReadonlyMap<string, KeyIndex>,
  name: string,
): Place {
  const nothing: Place = {
    path: [],
    key: undefined,
    entry: undefined,
    onKey: false,
    node: undefined,
    around: [],
  };
  return root === null ? nothing : inside(root, offset, nothing, shapes.get(name), shapes);
}

type Shapes = ReadonlyMap<string, KeyIndex>;

function inside(node: Node, offset: number, outer: Place, map: KeyIndex | undefined, shapes: Shapes): Place {
  if (!holds(node, offset)) return outer;
  const place = { ...outer, node, around: [...outer.around, node] };
  if (node.kind === 'text') return place;
  if (node.kind === 'map') return insideMap(node, offset, place, map, shapes);
  const at = node.items.findIndex((item) => holds(item, offset));
  const item = node.items[at];
  return item === undefined
    ? place
    : inside(item, offset, { ...place, path: [...place.path, at] }, map, shapes);
}

function insideMap(
  node: MapNode,
  offset: number,
  outer: Place,
  map: KeyIndex | undefined,
  shapes: Shapes,
): Place {
  const entry = node.entries.find(
    ({ start, end, value }) => offset >= start && offset <= (value ?? { end }).end,
  );
  if (entry === undefined) return outer;
  const key = map?.byName.get(entry.key);
  const whole = { start: entry.start, end: (entry.value ?? entry).end };
  const onKey = offset <= entry.end;
  const place = {
    ...outer,
    path: [...outer.path, key?.key ?? entry.key],
    key,
    entry,
    onKey,
    around: [...outer.around, whole],
  };
  if (onKey || entry.value === null) return place;
  return inside(entry.value, offset, place, key?.map === undefined ? undefined : shapes.get(key.map), shapes);
}

const holds = ({ start, end }: Range, offset: number): boolean => offset >= start && offset <= end;

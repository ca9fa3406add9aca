import type { KeyIndex, KeyShape } from '../../note/tree/shape.ts';
import type { Entry, MapNode, Node, Range } from '../../note/tree/tree.ts';

/** What is at an offset of a note that was read. */
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
 * Finds what is at an offset.
 * @param shapes the keys of the file's maps, by name
 * @param name name of the root's map
 */
export function locate(
  root: Node | null,
  offset: number,
  shapes: ReadonlyMap<string, KeyIndex>,
  name: string,
): Place {
  const found: Search = {
    path: [],
    key: undefined,
    entry: undefined,
    onKey: false,
    node: undefined,
    around: [],
  };
  if (root !== null) goInto(root, offset, found, shapes.get(name), shapes);
  return found;
}

/** A place while it is looked for, from the root inwards. */
interface Search extends Writable<Omit<Place, 'path' | 'around'>> {
  readonly path: (string | number)[];
  readonly around: Range[];
}

type Writable<T> = { -readonly [Key in keyof T]: T[Key] };

type Shapes = ReadonlyMap<string, KeyIndex>;

function goInto(node: Node, offset: number, found: Search, map: KeyIndex | undefined, shapes: Shapes): void {
  if (!holds(node, offset)) return;
  found.node = node;
  found.around.push(node);
  if (node.kind === 'map') goIntoMap(node, offset, found, map, shapes);
  if (node.kind !== 'list') return;
  const at = node.items.findIndex((item) => holds(item, offset));
  const item = node.items[at];
  if (item === undefined) return;
  found.path.push(at);
  goInto(item, offset, found, map, shapes);
}

function goIntoMap(
  node: MapNode,
  offset: number,
  found: Search,
  map: KeyIndex | undefined,
  shapes: Shapes,
): void {
  const entry = node.entries.find(
    ({ start, end, value }) => offset >= start && offset <= (value?.end ?? end),
  );
  if (entry === undefined) return;
  const key = map?.byName.get(entry.key);
  found.key = key;
  found.entry = entry;
  found.onKey = offset <= entry.end;
  found.path.push(key?.key ?? entry.key);
  found.around.push({ start: entry.start, end: (entry.value ?? entry).end });
  if (found.onKey || entry.value === null) return;
  goInto(entry.value, offset, found, key?.map === undefined ? undefined : shapes.get(key.map), shapes);
}

const holds = ({ start, end }: Range, offset: number): boolean => offset >= start && offset <= end;

import type { Problem } from '../note/tree/finding.ts';
import { isHollow, type KeyIndex, type KeyShape } from '../note/tree/shape.ts';
import { isShorthand } from '../note/tree/shorthand.ts';
import type { Entry, MapNode, Node } from '../note/tree/tree.ts';

/** What a validator is given: texts, lists and maps without a prototype, keys by their canonical names. */
export type Data = null | string | Data[] | { [key: string]: Data };

export interface Plain {
  readonly data: Data;
  /** What was seen on the way: `??`. */
  readonly problems: readonly Problem[];
}

type Map = Record<string, Data>;

/**
 * A map without inherited properties, so that `__proto__` or `constructor` are keys like any others. An instance of
 * a class is quicker to read than `Object.create(null)`.
 */
const Bare = function Bare() {
  // Nothing of its own.
} as unknown as new () => Map;
Bare.prototype = Object.create(null) as Map;

type Index = ReadonlyMap<string, KeyIndex>;

/** Makes plain data of a tree. Of two equal keys the first counts, as in reading. */
export function plainData(
  root: MapNode,
  name: string,
  index: Index,
  respelled: ReadonlyMap<Entry, KeyShape>,
): Plain {
  const walk = new Walk(name !== 'note', index, respelled);
  return { data: walk.map(root, name), problems: walk.problems };
}

class Walk {
  readonly problems: Problem[] = [];

  constructor(
    private readonly hollow: boolean,
    private readonly index: Index,
    private readonly respelled: ReadonlyMap<Entry, KeyShape>,
  ) {}

  map(node: MapNode, name: string): Data {
    const known = this.index.get(name);
    const data = new Bare();
    for (const entry of node.entries) {
      const key = known?.byName.get(entry.key) ?? this.respelled.get(entry);
      if (key === undefined) data[entry.key] ??= null;
      else if (!(key.key in data)) data[key.key] = this.value(entry, key, known?.shape.required ?? []);
    }
    return data;
  }

  private value(entry: Entry, key: KeyShape, required: readonly string[]): Data {
    const form = required.includes(key.key) ? 'required' : 'main';
    for (const one of entry.value?.kind === 'list' ? entry.value.items : [entry.value]) {
      if (one?.kind !== 'text' || one.text !== '??' || one.garbled === true) continue;
      const { start, end } = one;
      this.problems.push({ code: 'shape/pending', form, at: { start, end }, args: { key: key.key } });
    }
    const empty = entry.value === null || (!this.hollow && isHollow(entry.value, key, this.index));
    return empty ? null : this.node(entry.value, key);
  }

  private node(node: Node, key: KeyShape): Data {
    if (node.kind === 'text') return node.text === '' ? null : node.text;
    if (node.kind === 'list') return node.items.map((item) => this.node(item, key));
    if (key.open) return this.open(node);
    if (isShorthand(node, key, this.index.get(key.map ?? ''))) return this.shorthand(node, key);
    return this.map(node, key.map ?? '');
  }

  /** What names things by its keys is as good as their names; only what waits in it is noticed. */
  private shorthand(node: MapNode, key: KeyShape): Data {
    const named = { ...key, key: key.named ?? key.key };
    for (const entry of node.entries) this.value(entry, named, []);
    return key.text ?? '';
  }

  private open(node: MapNode): Data {
    const data = new Bare();
    for (const { key, value } of node.entries)
      data[key] ??= value?.kind === 'text' ? value.text : value && [];
    return data;
  }
}

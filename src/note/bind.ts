import type { Args, Problem } from './finding.ts';
import type { Leaf, OpenEntry } from './leaf.ts';
import { readers } from './readers.ts';
import type { Remark } from './reading.ts';
import type { KeyIndex, KeyShape } from './shape.ts';
import { within, type Entry, type MapNode, type Node, type Range, type TextNode } from './tree.ts';

type Path = readonly (string | number)[];
type Built = Record<string, unknown>;

/** Lays a schema's shapes over a tree: leaves are read, lists and bare texts take their full form. */
export class Binder {
  readonly problems: Problem[] = [];

  constructor(private readonly shapes: ReadonlyMap<string, KeyIndex>) {}

  /** The map as the generated type of `name` describes it; what has the wrong form is left out. */
  map(node: MapNode, name: string, head: Range, path: Path): Built {
    const index = this.shapes.get(name);
    const keys = new Map<string, Range>();
    const built: Built = { start: node.start, end: node.end, head, keys, path };
    for (const entry of node.entries) {
      const key = index?.byName.get(entry.key);
      if (key === undefined) continue;
      const first = keys.get(key.key);
      if (first !== undefined) {
        this.problems.push({
          code: 'yaml/duplicate-key',
          start: entry.start,
          end: entry.end,
          args: { key: key.key },
          related: [{ ...range(first), form: 'first', args: {} }],
        });
        continue;
      }
      keys.set(key.key, { start: entry.start, end: entry.end });
      const value = this.value(entry, key, [...path, key.key]);
      if (value !== undefined) built[key.prop] = value;
    }
    return built;
  }

  private value(entry: Entry, key: KeyShape, path: Path): unknown {
    const node = entry.value;
    if (node === null) return undefined;
    if (key.open) return node.kind === 'map' ? this.open(node) : undefined;
    if (!key.list) return this.item(node, key, entry, path);
    const nodes = node.kind === 'list' ? node.items : [node];
    return nodes.flatMap((item, at) => {
      const bound = this.item(
        item,
        key,
        node.kind === 'list' ? headOf(item) : entry,
        node.kind === 'list' ? [...path, at] : path,
      );
      return bound === undefined ? [] : [bound];
    });
  }

  private item(node: Node, key: KeyShape, head: Range, path: Path): unknown {
    if (node.kind === 'list') return undefined;
    if (key.map === undefined) return node.kind === 'text' ? this.leaf(node, key) : undefined;
    if (node.kind === 'map') return this.map(node, key.map, head, path);
    return key.text === undefined ? undefined : this.bareText(node, key, path);
  }

  /** A bare text where a map may stand is that map with one key. */
  private bareText(node: TextNode, key: KeyShape, path: Path): Built {
    const target = this.shapes.get(key.map ?? '')?.byName.get(key.text ?? '');
    const built: Built = {
      start: node.start,
      end: node.end,
      head: node,
      keys: new Map(target ? [[target.key, node]] : []),
      path,
    };
    if (target !== undefined)
      built[target.prop] = target.list ? [this.leaf(node, target)] : this.leaf(node, target);
    return built;
  }

  private open(node: MapNode): OpenEntry[] {
    return node.entries.flatMap((entry) =>
      entry.value?.kind === 'text'
        ? [{ start: entry.start, end: entry.end, name: entry.key, value: verbatim(entry.value) }]
        : [],
    );
  }

  private leaf(node: TextNode, key: KeyShape): Leaf<unknown> {
    const pending = node.text === '??';
    const reader = readers.get(key.reads ?? 'text');
    if (pending || reader === undefined)
      return { start: node.start, end: node.end, text: node.text, node, value: undefined, pending };
    const { value, remarks } = reader(node.text, key.key);
    for (const remark of remarks) this.problems.push(problemOf(remark, node, key));
    return { start: node.start, end: node.end, text: node.text, node, value, pending };
  }
}

function verbatim(node: TextNode): Leaf<string> {
  const pending = node.text === '??';
  return {
    start: node.start,
    end: node.end,
    text: node.text,
    node,
    value: pending ? undefined : node.text,
    pending,
  };
}

function problemOf(remark: Remark, node: TextNode, key: KeyShape): Problem {
  const { from = 0, to = node.text.length, ...rest } = remark;
  const args: Args = { key: key.key, text: node.text, ...remark.args };
  return { ...rest, args, ...range(from === 0 && to === node.text.length ? node : within(node, from, to)) };
}

const range = ({ start, end }: Range): Range => ({ start, end });

/** Where to point at a whole list item: its first key, or itself. */
function headOf(node: Node): Range {
  const first = node.kind === 'map' ? node.entries[0] : undefined;
  return first === undefined ? range(node) : range(first);
}

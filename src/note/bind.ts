import { readInjectionLine, type DictatedField } from './words/dictated.ts';
import { readSpecimen } from './words/specimen-line.ts';
import { readStitches } from './words/stitches.ts';
import type { Problem } from './tree/finding.ts';
import type { Leaf, OpenEntry } from './tree/leaf.ts';
import { nearestKey } from './text/nearest.ts';
import { readers } from './values/readers.ts';
import { isHollow, type KeyIndex, type KeyShape } from './tree/shape.ts';
import { isShorthand, keyText, valueText } from './tree/shorthand.ts';
import {
  isBare,
  within,
  type Entry,
  type MapNode,
  type Node,
  type Range,
  type TextNode,
} from './tree/tree.ts';

type Built = Record<string, unknown>;

/** A text whose words come from a table, and which table that is. */
export interface WordLeaf {
  readonly leaf: Leaf<unknown>;
  readonly table: string;
  /** Whether a list may be where this text is. */
  readonly list: boolean;
}

/** Beyond this many unknown keys no more are compared with the known ones. */
const mostCompared = 100;

/**
 * Lays a schema's shapes over a tree: leaves are read, lists and bare texts take their full form. A key that is
 * surely a misspelled one is read as that one, so that the danger in its value is seen and it does not count as
 * missing; the schema step reports it.
 */
export class Binder {
  readonly problems: Problem[] = [];
  readonly words: WordLeaf[] = [];
  /** Misspelt keys that were read as the keys that they are meant to be. */
  readonly respelled = new Map<Entry, KeyShape>();
  /** The keys under which something else than `none` is written, wherever they are. */
  readonly said = new Set<string>();
  /**
   * Whether the tree surely has the form that the shapes want, and nothing in it waits, so that neither has to be looked
   * for. Where it is false the validator decides.
   */
  fits = true;
  /** Unknown keys whose values nobody reads. */
  readonly unread: Entry[] = [];
  private compared = 0;

  /** @param hollow whether a list or a map without anything in it says something, as in a practice file */
  constructor(
    private readonly shapes: ReadonlyMap<string, KeyIndex>,
    private readonly hollow: boolean,
  ) {}

  /** The map as the generated type of `name` describes it; what has the wrong form is left out. */
  map(node: MapNode, name: string, head: Range): Built {
    const index = this.shapes.get(name);
    const keys = new Map<string, Range>();
    const built: Built = { start: node.start, end: node.end, head, keys };
    let unknown: Entry[] | undefined;
    for (const entry of node.entries) {
      const key = index?.byName.get(entry.key);
      if (key === undefined) (unknown ??= []).push(entry);
      else this.put(built, entry, key, keys);
    }
    if (unknown !== undefined) this.fits = false;
    if (unknown !== undefined && index !== undefined) this.guess(unknown, index, built, keys);
    for (const key of index?.shape.required ?? []) if (!keys.has(key)) this.fits = false;
    return built;
  }

  private put(built: Built, entry: Entry, key: KeyShape, keys: Map<string, Range>): void {
    const first = keys.get(key.key);
    if (first !== undefined) {
      this.duplicate(entry, key.key, first);
      this.again(built, entry, key, keys);
      return;
    }
    keys.set(key.key, entry);
    if (!saysNone(entry.value)) this.said.add(key.key);
    const value = this.value(entry, key);
    if (value === undefined) this.fits = false;
    else built[key.prop] = value;
  }

  /**
   * Of a key that is there twice all counts that a list may hold, so that no danger is hidden; of two texts or maps one that
   * does not depend on which comes first.
   */
  private again(built: Built, entry: Entry, key: KeyShape, keys: Map<string, Range>): void {
    const value = this.value(entry, key);
    const before = built[key.prop];
    if (Array.isArray(before) && Array.isArray(value)) {
      for (const item of value as unknown[]) before.push(item);
      return;
    }
    const first = keys.get(key.key);
    const isFirst = before === undefined || contentOf(entry) < contentOf(first as Entry);
    if (value === undefined || !isFirst) return;
    built[key.prop] = value;
    keys.set(key.key, entry);
  }

  private duplicate(entry: Entry, key: string, first: Range): void {
    this.fits = false;
    this.problems.push({
      code: 'yaml/duplicate-key',
      at: range(entry),
      args: { key, typed: entry.key },
      related: [{ ...range(first), form: 'first', args: { key } }],
    });
  }

  /** Unknown keys: doubles of each other, and slips of keys that the map does not have yet. */
  private guess(unknown: readonly Entry[], index: KeyIndex, built: Built, keys: Map<string, Range>): void {
    const seen = new Map<string, Entry>();
    for (const entry of unknown) {
      const first = seen.get(entry.key);
      if (first !== undefined) {
        this.duplicate(entry, entry.key, first);
        const meant = this.respelled.get(first);
        if (meant === undefined) this.unread.push(entry);
        else this.again(built, entry, meant, keys);
        continue;
      }
      seen.set(entry.key, entry);
      const near = ++this.compared > mostCompared ? undefined : nearestKey(entry.key, index.byName);
      if (near?.meant !== true || keys.has(near.key.key)) {
        this.unread.push(entry);
        continue;
      }
      const { key } = near;
      this.respelled.set(entry, key);
      this.put(built, entry, key, keys);
    }
  }

  private value(entry: Entry, key: KeyShape): unknown {
    const node = entry.value;
    if (node === null || (!this.hollow && isHollow(node, key, this.shapes))) return undefined;
    if (key.open) return node.kind === 'map' ? this.open(node) : undefined;
    if (!key.list) return this.item(node, key, entry);
    const bound: unknown[] = [];
    if (node.kind !== 'list') this.add(bound, node, key, entry);
    else for (const item of node.items) this.add(bound, item, key, headOf(item));
    return bound;
  }

  private add(bound: unknown[], node: Node, key: KeyShape, head: Range): void {
    const lines = node.kind === 'text' ? this.lines(node, key) : undefined;
    if (lines !== undefined) {
      bound.push(...lines);
      return;
    }
    if (node.kind === 'map' && isShorthand(node, key, this.shapes.get(key.map ?? ''))) {
      for (const entry of node.entries) bound.push(this.namedBy(entry, key));
      return;
    }
    const item = isEmpty(node) ? undefined : this.item(node, key, head);
    if (item === undefined) this.fits = false;
    else bound.push(item);
  }

  /** The maps that a line of text says; undefined where the key takes none, or the text is something else. */
  private lines(node: TextNode, key: KeyShape): readonly Built[] | undefined {
    if (key.line === undefined || node.garbled === true) return undefined;
    if (key.line === 'stitches')
      return readStitches(node.text)?.map((fields) => this.fields(node, key, fields));
    const specimen = readSpecimen(node.text);
    if (specimen === undefined) return undefined;
    for (const problem of specimen.problems) this.problems.push(placed(problem, node, key));
    return [this.fields(node, key, specimen.fields)];
  }

  /** The map that an entry means whose key names a thing: `latex: itching` is `{to: latex, reaction: itching}`. */
  private namedBy(entry: Entry, key: KeyShape): Built {
    const built = this.heldBy(entry, key);
    this.putText(built, key, key.text, keyText(entry));
    this.putText(built, key, key.named, valueText(entry));
    return built;
  }

  /** What a map below the name of a thing says of it; an empty one where there is no map. */
  private heldBy(entry: Entry, key: KeyShape): Built {
    if (entry.value?.kind === 'map') return this.map(entry.value, key.map ?? '', entry);
    return { start: entry.start, end: entry.value?.end ?? entry.end, head: entry, keys: new Map() };
  }

  private putText(built: Built, key: KeyShape, word: string | undefined, node: TextNode | undefined): void {
    const target = this.shapes.get(key.map ?? '')?.byName.get(word ?? '');
    if (target === undefined || node === undefined || node.text === '') return;
    if (isPending(node)) this.fits = false;
    (built['keys'] as Map<string, Range>).set(target.key, range(node));
    this.said.add(target.key);
    built[target.prop] = this.leaf(node, target);
  }

  private item(node: Node, key: KeyShape, head: Range): unknown {
    if (node.kind === 'list') return undefined;
    if (node.kind === 'text' && (node.text === '' || isPending(node))) this.fits = false;
    if (key.map === undefined) return node.kind === 'text' ? this.leaf(node, key) : undefined;
    if (node.kind === 'map') return this.map(node, key.map, head);
    return key.text === undefined ? undefined : this.bareText(node, key);
  }

  /** A bare text where a map may be is that map with one key. */
  private bareText(node: TextNode, key: KeyShape): Built | undefined {
    if (key.text === '(dictated)') return this.dictated(node, key);
    const target = this.shapes.get(key.map ?? '')?.byName.get(key.text ?? '');
    const built: Built = {
      start: node.start,
      end: node.end,
      head: node,
      keys: new Map(target ? [[target.key, node]] : []),
    };
    if (target !== undefined)
      built[target.prop] = target.list ? [this.leaf(node, target)] : this.leaf(node, target);
    return built;
  }

  /** A dictated line is the map that says the same; undefined where it says that nothing was given. */
  private dictated(node: TextNode, key: KeyShape): Built | undefined {
    const { fields, problems } = readInjectionLine(node.text);
    if (fields.length === 0 && problems.length === 0) return undefined;
    for (const problem of problems) this.problems.push(placed(problem, node, key));
    return this.fields(node, key, fields);
  }

  /** The map that a line of text says, each key at its words. */
  private fields(node: TextNode, key: KeyShape, fields: readonly DictatedField[]): Built {
    const keys = new Map<string, Range>();
    const built: Built = { start: node.start, end: node.end, head: node, keys };
    for (const field of fields) {
      const target = this.shapes.get(key.map ?? '')?.byName.get(field.key);
      if (target === undefined) continue;
      const part = partOf(node, field);
      keys.set(target.key, range(part));
      this.said.add(target.key);
      const leaf = this.leaf(part, target);
      const before = built[target.prop];
      built[target.prop] = target.list
        ? [...(Array.isArray(before) ? (before as unknown[]) : []), leaf]
        : leaf;
    }
    return built;
  }

  private open(node: MapNode): OpenEntry[] {
    this.fits = false;
    const seen = new Map<string, Entry>();
    return node.entries.flatMap((entry) => {
      const first = seen.get(entry.key);
      if (first !== undefined) {
        this.duplicate(entry, entry.key, first);
        return [];
      }
      seen.set(entry.key, entry);
      return entry.value?.kind === 'text'
        ? [{ start: entry.start, end: entry.end, name: entry.key, value: verbatim(entry.value) }]
        : [];
    });
  }

  private leaf(node: TextNode, key: KeyShape): Leaf<unknown> {
    const { start, end, text } = node;
    const pending = isPending(node);
    const reader = readers.get(key.reads ?? 'text');
    if (pending || node.garbled === true || reader === undefined)
      return { start, end, text, node, value: undefined, pending };
    const { value, problems } = reader(text, key.key);
    for (const problem of problems) this.problems.push(placed(problem, node, key));
    const leaf: Leaf<unknown> = { start, end, text, node, value, pending };
    if (key.words !== undefined) this.words.push({ leaf, table: key.words, list: key.list });
    return leaf;
  }
}

/** Whether `??` is here: not yet known. */
const isPending = (node: TextNode): boolean => node.text === '??' && node.garbled !== true;

const saysNone = (node: Node | null): boolean =>
  node === null || isBare(node) || (node.kind === 'text' && node.text === 'none');

const isEmpty = (node: Node): boolean =>
  node.kind === 'text' && node.text.trim() === '' && node.garbled !== true;

function verbatim(node: TextNode): Leaf<string> {
  const pending = isPending(node);
  return {
    start: node.start,
    end: node.end,
    text: node.text,
    node,
    value: pending || node.garbled === true ? undefined : node.text,
    pending,
  };
}

/** A reader's problem, with its place in the file and what its words may name. */
function placed(problem: Problem, node: TextNode, key: KeyShape): Problem {
  const { start, end } = problem.at;
  const isWhole = start === 0 && end === node.text.length;
  return {
    ...problem,
    at: range(isWhole ? node : within(node, start, end)),
    args: { key: key.key, text: node.text, ...problem.args },
  };
}

const range = ({ start, end }: Range): Range => ({ start, end });

/** Where to point at a whole list item: its first key, or itself. */
function headOf(node: Node): Range {
  const first = node.kind === 'map' ? node.entries[0] : undefined;
  return first ?? node;
}

/** The words of a dictated line that state one key. */
function partOf(node: TextNode, { from, to, says }: DictatedField): TextNode {
  const inner = node.inner < 0 || says !== undefined ? -1 : node.inner + from;
  return { ...node, ...range(within(node, from, to)), text: says ?? node.text.slice(from, to), inner };
}

/** What an entry says, wherever it is. */
function contentOf({ value }: Pick<Entry, 'value'>): string {
  const text = (node: Node | null): unknown =>
    node === null
      ? ''
      : node.kind === 'text'
        ? node.text
        : node.kind === 'list'
          ? node.items.map(text)
          : node.entries.map(({ key, value: inner }) => [key, text(inner)]);
  return JSON.stringify(text(value));
}

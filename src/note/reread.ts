import { applyEdits } from './tree/edit.ts';
import type { TextEdit } from './tree/finding.ts';
import type { Note } from './generated/types.ts';
import { refusalOf } from './yaml/limits.ts';
import { readNote, readTree, type Source } from './read.ts';
import type { Entry, MapNode, Node, TextNode } from './tree/tree.ts';

/**
 * The note as `readNote` reads it after an edit. Where a plain value gives way to another in a text with which nothing is
 * wrong, its tree is the old one with the rest moved, since to parse it again is nearly all of the work.
 * @throws RangeError where the edit is outside of the text
 */
export function reread(source: Source<Note>, edit: TextEdit): Source<Note> {
  const text = applyEdits(source.text, [edit]);
  const root = source.sound && refusalOf(text) === undefined ? treeAfter(source.root, edit) : undefined;
  return root === undefined ? readNote(text) : readTree(text, root);
}

/** The tree after an edit of one value; undefined where only the parser can tell. */
function treeAfter(root: MapNode | null, edit: TextEdit): MapNode | undefined {
  const place = root === null ? undefined : valueAround(root, edit, false);
  const value = place && valueAfter(place, edit);
  if (root === null || place === undefined || value === undefined) return undefined;
  const moved = new Moved(place.node, value, edit);
  return moved.map(root);
}

interface Place {
  readonly node: TextNode;
  /** Whether it is between brackets. */
  readonly flow: boolean;
}

const holds = ({ start, end }: Node, edit: TextEdit): boolean => start <= edit.start && edit.end <= end;

function valueAround(node: Node, edit: TextEdit, flow: boolean): Place | undefined {
  if (node.kind === 'text') return { node, flow };
  const parts = node.kind === 'list' ? node.items : node.entries.map(({ value }) => value);
  const part = parts.find((one) => one !== null && holds(one, edit));
  return part == null ? undefined : valueAround(part, edit, node.flow);
}

/** What is read as it is typed, quoted or not; between brackets an unquoted one has no comma. */
const plain = /^(?:\?\?|[\da-z](?:(?:[\w.,/%µ +-]|:(?=\d))*[\w%])?)$/i;

function valueAfter({ node, flow }: Place, edit: TextEdit): TextNode | undefined {
  if (node.inner < 0 || edit.start === edit.end) return undefined;
  const text = textAfter(node, edit);
  // Quotes go where all of the value gives way.
  const bare = node.inner === node.start || isWhole(node, edit);
  if (text === undefined || !plain.test(text) || (bare && flow && text.includes(','))) return undefined;
  const end = node.end + edit.text.length - (edit.end - edit.start);
  return { kind: 'text', start: node.start, end, text, inner: bare ? node.start : node.inner };
}

const isWhole = (node: TextNode, { start, end }: TextEdit): boolean =>
  start === node.start && end === node.end;

function textAfter(node: TextNode, edit: TextEdit): string | undefined {
  if (isWhole(node, edit)) return edit.text;
  const [from, to] = [edit.start - node.inner, edit.end - node.inner];
  const inside = from >= 0 && to <= node.text.length;
  return inside ? node.text.slice(0, from) + edit.text + node.text.slice(to) : undefined;
}

/** Puts a value in the place of another, and moves what is after the edit. */
class Moved {
  private readonly by: number;

  constructor(
    private readonly before: TextNode,
    private readonly after: TextNode,
    private readonly edit: TextEdit,
  ) {
    this.by = edit.text.length - (edit.end - edit.start);
  }

  map({ start, end, flow, entries }: MapNode): MapNode {
    return { kind: 'map', start: this.at(start), end: this.at(end), flow, entries: entries.map(this.entry) };
  }

  private readonly entry = ({ key, start, end, value }: Entry): Entry => ({
    key,
    start: this.at(start),
    end: this.at(end),
    value: value === null ? null : this.node(value),
  });

  private readonly node = (node: Node): Node => {
    if (node.end <= this.edit.start) return node;
    if (node === this.before) return this.after;
    if (node.kind === 'map') return this.map(node);
    const [start, end] = [this.at(node.start), this.at(node.end)];
    if (node.kind === 'list')
      return { kind: 'list', start, end, flow: node.flow, items: node.items.map(this.node) };
    return { ...node, start, end, inner: node.inner < 0 ? node.inner : this.at(node.inner) };
  };

  private at(offset: number): number {
    return offset < this.edit.end ? offset : offset + this.by;
  }
}

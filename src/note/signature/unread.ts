import type { Note } from '../generated/types.ts';
import type { Source } from '../read.ts';
import type { KeyShape } from '../tree/shape.ts';
import type { Entry, MapNode, Node, Range } from '../tree/tree.ts';
import { keyOf } from './canonical.ts';

/** What is noticed of text that is read all the same, or that is a comment. */
const readAllTheSame: ReadonlySet<string> = new Set([
  'yaml/comment-swallows',
  'yaml/look-alike',
  'yaml/runs-on',
  'yaml/unseen-character',
]);

/**
 * Places of text that no part of a signature covers and that nothing reads: what YAML can't take in, a second document, a
 * key that occurs twice, and unknown keys and words where something is written after signing. Comments are none.
 */
export function unreadIn({ root, problems, damage, respelled }: Source<Note>): readonly Range[] {
  const found: Range[] = problems
    .filter(({ code }) => code.startsWith('yaml/') && !readAllTheSame.has(code))
    .map(({ at }) => at);
  for (const at of damage) found.push({ start: at, end: at });
  if (root !== null) new Unread(respelled, found).under(root, 'note');
  return found;
}

/** Looks through what is written after signing for what nothing reads. What is signed has its digest. */
class Unread {
  constructor(
    private readonly respelled: ReadonlyMap<Entry, KeyShape>,
    private readonly found: Range[],
  ) {}

  under(node: Node | null, shape: string | undefined): void {
    if (node?.kind === 'list') for (const item of node.items) this.under(item, shape);
    if (node?.kind !== 'map') return;
    for (const { key: typed, value } of node.entries) {
      const key = keyOf(typed, shape);
      if (key?.unsigned === true) this.value(value, key);
      else this.under(value, key?.map);
    }
  }

  private value(node: Node | null, key: KeyShape): void {
    if (node === null) return;
    if (node.kind !== 'list') this.item(node, key);
    else if (!key.list) this.found.push(node);
    else for (const item of node.items) this.item(item, key);
  }

  private item(node: Node, key: KeyShape): void {
    if (node.kind === 'map' && key.open) this.open(node);
    else if (node.kind === 'map' && key.map !== undefined) this.map(node, key.map);
    else if (node.kind !== 'text' || (key.map !== undefined && key.text === undefined) || key.open)
      this.found.push(node);
  }

  private map(node: MapNode, shape: string): void {
    for (const entry of node.entries) {
      const key = keyOf(entry.key, shape) ?? this.respelled.get(entry);
      if (key === undefined) this.found.push(entry);
      else this.value(entry.value, key);
    }
  }

  private open(node: MapNode): void {
    for (const { value } of node.entries) if (value !== null && value.kind !== 'text') this.found.push(value);
  }
}

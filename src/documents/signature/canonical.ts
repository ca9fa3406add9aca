import type { Node } from '../../note/tree/tree.ts';

/** What is left out of a map: undefined keeps every key. */
export type LeftOut = (key: string) => boolean;

/**
 * The canonical form (RFC 8785) of a part of a note as JSON: every scalar is the text as typed, keys are in the order
 * of their UTF-16 units, and nothing stands between. Comments, quotes, order of keys and block or flow style leave it
 * as it is.
 */
export function canonical(node: Node | null, leftOut: LeftOut = () => false): string {
  if (node === null) return 'null';
  if (node.kind === 'text') return jsonText(node.text);
  if (node.kind === 'list') return `[${node.items.map((item) => canonical(item, leftOut)).join(',')}]`;
  const kept = node.entries.filter(({ key }) => !leftOut(key));
  // A key that stands twice is a fault of the note; both count, so that neither can be changed unseen.
  const sorted = [...kept].sort((a, b) => (a.key === b.key ? 0 : a.key < b.key ? -1 : 1));
  return `{${sorted.map(({ key, value }) => `${jsonText(key)}:${canonical(value, leftOut)}`).join(',')}}`;
}

/** RFC 8785 escapes as JSON.stringify does; half a character, which it does not allow, stays as its escape. */
const jsonText = (text: string): string => JSON.stringify(text);

import type { MapNode, Node } from '../tree/tree.ts';
import { acceptedForm, itemsOf, keyOf, type Part } from './canonical.ts';

/** What the older way of signing left out, by name: top-level keys, and keys at any depth. */
const laterAtTop: ReadonlySet<string> = new Set(['signed', 'events', 'accepted', 'addenda']);
const laterInside: ReadonlySet<string> = new Set(['results', 'result', 'sutures-out', 'accepted']);

/** Whether the older way left out a key, wherever it is. */
export const olderLater = (key: string): boolean => laterInside.has(key);

/** The parts that the older way covered. */
export function* olderParts(root: MapNode): Generator<Part> {
  for (const { key, value } of root.entries) {
    const name = keyOf(key, 'note')?.key ?? key;
    if (name === 'procedures')
      for (const [index, node] of itemsOf(value).entries())
        yield { name: `procedure ${index + 1}`, node, shape: undefined };
    else if (!laterAtTop.has(name)) yield { name, node: value, shape: undefined };
  }
}

/** Whether the older way left out what is under a top-level key. */
export const olderLaterAtTop = (key: string): boolean => laterAtTop.has(keyOf(key, 'note')?.key ?? key);

/** The accepted findings that the older way covered: those at any depth outside of what comes later as a whole. */
export function olderAcceptances(root: MapNode): readonly string[] {
  const found: string[] = [];
  const visit = (node: Node | null, place: string): void => {
    if (node === null || node.kind === 'text') return;
    if (node.kind === 'list') {
      for (const [index, item] of node.items.entries()) visit(item, `${place}/${index}`);
      return;
    }
    for (const { key, value } of node.entries) {
      if (key === 'events' || key === 'addenda' || key === 'signed') continue;
      if (key !== 'accepted') visit(value, `${place}/${key}`);
      else for (const item of itemsOf(value)) found.push(acceptedForm(place, item));
    }
  };
  visit(root, '');
  return found;
}

import { readNote } from '../../src/note/read.ts';
import type { Range } from '../../src/note/tree/tree.ts';
import type { Node } from '../../src/note/tree/tree.ts';

/** Where a note has a key, each with its value. */
export function notesBy(text: string, key: string): readonly Range[] {
  const { root } = readNote(text);
  return root === null ? [] : placesIn(root, key);
}

function placesIn(node: Node, key: string): readonly Range[] {
  if (node.kind === 'text') return [];
  if (node.kind === 'list') return node.items.flatMap((item) => placesIn(item, key));
  return node.entries.flatMap((entry) => [
    ...(entry.key === key || aliases.get(entry.key) === key
      ? [{ start: entry.start, end: Math.max(entry.end, entry.value?.end ?? 0) }]
      : []),
    ...(entry.value === null ? [] : placesIn(entry.value, key)),
  ]);
}

const aliases: ReadonlyMap<string, string> = new Map([
  ['prep', 'preparation'],
  ['result', 'results'],
  ['mrn', 'id'],
]);

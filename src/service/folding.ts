import { Lines } from '../note/text/lines.ts';
import type { Node } from '../note/tree/tree.ts';
import { lastOffset } from '../note/tree/maps.ts';

/** Lines that fold together, both ends included, counted from 0. */
export interface Fold {
  readonly start: number;
  readonly end: number;
}

/** One fold for each key or list item whose value goes over several lines. */
export function foldsOf(text: string, root: Node | null): readonly Fold[] {
  const lines = new Lines(text);
  const folds = new Map<number, number>();
  const add = (start: number, end: number): void => {
    const first = lines.at(start).line;
    // A block ends after its last line break.
    let last = lines.at(end).line;
    while (last > first && lines.row(last).trim() === '') last -= 1;
    if (last > first && (folds.get(first) ?? 0) < last) folds.set(first, last);
  };
  const walk = (node: Node): void => {
    if (node.kind === 'list') {
      for (const item of node.items) {
        if (item.kind !== 'text') add(item.start, lastOffset(item));
        walk(item);
      }
    } else if (node.kind === 'map') {
      for (const { start, value } of node.entries) {
        if (value === null) continue;
        if (value.kind !== 'text' || value.end > start) add(start, lastOffset(value));
        walk(value);
      }
    }
  };
  if (root !== null) walk(root);
  return [...folds].map(([start, end]) => ({ start, end })).sort((a, b) => a.start - b.start);
}

import { startOfRow } from '../edits/insert.ts';
import type { Analysis } from '../analysis/analysis.ts';
import type { Node, Range } from '../../note/tree/tree.ts';

/**
 * The parts of a text in which a syntax error is: the procedure or event that holds it, otherwise the top-level key.
 * What seems wrong there may only be an effect of the error, so nothing but the error itself is fixed.
 */
export function damagedParts({ text, root, damage }: Analysis): readonly Range[] {
  if (root === null || damage.length === 0) return [];
  return damage.map((spot) => {
    const whole = { start: 0, end: text.length };
    const entry = holder(text, root.entries, spot, whole);
    const value = root.entries.find(({ start }) => start === entry?.start)?.value;
    if (entry === undefined) return whole;
    if (value?.kind !== 'list') return lined(text, entry);
    return lined(text, holder(text, value.items, spot, entry) ?? entry);
  });
}

/** Of some parts in a line the one that holds a spot: it ends where the next begins. */
function holder(
  text: string,
  parts: readonly Pick<Node, 'start'>[],
  spot: number,
  { end }: Range,
): Range | undefined {
  const at = parts.findLastIndex(({ start }) => startOfRow(text, start) <= spot);
  const part = parts[at];
  return part === undefined ? undefined : { start: part.start, end: parts[at + 1]?.start ?? end };
}

const lined = (text: string, { start, end }: Range): Range => ({ start: startOfRow(text, start), end });

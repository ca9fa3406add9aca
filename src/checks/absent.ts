import type { Part } from '../note/leaf.ts';
import type { Range } from '../note/tree.ts';
import type { Subject } from './check.ts';

/**
 * Whether a part lacks a key: it is neither there under one of its names, nor misspelt, which is one fault and
 * reported as such, nor possibly swallowed by a syntax error in the part.
 */
export function isAbsent(
  { source, problems }: Subject,
  part: Part,
  key: string,
  ...aliases: string[]
): boolean {
  if (part.keys.has(key)) return false;
  const start = Math.min(part.start, part.head.start);
  const inside = (range: Range): boolean => range.start >= start && range.end <= part.end;
  if (source.damage.some((spot) => spot >= start && spot <= part.end)) return false;
  return !problems('shape/unknown-key').some((problem) => {
    const near = (problem.data as { readonly near?: string } | undefined)?.near;
    return near !== undefined && [key, ...aliases].includes(near) && inside(problem);
  });
}

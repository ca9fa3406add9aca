import type { Part } from '../note/tree/leaf.ts';
import type { Subject } from './check.ts';
import { shared } from './shared.ts';

/** Where keys are that are probably a misspelled key, by that key; each list in the order of the text. */
type Misspelt = ReadonlyMap<string, readonly number[]>;

const misspeltIn = shared((subject: Subject): Misspelt => {
  const found = new Map<string, number[]>();
  for (const { data, at } of subject.problems('shape/unknown-key')) {
    const near = (data as { readonly near?: string } | undefined)?.near;
    if (near === undefined) continue;
    const starts = found.get(near);
    if (starts === undefined) found.set(near, [at.start]);
    else starts.push(at.start);
  }
  for (const starts of found.values()) starts.sort((a, b) => a - b);
  return found;
});

/**
 * Whether a part has none of these keys: not one is there, nor misspelled, which is one fault and reported as such,
 * nor possibly swallowed by a syntax error in the part. A key that has other spellings is named in each of them.
 */
export function isAbsent(subject: Subject, part: Part, ...keys: readonly string[]): boolean {
  if (keys.some((key) => part.keys.has(key))) return false;
  const start = Math.min(part.start, part.head.start);
  const { damage } = subject.source;
  if (damage.some((spot) => spot >= start && spot <= part.end)) return false;
  const misspelt = misspeltIn(subject);
  return !keys.some((name) => {
    const starts = misspelt.get(name);
    return starts !== undefined && hasWithin(starts, start, part.end);
  });
}

/** Whether one of these numbers, which are in order, is in a stretch. */
function hasWithin(numbers: readonly number[], from: number, to: number): boolean {
  let low = 0;
  let high = numbers.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (numbers[middle]! < from) low = middle + 1;
    else high = middle;
  }
  return (numbers[low] ?? Infinity) <= to;
}

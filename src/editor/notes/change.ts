import type { Change } from '../../service/index.ts';

/** The one change that makes `after` of `before`: what differs between their common beginning and their common end. */
export function changeBetween(before: string, after: string): Change {
  const shorter = Math.min(before.length, after.length);
  let start = 0;
  while (start < shorter && before[start] === after[start]) start += 1;
  let tail = 0;
  while (tail < shorter - start && before[before.length - 1 - tail] === after[after.length - 1 - tail])
    tail += 1;
  return { start, end: before.length - tail, inserted: after.slice(start, after.length - tail) };
}

/** Whether a change goes over the end of a line. */
export const overRows = (before: string, { start, end, inserted }: Change): boolean =>
  /[\r\n]/.test(inserted) || /[\r\n]/.test(before.slice(start, end));

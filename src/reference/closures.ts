import type { WordRow } from './types.ts';

export type ClosureRow = WordRow;

export const closures: readonly ClosureRow[] = [
  { name: 'none', synonyms: [] },
  { name: 'second intention', synonyms: [] },
];

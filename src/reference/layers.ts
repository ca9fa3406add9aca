import type { WordRow } from './types.ts';

export const layers: readonly WordRow[] = [
  { name: 'deep', synonyms: [] },
  { name: 'skin', synonyms: [] },
];

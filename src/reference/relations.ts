import type { WordRow } from './types.ts';

export const relations: readonly WordRow[] = [
  { name: 'lesional', synonyms: [] },
  { name: 'perilesional', synonyms: [] },
];

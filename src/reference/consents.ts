import type { WordRow } from './types.ts';

export const consents: readonly WordRow[] = [
  { name: 'written', synonyms: [] },
  { name: 'verbal', synonyms: [] },
  { name: 'guardian', synonyms: [] },
  { name: 'declined', synonyms: [] },
];

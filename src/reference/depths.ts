import type { WordRow } from './types.ts';

export const depths: readonly WordRow[] = [
  { name: 'epidermis', synonyms: [] },
  { name: 'papillary dermis', synonyms: [] },
  { name: 'mid dermis', synonyms: [] },
  { name: 'deep dermis', synonyms: [] },
  { name: 'subcutis', synonyms: [] },
];

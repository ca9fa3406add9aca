import type { WordRow } from './types.ts';

export type HemostasisRow = WordRow;

export const hemostasis: readonly HemostasisRow[] = [
  { name: 'pressure', synonyms: [] },
  { name: 'none', synonyms: [] },
];

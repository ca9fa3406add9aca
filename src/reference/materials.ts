import type { WordRow } from './types.ts';

export type MaterialRow = WordRow;

export const materials: readonly MaterialRow[] = [{ name: 'nylon', synonyms: [] }];

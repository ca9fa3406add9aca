import type { WordRow } from './types.ts';

export type PreparationRow = WordRow;

export const preparations: readonly PreparationRow[] = [{ name: 'isopropyl alcohol', synonyms: [] }];

import type { WordRow } from './types.ts';

export type DressingRow = WordRow;

export const dressings: readonly DressingRow[] = [{ name: 'petrolatum', synonyms: [] }];

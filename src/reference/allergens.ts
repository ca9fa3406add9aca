import type { WordRow } from './types.ts';

export type AllergenRow = WordRow;

export const allergens: readonly AllergenRow[] = [{ name: 'bacitracin', synonyms: [] }];

import type { WordRow } from './types.ts';

export type MediumRow = WordRow;

export const media: readonly MediumRow[] = [{ name: 'formalin', synonyms: [] }];

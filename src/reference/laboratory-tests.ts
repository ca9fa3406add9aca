import type { WordRow } from './types.ts';

export type TestRow = WordRow;

export const laboratoryTests: readonly TestRow[] = [{ name: 'routine histology', synonyms: ['H&E'] }];

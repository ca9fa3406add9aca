import type { WordRow } from './types.ts';

export const events: readonly WordRow[] = [{ name: 'bleeding', synonyms: [] }];

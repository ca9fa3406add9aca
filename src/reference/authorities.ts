import type { WordRow } from './types.ts';

/** Whose dose limits a practice can take as its ceiling. */
export const authorities: readonly WordRow[] = [{ name: 'US prescribing information', synonyms: ['US'] }];

import type { WordRow } from './types.ts';

export type ImplantRow = WordRow;

export const implants: readonly ImplantRow[] = [{ name: 'pacemaker', synonyms: [] }];

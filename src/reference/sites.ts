import type { WordRow } from './types.ts';

export interface SiteRow extends WordRow {
  readonly region: string;
  /** Whether left or right must be said; `never` for what lies in the midline. */
  readonly side: 'needed' | 'optional' | 'never';
}

export const sites: readonly SiteRow[] = [
  { name: 'upper back', synonyms: ['back upper'], region: 'back', side: 'needed' },
];

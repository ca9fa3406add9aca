import type { WordRow } from './types.ts';

export type MethodRow = WordRow;

export const methods: readonly MethodRow[] = [
  { name: 'shave', synonyms: ['tangential'] },
  { name: 'deep shave', synonyms: ['saucerization'] },
  { name: 'scissor', synonyms: ['snip'] },
  { name: 'curettage', synonyms: [] },
  { name: 'punch', synonyms: [] },
  { name: 'incisional', synonyms: [] },
  { name: 'excisional', synonyms: ['ellipse'] },
];

import type { WordRow } from './types.ts';

/** Where a sample lies relative to the lesion. */
export const relations: readonly WordRow[] = [
  { name: 'lesional', synonyms: ['lesion', 'in lesion', 'involved', 'involved skin', 'center', 'centre'] },
  {
    name: 'edge',
    synonyms: [
      'margin',
      'border',
      'lesion edge',
      'edge of lesion',
      'active border',
      'blister edge',
      'edge of blister',
    ],
  },
  { name: 'perilesional', synonyms: ['beside the lesion', 'next to lesion', 'adjacent', 'adjacent skin'] },
  {
    name: 'uninvolved',
    synonyms: ['normal skin', 'normal appearing skin', 'unaffected', 'unaffected skin', 'clinically normal'],
  },
];

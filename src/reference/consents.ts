import type { WordRow } from './types.ts';

export const consents: readonly WordRow[] = [
  {
    name: 'written',
    synonyms: [
      'written consent',
      'written informed consent',
      'informed written consent',
      'written consent obtained',
      'written and verbal',
      'verbal and written',
      'signed informed consent',
      'signed',
      'signed consent',
      'electronic',
      'electronic consent',
      'on file',
      'obtained in writing',
    ],
  },
  {
    name: 'verbal',
    synonyms: [
      'verbal consent',
      'verbal consent obtained',
      'verbal informed consent',
      'oral',
      'oral consent',
      'spoken',
    ],
  },
  {
    name: 'guardian',
    synonyms: [
      'parent',
      'parental',
      'parental consent',
      'guardian consent',
      'mother',
      'father',
      'proxy',
      'power of attorney',
      'legal representative',
    ],
  },
  { name: 'declined', synonyms: ['refused', 'not given', 'withdrawn', 'none'] },
];

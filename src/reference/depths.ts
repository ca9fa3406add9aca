import type { WordRow } from './types.ts';

export const depths: readonly WordRow[] = [
  { name: 'epidermis', synonyms: ['epidermal', 'superficial epidermis', 'into epidermis'] },
  {
    name: 'papillary dermis',
    synonyms: [
      'superficial dermis',
      'upper dermis',
      'papillary',
      'superficial papillary dermis',
      'into papillary dermis',
    ],
  },
  {
    name: 'mid dermis',
    synonyms: [
      'middle dermis',
      'mid reticular dermis',
      'superficial reticular dermis',
      'upper reticular dermis',
      'into mid dermis',
      'to mid dermis',
    ],
  },
  {
    name: 'deep dermis',
    synonyms: [
      'deep reticular dermis',
      'lower dermis',
      'lower reticular dermis',
      'into deep dermis',
      'to deep dermis',
    ],
  },
  {
    name: 'subcutis',
    synonyms: [
      'subcutaneous',
      'subcutaneous fat',
      'into subcutaneous fat',
      'to subcutaneous fat',
      'subcutaneous tissue',
      'superficial subcutis',
      'superficial fat',
      'fat',
      'into fat',
      'to fat',
      'to subcutis',
      'into subcutis',
      'adipose',
      'adipose tissue',
      'panniculus',
      'hypodermis',
      'fascia',
      'to fascia',
    ],
  },
];

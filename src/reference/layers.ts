import type { WordRow } from './types.ts';

export const layers: readonly WordRow[] = [
  {
    name: 'deep',
    synonyms: [
      'dermal',
      'deep dermal',
      'buried',
      'subcutaneous',
      'subQ',
      'SQ',
      'fascial',
      'subdermal',
      'deep layer',
    ],
  },
  {
    name: 'skin',
    synonyms: [
      'superficial',
      'epidermal',
      'cutaneous',
      'top',
      'surface',
      'skin layer',
      'percutaneous',
      'epidermis',
    ],
  },
];

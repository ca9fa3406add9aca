import type { WordRow } from './types.ts';

export type TestRow = WordRow;

/** What a laboratory may be asked for. The media table says for each of them which media serve it. */
export const laboratoryTests: readonly TestRow[] = [
  {
    name: 'routine histology',
    synonyms: [
      'H&E',
      'HE',
      'H and E',
      'histology',
      'histopathology',
      'pathology',
      'routine pathology',
      'dermatopathology',
      'routine',
      'permanent sections',
      'permanent section',
      'surgical pathology',
      'light microscopy',
      'routine histopathology',
      'derm path',
    ],
  },
  {
    name: 'special stains',
    synonyms: [
      'PAS',
      'PAS stain',
      'GMS',
      'gram stain',
      'elastic stain',
      'Fite stain',
      'AFB stain',
      'iron stain',
      'colloidal iron',
      'special stain',
    ],
  },
  {
    name: 'immunohistochemistry',
    synonyms: ['IHC', 'immunostains', 'immunoperoxidase', 'immunohistochemical stains'],
  },
  {
    name: 'direct immunofluorescence',
    synonyms: [
      'DIF',
      'IF',
      'immunofluorescence',
      'direct IF',
      'IMF',
      'immunofluorescence mapping',
      'salt-split immunofluorescence',
    ],
  },
  {
    name: 'bacterial culture',
    synonyms: [
      'culture',
      'tissue culture',
      'C&S',
      'culture and sensitivity',
      'aerobic culture',
      'anaerobic culture',
      'bacterial cultures',
      'aerobic and anaerobic culture',
      'cultures',
      'bacterial culture and sensitivity',
      'microbiology',
    ],
  },
  {
    name: 'fungal culture',
    synonyms: ['fungus culture', 'mycology', 'fungal cultures', 'mycology culture', 'deep fungal culture'],
  },
  {
    name: 'mycobacterial culture',
    synonyms: [
      'AFB culture',
      'TB culture',
      'acid-fast culture',
      'mycobacteria culture',
      'atypical mycobacterial culture',
      'AFB',
    ],
  },
  { name: 'viral culture', synonyms: ['virus culture', 'viral isolation'] },
  {
    name: 'PCR',
    synonyms: [
      'viral PCR',
      'HSV PCR',
      'VZV PCR',
      'polymerase chain reaction',
      'molecular testing',
      'mycobacterial PCR',
    ],
  },
  { name: 'electron microscopy', synonyms: ['EM', 'ultrastructure', 'transmission electron microscopy'] },
  { name: 'frozen section', synonyms: ['frozen', 'frozen sections', 'intraoperative frozen section'] },
  { name: 'flow cytometry', synonyms: ['flow'] },
  {
    name: 'gene rearrangement',
    synonyms: [
      'TCR gene rearrangement',
      'T-cell gene rearrangement',
      'clonality',
      'T-cell clonality',
      'gene rearrangement studies',
      'clonality studies',
    ],
  },
];

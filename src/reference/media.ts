import type { Sourced, WordRow } from './types.ts';

/**
 * What a medium does to a test: `serves` it, `poor` makes it less reliable or asks for haste, `destroys` what the
 * test looks for.
 */
export interface Effect extends Sourced {
  readonly on: 'serves' | 'poor' | 'destroys';
}

/** How long tissue for a test keeps in a medium. */
export interface Keeps extends Sourced {
  readonly test: string;
  readonly days: number;
}

export interface MediumRow extends WordRow {
  /** Whether it fixes the tissue, so that nothing can be undone. */
  readonly fixes?: boolean;
  /** The effect on each test, by the names of their table; nothing is known of what is absent. */
  readonly effects?: Readonly<Record<string, Effect>>;
  readonly keeps?: Keeps;
}

type On = Effect['on'];

/** The same effect on several tests. */
const effect = (
  on: On,
  source: string,
  mark: Sourced['mark'],
  ...tests: readonly string[]
): Readonly<Record<string, Effect>> => Object.fromEntries(tests.map((test) => [test, { on, source, mark }]));

const cultures = ['bacterial culture', 'fungal culture', 'mycobacterial culture'] as const;

const fixative = {
  ...effect('destroys', 'immunofluorescence-manuals', 'Q', 'direct immunofluorescence'),
  ...effect('destroys', 'culture-manuals', 'Q', ...cultures),
  ...effect('destroys', 'frozen-section-manual', 'Q', 'frozen section'),
  ...effect('destroys', 'media-memory', 'M', 'viral culture', 'flow cytometry'),
};

/** No source read here speaks of these pairs; the sheet of the medium rules out all but immunofluorescence. */
const immunofluorescenceOnly = {
  ...effect('serves', 'immunofluorescence-manuals', 'Q', 'direct immunofluorescence'),
  ...effect(
    'poor',
    'michel-medium-sheet',
    'Q',
    'routine histology',
    'special stains',
    'immunohistochemistry',
    ...cultures,
    'viral culture',
    'PCR',
    'electron microscopy',
    'frozen section',
    'flow cytometry',
    'gene rearrangement',
  ),
};

const unfixed = {
  ...effect('serves', 'culture-manuals', 'Q', ...cultures),
  ...effect('poor', 'histology-manuals', 'Q', 'routine histology'),
  ...effect('poor', 'media-memory', 'M', 'special stains', 'immunohistochemistry', 'electron microscopy'),
  ...effect('serves', 'media-memory', 'M', 'viral culture', 'PCR', 'flow cytometry', 'gene rearrangement'),
};

export const media: readonly MediumRow[] = [
  {
    name: 'formalin',
    synonyms: [
      '10% formalin',
      'neutral buffered formalin',
      '10% neutral buffered formalin',
      'NBF',
      'buffered formalin',
      'formaldehyde',
      'formal saline',
      'formol saline',
      '10% buffered formalin',
      'formalin jar',
      'formalin container',
    ],
    fixes: true,
    effects: {
      ...fixative,
      ...effect(
        'serves',
        'histology-manuals',
        'Q',
        'routine histology',
        'special stains',
        'immunohistochemistry',
      ),
      ...effect('destroys', 'jaad-2010-formalin', 'Q', 'direct immunofluorescence'),
      ...effect('poor', 'electron-microscopy-manuals', 'M', 'electron microscopy'),
      ...effect('serves', 'media-memory', 'M', 'PCR', 'gene rearrangement'),
    },
  },
  {
    name: 'Michel',
    synonyms: [
      "Michel's",
      'Michels',
      "Michel's medium",
      'Michel medium',
      'Michels medium',
      "Michel's transport medium",
      'Michel transport medium',
      "Michel's solution",
      "Michel's media",
      "Michel's fixative",
    ],
    fixes: false,
    effects: immunofluorescenceOnly,
    keeps: { test: 'direct immunofluorescence', days: 5, source: 'michel-medium-sheet', mark: 'Q' },
  },
  {
    name: 'immunofluorescence transport',
    synonyms: [
      'immunofluorescence transport medium',
      'IF transport medium',
      'DIF transport medium',
      'immunofluorescence medium',
      'IF medium',
      'DIF medium',
      'IF transport',
      'DIF transport',
      'immunofluorescence transport media',
    ],
    fixes: false,
    effects: immunofluorescenceOnly,
    keeps: { test: 'direct immunofluorescence', days: 5, source: 'immunofluorescence-manuals', mark: 'Q' },
  },
  {
    name: 'saline',
    synonyms: [
      'normal saline',
      '0.9% saline',
      'sterile saline',
      'saline gauze',
      'sterile saline gauze',
      'saline-moistened gauze',
      'saline-soaked gauze',
      'moist gauze',
      'sodium chloride',
      '0.9% sodium chloride',
      'phosphate buffered saline',
      'PBS',
      'preservative-free saline',
      'fresh on saline gauze',
      'fresh',
      'fresh tissue',
    ],
    fixes: false,
    effects: {
      ...unfixed,
      ...effect('serves', 'saline-immunofluorescence', 'Q2', 'direct immunofluorescence'),
      ...effect('serves', 'frozen-section-manual', 'Q', 'frozen section'),
    },
    keeps: { test: 'direct immunofluorescence', days: 2, source: 'saline-immunofluorescence', mark: 'Q2' },
  },
  {
    name: 'bacteriostatic saline',
    synonyms: ['bacteriostatic sodium chloride', 'saline with benzyl alcohol'],
    fixes: false,
    effects: {
      ...unfixed,
      ...effect('poor', 'media-memory', 'M', ...cultures, 'viral culture'),
      ...effect('serves', 'media-memory', 'M', 'direct immunofluorescence', 'frozen section'),
    },
  },
  {
    name: 'sterile container',
    synonyms: [
      'sterile cup',
      'sterile jar',
      'dry sterile container',
      'sterile specimen cup',
      'sterile container with saline',
      'sterile container on saline gauze',
      'sterile container with sterile saline',
      'sterile container with saline gauze',
      'sterile tube',
      'sterile urine cup',
      'dry container',
      'sterile specimen container',
      'sterile container with moist gauze',
    ],
    fixes: false,
    effects: {
      ...unfixed,
      ...effect('poor', 'media-memory', 'M', 'direct immunofluorescence'),
      ...effect('serves', 'frozen-section-manual', 'Q', 'frozen section'),
    },
  },
  {
    name: 'glutaraldehyde',
    synonyms: [
      '3% glutaraldehyde',
      '2.5% glutaraldehyde',
      'Karnovsky',
      "Karnovsky's",
      "Karnovsky's fixative",
      'EM fixative',
      'electron microscopy fixative',
    ],
    fixes: true,
    effects: {
      ...fixative,
      ...effect('serves', 'electron-microscopy-manuals', 'Q', 'electron microscopy'),
      ...effect(
        'poor',
        'media-memory',
        'M',
        'routine histology',
        'special stains',
        'immunohistochemistry',
        'PCR',
        'gene rearrangement',
      ),
    },
  },
  {
    name: 'alcohol',
    synonyms: [
      'absolute alcohol',
      'ethanol',
      '70% ethanol',
      'absolute ethanol',
      '95% ethanol',
      '70% alcohol',
    ],
    fixes: true,
    effects: {
      ...fixative,
      ...effect('serves', 'alcohol-fixation-manual', 'Q', 'routine histology', 'special stains'),
      ...effect('poor', 'media-memory', 'M', 'immunohistochemistry', 'electron microscopy'),
      ...effect('serves', 'media-memory', 'M', 'PCR', 'gene rearrangement'),
    },
  },
  {
    name: 'viral transport medium',
    synonyms: ['VTM', 'viral transport', 'universal transport medium', 'UTM'],
    fixes: false,
    effects: {
      ...effect('serves', 'media-memory', 'M', 'viral culture', 'PCR', 'gene rearrangement'),
      ...effect(
        'poor',
        'media-memory',
        'M',
        'direct immunofluorescence',
        'special stains',
        'immunohistochemistry',
        'electron microscopy',
        'frozen section',
        'flow cytometry',
      ),
      ...effect('poor', 'histology-manuals', 'Q', 'routine histology'),
      // It holds antibiotics against bacteria and fungi.
      ...effect('poor', 'media-memory', 'M', ...cultures),
    },
  },
  {
    name: 'cell culture medium',
    synonyms: ['RPMI', 'tissue culture medium', 'tissue culture transport medium'],
    fixes: false,
    effects: {
      ...effect('serves', 'fresh-tissue-manual', 'Q', 'direct immunofluorescence'),
      ...effect(
        'serves',
        'media-memory',
        'M',
        'flow cytometry',
        'PCR',
        'gene rearrangement',
        'viral culture',
        'frozen section',
      ),
      ...effect('poor', 'histology-manuals', 'Q', 'routine histology'),
      ...effect(
        'poor',
        'media-memory',
        'M',
        'special stains',
        'immunohistochemistry',
        'electron microscopy',
        ...cultures,
      ),
    },
  },
  {
    name: 'snap-frozen',
    synonyms: [
      'snap frozen',
      'liquid nitrogen',
      'frozen',
      'dry ice',
      'on dry ice',
      'frozen on dry ice',
      'OCT',
    ],
    fixes: false,
    effects: {
      ...effect('serves', 'immunofluorescence-manuals', 'Q', 'direct immunofluorescence'),
      ...effect('serves', 'media-memory', 'M', 'frozen section', 'PCR', 'gene rearrangement'),
      ...effect('poor', 'histology-manuals', 'Q', 'routine histology'),
      ...effect(
        'poor',
        'media-memory',
        'M',
        'special stains',
        'immunohistochemistry',
        'flow cytometry',
        'viral culture',
        ...cultures,
      ),
      ...effect('destroys', 'media-memory', 'M', 'electron microscopy'),
    },
  },
];

import type { WordRow } from './types.ts';

export interface MethodRow extends WordRow {
  readonly takesTissue: boolean;
  /** Whether a careful record says how the wound was closed. */
  readonly wantsClosure: boolean;
  /** False where no wound is left that bleeds or wants a dressing. */
  readonly wound?: false;
  /** Whether the method itself sends current through the patient; `either` where the word does not say. */
  readonly current?: 'yes' | 'either';
  /** Whether the size is the diameter of a punch. */
  readonly diameter?: boolean;
  /** Depths, by their names, that do not suit the method, and how much that is worth saying. */
  readonly odd?: Readonly<Record<string, 'information' | 'warning'>>;
  /**
   * mL of local anesthetic that one site usually takes. Common practice, no source: shown as help while a volume is
   * typed, never judged and never written.
   */
  readonly usualMl?: readonly [from: number, to: number];
}

const shallow = { epidermis: 'information', 'papillary dermis': 'information' } as const;
const tissue = { takesTissue: true, wantsClosure: false } as const;
const cut = { takesTissue: true, wantsClosure: true, odd: shallow } as const;
const noTissue = { takesTissue: false, wantsClosure: false } as const;

export const methods: readonly MethodRow[] = [
  {
    name: 'shave',
    synonyms: [
      'tangential',
      'tangential biopsy',
      'shave biopsy',
      'shave bx',
      'tangential shave',
      'superficial shave',
      'shave removal',
      'shave excision',
      'tangential excision',
    ],
    ...tissue,
    odd: { 'deep dermis': 'information', subcutis: 'warning' },
    usualMl: [0.5, 2],
  },
  {
    name: 'deep shave',
    synonyms: [
      'saucerization',
      'saucerisation',
      'saucerization biopsy',
      'saucerized',
      'scoop',
      'scoop shave',
      'deep scoop',
      'deep shave biopsy',
      'deep tangential',
      'deep shave removal',
    ],
    ...tissue,
    odd: { ...shallow, subcutis: 'information' },
    usualMl: [1, 3],
  },
  {
    name: 'scissor',
    synonyms: [
      'snip',
      'snip biopsy',
      'scissor snip',
      'scissors',
      'scissor biopsy',
      'snip excision',
      'snip removal',
      'scissor excision',
    ],
    ...tissue,
    odd: { subcutis: 'information' },
    usualMl: [0.2, 1],
  },
  {
    name: 'curettage',
    synonyms: ['curette', 'curettage biopsy', 'curet', 'curetting'],
    ...tissue,
    usualMl: [0.5, 2],
  },
  {
    name: 'electrodesiccation and curettage',
    synonyms: [
      'curettage and electrodesiccation',
      'curettage and desiccation',
      'curettage and cautery',
      'curettage and electrocautery',
      'ED&C',
      'EDC',
      'C&E',
      'C&D',
      'C&C',
      'desiccation and curettage',
    ],
    ...tissue,
    current: 'either',
  },
  {
    name: 'punch',
    synonyms: ['punch biopsy', 'punch bx', 'punch excision', 'trephine', 'double punch'],
    ...cut,
    diameter: true,
    usualMl: [0.5, 2],
  },
  {
    name: 'incisional',
    synonyms: [
      'incisional biopsy',
      'incisional bx',
      'incision biopsy',
      'wedge',
      'wedge biopsy',
      'partial excision',
      'deep incisional',
    ],
    ...cut,
    usualMl: [2, 6],
  },
  {
    name: 'excisional',
    synonyms: [
      'ellipse',
      'excision',
      'excisional biopsy',
      'excisional bx',
      'elliptical',
      'elliptical excision',
      'excision biopsy',
      'fusiform excision',
      'fusiform',
      'complete excision',
      're-excision',
      'wide excision',
    ],
    ...cut,
    usualMl: [3, 10],
  },
  {
    name: 'nail biopsy',
    synonyms: ['nail matrix biopsy', 'nail bed biopsy', 'nail shave'],
    ...tissue,
  },
  {
    name: 'nail clipping',
    synonyms: [
      'nail clippings',
      'clipping',
      'nail plate clipping',
      'toenail clipping',
      'fingernail clipping',
    ],
    ...tissue,
    wound: false,
  },
  {
    name: 'electrosurgical excision',
    synonyms: [
      'electrosurgical shave',
      'loop excision',
      'radiofrequency shave',
      'radiofrequency excision',
      'electrosection',
    ],
    ...tissue,
    current: 'yes',
  },
  {
    name: 'electrodesiccation',
    synonyms: [
      'electrodessication',
      'desiccation',
      'electrocautery',
      'cautery',
      'cauterization',
      'cauterisation',
    ],
    ...noTissue,
    current: 'either',
  },
  {
    name: 'electrofulguration',
    synonyms: ['fulguration', 'electrocoagulation', 'electrosurgery', 'diathermy', 'radiofrequency'],
    ...noTissue,
    current: 'yes',
  },
  {
    name: 'cryotherapy',
    synonyms: ['cryosurgery', 'liquid nitrogen', 'LN2', 'freezing'],
    ...noTissue,
    wound: false,
  },
  { name: 'incision and drainage', synonyms: ['I&D', 'drainage', 'incision'], ...noTissue },
  { name: 'injection', synonyms: ['intralesional injection', 'intralesional'], ...noTissue, wound: false },
  { name: 'laser', synonyms: ['laser ablation'], ...noTissue },
];

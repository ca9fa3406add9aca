import type { WordRow } from './types.ts';

export interface MaterialRow extends WordRow {
  /** Absent where it is a practice's own word. */
  readonly absorbable?: boolean;
  readonly strand?: 'monofilament' | 'braided' | 'twisted' | 'other';
  readonly contains?: readonly string[];
}

export const materials: readonly MaterialRow[] = [
  {
    name: 'nylon',
    synonyms: ['polyamide', 'nylon suture', 'monofilament nylon'],
    absorbable: false,
    strand: 'monofilament',
    contains: ['nylon'],
  },
  {
    name: 'braided nylon',
    synonyms: ['braided polyamide'],
    absorbable: false,
    strand: 'braided',
    contains: ['nylon'],
  },
  {
    name: 'polypropylene',
    synonyms: ['polypropylene suture'],
    absorbable: false,
    strand: 'monofilament',
    contains: ['polypropylene'],
  },
  {
    name: 'polyester',
    synonyms: ['braided polyester'],
    absorbable: false,
    strand: 'braided',
    contains: ['polyester'],
  },
  { name: 'polybutester', synonyms: [], absorbable: false, strand: 'monofilament' },
  { name: 'polytetrafluoroethylene', synonyms: ['PTFE', 'ePTFE'], absorbable: false, strand: 'monofilament' },
  { name: 'polyvinylidene fluoride', synonyms: ['PVDF'], absorbable: false, strand: 'monofilament' },
  {
    name: 'silk',
    synonyms: ['silk suture', 'braided silk'],
    absorbable: false,
    strand: 'braided',
    contains: ['silk'],
  },
  {
    name: 'stainless steel',
    synonyms: ['steel', 'wire'],
    absorbable: false,
    strand: 'monofilament',
    contains: ['nickel'],
  },
  { name: 'cotton', synonyms: ['linen'], absorbable: false, strand: 'twisted' },
  {
    name: 'polyglactin',
    synonyms: ['polyglactin 910', 'braided polyglactin', 'polyglactin suture'],
    absorbable: true,
    strand: 'braided',
    contains: ['polyglactin'],
  },
  {
    name: 'rapid polyglactin',
    synonyms: ['polyglactin rapid', 'rapidly absorbed polyglactin', 'fast-absorbing polyglactin'],
    absorbable: true,
    strand: 'braided',
    contains: ['polyglactin'],
  },
  {
    name: 'antibacterial polyglactin',
    synonyms: ['triclosan-coated polyglactin', 'polyglactin with triclosan'],
    absorbable: true,
    strand: 'braided',
    contains: ['polyglactin', 'triclosan'],
  },
  {
    name: 'polyglycolic acid',
    synonyms: ['PGA', 'polyglycolate'],
    absorbable: true,
    strand: 'braided',
    contains: ['polyglycolic acid'],
  },
  {
    name: 'polydioxanone',
    synonyms: ['PDO'],
    absorbable: true,
    strand: 'monofilament',
    contains: ['polydioxanone'],
  },
  {
    name: 'poliglecaprone',
    synonyms: ['poliglecaprone 25'],
    absorbable: true,
    strand: 'monofilament',
    contains: ['poliglecaprone'],
  },
  { name: 'polyglyconate', synonyms: [], absorbable: true, strand: 'monofilament' },
  { name: 'glycomer', synonyms: ['glycomer 631'], absorbable: true, strand: 'monofilament' },
  { name: 'polyglytone', synonyms: ['polyglytone 6211'], absorbable: true, strand: 'monofilament' },
  {
    name: 'plain gut',
    synonyms: ['gut', 'catgut', 'plain catgut', 'surgical gut'],
    absorbable: true,
    strand: 'twisted',
    contains: ['gut'],
  },
  {
    name: 'fast-absorbing gut',
    synonyms: ['fast gut', 'fast absorbing plain gut', 'fast-absorbing catgut'],
    absorbable: true,
    strand: 'twisted',
    contains: ['gut'],
  },
  {
    name: 'chromic gut',
    synonyms: ['chromic', 'chromic catgut'],
    absorbable: true,
    strand: 'twisted',
    contains: ['gut', 'chromium'],
  },
];

import type { WordRow } from './types.ts';

export interface ClosureRow extends WordRow {
  /** Whether something holds that has to be taken out unless it is absorbed. */
  readonly stitched: boolean;
  readonly contains?: readonly string[];
  /** What some products of this name hold, or give off. */
  readonly mayContain?: readonly string[];
}

export const closures: readonly ClosureRow[] = [
  {
    name: 'none',
    synonyms: [
      'open',
      'left open',
      'not closed',
      'not needed',
      'none needed',
      'not applicable',
      'N/A',
      'no closure',
      'unclosed',
      'no sutures',
      'no stitches',
      'not sutured',
    ],
    stitched: false,
  },
  {
    name: 'second intention',
    synonyms: [
      'secondary intention',
      '2nd intention',
      'secondary intent',
      'second intent',
      'healing by second intention',
      'healing by secondary intention',
      'granulation',
      'heal by second intention',
      'by second intention',
    ],
    stitched: false,
  },
  {
    name: 'suture',
    synonyms: [
      'sutures',
      'sutured',
      'stitch',
      'stitches',
      'primary closure',
      'primary',
      'layered closure',
      'simple closure',
      'intermediate closure',
      'complex closure',
      'linear closure',
      'side to side',
      'purse-string',
      'partial closure',
    ],
    stitched: true,
  },
  {
    name: 'adhesive strips',
    synonyms: [
      'adhesive strip',
      'wound closure strips',
      'skin closure strips',
      'sterile strips',
      'closure strips',
      'butterfly strips',
      'strips',
      'adhesive closure strips',
      'adhesive skin closures',
      'tape closure',
    ],
    stitched: false,
    contains: ['adhesive'],
  },
  {
    name: 'tissue glue',
    synonyms: [
      'cyanoacrylate',
      'skin glue',
      'tissue adhesive',
      'glue',
      'skin adhesive',
      'octyl cyanoacrylate',
      'butyl cyanoacrylate',
    ],
    stitched: false,
    contains: ['cyanoacrylate'],
    // Its text rules it out with an allergy to formaldehyde (source `tissue-glue-reference`).
    mayContain: ['formaldehyde'],
  },
  { name: 'staples', synonyms: ['staple', 'skin staples', 'clips'], stitched: true, contains: ['nickel'] },
  { name: 'flap', synonyms: ['local flap', 'advancement flap', 'rotation flap'], stitched: true },
  {
    name: 'graft',
    synonyms: ['skin graft', 'full thickness graft', 'split thickness graft'],
    stitched: true,
  },
];

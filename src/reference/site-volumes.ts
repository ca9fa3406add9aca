import type { Sourced } from './types.ts';

/** What one injection after another may go into, so that they count together. */
export type VolumePlace = 'finger' | 'thumb' | 'toe' | 'ear' | 'penis';

/** The most that a source injects to numb one place as a whole. */
export interface SiteVolumeRow extends Sourced {
  readonly place: VolumePlace;
  readonly maxMl: number;
}

/**
 * Sources differ: 1 to 3 mL with more for thumb and great toe, 2 to 5 mL for a finger, 4 mL for a finger and 6 mL for a
 * toe; 8 to 12 mL around an ear; 6 to 10 mL around a penis, or 10 mL and a ring of 10 mL more. The greatest of them
 * counts, so that only more than any source injects is mentioned; for the thumb it is that of the toe, since one source
 * puts the two together. For nose, lip, eyelid and vulva only the usual was found, and no most.
 */
export const siteVolumes: readonly SiteVolumeRow[] = [
  { place: 'finger', maxMl: 5, source: 'digital-block-nsw', mark: 'Q' },
  { place: 'thumb', maxMl: 6, source: 'digital-block-family-notebook', mark: 'Q' },
  { place: 'toe', maxMl: 6, source: 'digital-block-family-notebook', mark: 'Q' },
  { place: 'ear', maxMl: 12, source: 'ear-block-family-notebook', mark: 'Q' },
  { place: 'penis', maxMl: 20, source: 'penile-block-circumcision', mark: 'Q' },
];

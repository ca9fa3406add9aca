import type { Sourced } from './types.ts';

/** The most that a source injects to numb one digit. */
export interface DigitVolumeRow extends Sourced {
  readonly digit: 'finger' | 'thumb' | 'toe';
  readonly maxMl: number;
}

/**
 * Sources differ: 1 to 3 mL with more for thumb and great toe, 2 to 5 mL for a finger, 4 mL for a finger and 6 mL for a
 * toe. The greatest of them counts, so that only more than any source injects is told of; for the thumb it is that of
 * the toe, since one source puts the two together.
 */
export const digitVolumes: readonly DigitVolumeRow[] = [
  { digit: 'finger', maxMl: 5, source: 'digital-block-nsw', mark: 'Q' },
  { digit: 'thumb', maxMl: 6, source: 'digital-block-family-notebook', mark: 'Q' },
  { digit: 'toe', maxMl: 6, source: 'digital-block-family-notebook', mark: 'Q' },
];

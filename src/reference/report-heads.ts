import type { SiteRegion } from './sites.ts';

/**
 * Words that may be beside the place in the head of a report: `Skin, left cheek, shave biopsy`. A part of a report that
 * says nothing but a place and these is a head. Common practice of laboratories.
 */
const headWords: ReadonlySet<string> = new Set(
  (
    'skin tissue cutaneous nos designated labeled labelled submitted received stated specimen site biopsy bx biopsied shave shaved punch ' +
    'excision excisional incisional tangential saucerization scoop curettage curettings curetted scissor snip ellipse elliptical wedge ' +
    'deep superficial partial full thickness re-excision reexcision wide local mm cm lesion from of the and taken removed removal sample ' +
    'procedure formalin fixed nail plate clipping'
  ).split(' '),
);

/** Parts of the body that are side by side, so that one of them may be called by the other's name. */
const neighbors: readonly (readonly [SiteRegion, SiteRegion])[] = [
  ['scalp', 'face'],
  ['scalp', 'ear'],
  ['scalp', 'neck'],
  ['face', 'eye'],
  ['face', 'nose'],
  ['face', 'ear'],
  ['face', 'mouth'],
  ['face', 'neck'],
  ['eye', 'nose'],
  ['nose', 'mouth'],
  ['ear', 'neck'],
  ['neck', 'chest'],
  ['neck', 'back'],
  ['neck', 'shoulder'],
  ['chest', 'breast'],
  ['chest', 'axilla'],
  ['chest', 'shoulder'],
  ['breast', 'axilla'],
  ['axilla', 'arm'],
  ['axilla', 'shoulder'],
  ['axilla', 'back'],
  ['abdomen', 'groin'],
  ['abdomen', 'back'],
  ['groin', 'genital'],
  ['groin', 'leg'],
  ['genital', 'leg'],
  ['genital', 'buttock'],
  ['buttock', 'back'],
  ['buttock', 'leg'],
  ['back', 'shoulder'],
  ['shoulder', 'arm'],
  ['arm', 'hand'],
  ['hand', 'nail'],
  ['leg', 'foot'],
  ['foot', 'nail'],
];

/** Words of a place that exclude each other: a lower lip is no upper one. */
const opposites: readonly (readonly [string, string])[] = [
  ['upper', 'lower'],
  ['superior', 'inferior'],
  ['medial', 'lateral'],
  ['proximal', 'distal'],
  ['anterior', 'posterior'],
  ['dorsal', 'volar'],
  ['dorsal', 'palmar'],
  ['dorsal', 'plantar'],
];

/** Names of germs after the letter of their kind, which is no label: `C. Albicans`. */
const germs: ReadonlySet<string> = new Set(
  (
    'albicans aureus coli acnes rubrum marinum glabrata tropicalis parapsilosis pyogenes canis tonsurans mentagrophytes epidermidis ' +
    'aeruginosa cloacae faecalis schenckii chelonae abscessus fortuitum leprae tuberculosis pneumoniae mirabilis furfur globosa'
  ).split(' '),
);

/** How laboratories head the parts of a report. */
export const reportHeads = { germs, headWords, neighbors, opposites };

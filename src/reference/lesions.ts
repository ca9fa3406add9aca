import type { WordRow } from './types.ts';

/** What the description of a lesion says about its surface. */
export interface LesionRow extends WordRow {
  readonly says: 'flat' | 'raised' | 'worn' | 'open';
}

const row = (says: LesionRow['says'], name: string, ...synonyms: readonly string[]): LesionRow => ({
  name,
  synonyms,
  says,
});

/** Words of a lesion's description: flat ones, ones that rise above the skin, and what was scratched or is fading, and what is open. */
export const lesions: readonly LesionRow[] = [
  row('flat', 'macule', 'macular'),
  row('flat', 'patch'),
  row('flat', 'flat', 'flat lesion'),
  row('raised', 'papule', 'papular', 'maculopapule', 'flat papule', 'flat-topped papule'),
  row('raised', 'plaque', 'flat plaque'),
  row('raised', 'nodule', 'nodular', 'tumor', 'bump', 'lump'),
  row('raised', 'pedunculated', 'stalk', 'stalked', 'on a stalk', 'polypoid', 'polyp', 'pedicle'),
  row('raised', 'skin tag', 'acrochordon', 'fibroepithelial polyp', 'tag', 'soft fibroma'),
  row('raised', 'raised', 'elevated', 'exophytic', 'protruding', 'dome-shaped', 'filiform', 'palpable'),
  row('raised', 'wart', 'verruca', 'flat wart', 'verrucous', 'condyloma', 'cutaneous horn', 'horn'),
  row('worn', 'excoriated', 'excoriation', 'scratched', 'scratch mark', 'picked'),
  row('worn', 'eroded', 'erosion', 'ruptured', 'ruptured blister', 'superinfected', 'secondarily infected'),
  row('open', 'ulcer', 'ulcerated', 'ulceration', 'ulcerating', 'ulcerative', 'ulcers'),
  row('open', 'open wound', 'open sore', 'wound', 'laceration', 'denuded', 'raw surface'),
  row('worn', 'fading', 'resolving', 'involuting', 'old lesion', 'healing lesion'),
];

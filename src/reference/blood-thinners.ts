import type { WordRow } from './types.ts';

/** A medicine that keeps blood from clotting. Generic names, from memory. */
export interface BloodThinnerRow extends WordRow {
  /** Its name in Spanish. */
  readonly spanish: string;
}

const thinner = (name: string, spanish: string, ...synonyms: readonly string[]): BloodThinnerRow => ({
  name,
  spanish,
  synonyms,
});

export const bloodThinners: readonly BloodThinnerRow[] = [
  thinner('apixaban', 'apixabán'),
  thinner('rivaroxaban', 'rivaroxabán'),
  thinner('edoxaban', 'edoxabán'),
  thinner('dabigatran', 'dabigatrán', 'dabigatran etexilate'),
  thinner('warfarin', 'warfarina', 'warfarin sodium', 'coumarin'),
  thinner('acenocoumarol', 'acenocumarol'),
  thinner('phenprocoumon', 'fenprocumón'),
  thinner('heparin', 'heparina', 'unfractionated heparin'),
  thinner('enoxaparin', 'enoxaparina'),
  thinner('dalteparin', 'dalteparina'),
  thinner('tinzaparin', 'tinzaparina'),
  thinner('fondaparinux', 'fondaparinux'),
  thinner('aspirin', 'aspirina', 'acetylsalicylic acid', 'ASA', 'baby aspirin', 'low-dose aspirin'),
  thinner('clopidogrel', 'clopidogrel'),
  thinner('prasugrel', 'prasugrel'),
  thinner('ticagrelor', 'ticagrelor'),
  thinner('ticlopidine', 'ticlopidina'),
  thinner('dipyridamole', 'dipiridamol'),
  thinner('cilostazol', 'cilostazol'),
  thinner('vorapaxar', 'vorapaxar'),
  thinner(
    'blood thinner',
    'anticoagulante',
    'blood thinners',
    'anticoagulant',
    'anticoagulants',
    'anticoagulation',
    'antiplatelet',
    'antiplatelets',
    'DOAC',
    'NOAC',
  ),
];

import { common } from './marked.ts';
import type { Sourced, WordRow } from './types.ts';

/** A medicine that keeps blood from clotting. Generic names, from memory. */
export interface BloodThinnerRow extends WordRow, Sourced {
  /** Its name in Spanish. */
  readonly spanish: string;
  /** What was read of bleeding after skin surgery under it; absent where nothing says that it bleeds more. */
  readonly bleeding?: Sourced;
}

/** Warfarin alone was a risk of its own in a study of 5950 lesions, aspirin was not. */
const warfarin: Sourced = { source: 'warfarin-skin-surgery-2007', mark: 'Q' };
/** A secondary page gives every anticoagulated patient a pressure dressing. */
const anticoagulant: Sourced = { source: 'pressure-dressing-page', mark: 'Q2' };

const bleeding: ReadonlyMap<string, Sourced> = new Map([
  ...['warfarin', 'acenocoumarol', 'phenprocoumon'].map((name): [string, Sourced] => [name, warfarin]),
  ...[
    'apixaban',
    'rivaroxaban',
    'edoxaban',
    'dabigatran',
    'heparin',
    'enoxaparin',
    'low-molecular-weight heparin',
    'dalteparin',
    'tinzaparin',
    'fondaparinux',
    'argatroban',
    'bivalirudin',
    'blood thinner',
  ].map((name): [string, Sourced] => [name, anticoagulant]),
  ...['clopidogrel', 'prasugrel', 'ticagrelor', 'ticlopidine', 'vorapaxar'].map((name): [string, Sourced] => [
    name,
    common,
  ]),
]);

const thinner = (name: string, spanish: string, ...synonyms: readonly string[]): BloodThinnerRow => ({
  ...common,
  name,
  spanish,
  synonyms,
  ...(bleeding.has(name) ? { bleeding: bleeding.get(name)! } : {}),
});

export const bloodThinners: readonly BloodThinnerRow[] = [
  thinner('apixaban', 'apixabán'),
  thinner('rivaroxaban', 'rivaroxabán'),
  thinner('edoxaban', 'edoxabán'),
  thinner('dabigatran', 'dabigatrán', 'dabigatran etexilate'),
  thinner('warfarin', 'warfarina', 'warfarin sodium', 'coumarin'),
  thinner('acenocoumarol', 'acenocumarol'),
  thinner('phenprocoumon', 'fenprocumón'),
  thinner(
    'heparin',
    'heparina',
    'unfractionated heparin',
    'UFH',
    'heparin drip',
    'heparin infusion',
    'subcutaneous heparin',
  ),
  thinner('enoxaparin', 'enoxaparina', 'enoxaparin sodium'),
  thinner(
    'low-molecular-weight heparin',
    'heparina de bajo peso molecular',
    'LMWH',
    'low molecular weight heparins',
  ),
  thinner('argatroban', 'argatrobán'),
  thinner('bivalirudin', 'bivalirudina'),
  thinner(
    'aspirin-dipyridamole',
    'aspirina y dipiridamol',
    'aspirin/dipyridamole',
    'dipyridamole-aspirin',
    'dipyridamole/aspirin',
  ),
  thinner('anagrelide', 'anagrelida'),
  thinner('pentoxifylline', 'pentoxifilina'),
  thinner('dalteparin', 'dalteparina'),
  thinner('tinzaparin', 'tinzaparina'),
  thinner('fondaparinux', 'fondaparinux'),
  thinner(
    'aspirin',
    'aspirina',
    'acetylsalicylic acid',
    'ASA',
    'baby aspirin',
    'low-dose aspirin',
    'ASA 81',
    'aspirin 81',
    'aspirin 81 mg',
    'ASA 325',
    'aspirin 325',
    'baby ASA',
    'acetylsalicylate',
    'enteric-coated aspirin',
    'EC aspirin',
    'low dose ASA',
    'daily aspirin',
    'ASA 81 mg',
    'ASA81',
  ),
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
    'NOACs',
    'DOACs',
    'TSOAC',
    'direct oral anticoagulant',
    'oral anticoagulant',
    'oral anticoagulants',
    'DAPT',
    'dual antiplatelet therapy',
    'dual antiplatelet',
    'P2Y12 inhibitor',
    'factor Xa inhibitor',
    'anticoagulated',
    'on anticoagulation',
    'novel oral anticoagulant',
    'antiplatelet therapy',
    'blood-thinning medication',
    'anticoagulant therapy',
    'vitamin K antagonist',
    'VKA',
    'thinners',
    'anticoag',
    'anticoags',
  ),
];

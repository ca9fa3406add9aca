import type { WordRow } from './types.ts';

/**
 * How it stops bleeding. `current` passes through the patient, `heat` does not, `bipolar` only between the tips;
 * `either` is a word that is used for heat and for current.
 */
export type Stops =
  | 'none'
  | 'pressure'
  | 'chemical'
  | 'heat'
  | 'current'
  | 'bipolar'
  | 'either'
  | 'stitch'
  | 'material'
  | 'drug'
  | 'other';

export interface HemostasisRow extends WordRow {
  /** Absent where it is a practice's own word. */
  readonly stops?: Stops;
  /** Allergens in it, by the names of their table. */
  readonly contains?: readonly string[];
  readonly mayContain?: readonly string[];
  /** Whether it burns until it is dry. */
  readonly flammable?: boolean;
  /** Whether it leaves iron in the skin. */
  readonly stains?: boolean;
}

export const hemostasis: readonly HemostasisRow[] = [
  {
    name: 'none',
    synonyms: [
      'no hemostasis',
      'no haemostasis',
      'none needed',
      'not needed',
      'not required',
      'none required',
      'spontaneous',
      'self-limited',
    ],
    stops: 'none',
  },
  {
    name: 'pressure',
    synonyms: [
      'direct pressure',
      'manual pressure',
      'compression',
      'gauze pressure',
      'pressure dressing',
      'firm pressure',
      'tamponade',
    ],
    stops: 'pressure',
  },
  {
    name: 'aluminum chloride',
    synonyms: [
      'aluminium chloride',
      'AlCl3',
      'aluminum chloride hexahydrate',
      'aluminium chloride hexahydrate',
      'aqueous aluminum chloride',
      'aqueous aluminium chloride',
    ],
    stops: 'chemical',
    contains: ['aluminum'],
  },
  {
    name: 'aluminum chloride in alcohol',
    synonyms: [
      'aluminium chloride in alcohol',
      'alcohol-based aluminum chloride',
      'alcohol-based aluminium chloride',
      'alcoholic aluminum chloride',
      'alcoholic aluminium chloride',
      'aluminum chloride alcohol',
      'aluminium chloride alcohol',
    ],
    stops: 'chemical',
    contains: ['aluminum', 'alcohol'],
    flammable: true,
  },
  {
    name: 'ferric subsulfate',
    synonyms: [
      'ferric subsulphate',
      'ferric sulfate',
      'ferric sulphate',
      'ferric subsulfate solution',
      'ferric subsulphate solution',
      "Monsel's solution",
      'Monsel solution',
      "Monsel's",
    ],
    stops: 'chemical',
    contains: ['iron'],
    stains: true,
  },
  {
    name: 'ferric chloride',
    synonyms: ['iron chloride'],
    stops: 'chemical',
    contains: ['iron'],
    stains: true,
  },
  {
    name: 'silver nitrate',
    synonyms: ['AgNO3', 'silver nitrate stick', 'silver nitrate applicator', 'silver nitrate cautery'],
    stops: 'chemical',
    contains: ['silver'],
  },
  { name: 'trichloroacetic acid', synonyms: ['TCA'], stops: 'chemical' },
  { name: 'zinc chloride', synonyms: ['zinc chloride paste'], stops: 'chemical' },
  { name: 'hydrogen peroxide', synonyms: ['peroxide'], stops: 'chemical' },
  {
    name: 'chemical cautery',
    synonyms: [
      'chemical cauterization',
      'chemical cauterisation',
      'chemical hemostasis',
      'chemical haemostasis',
    ],
    stops: 'chemical',
  },
  {
    name: 'heat cautery',
    synonyms: [
      'thermal cautery',
      'battery cautery',
      'battery-operated cautery',
      'battery-powered cautery',
      'hot-wire cautery',
      'hot wire',
      'thermocautery',
      'thermo cautery',
      'handheld cautery',
      'hand-held cautery',
      'disposable cautery',
      'hot cautery',
      'heated cautery',
      'true cautery',
      'heat electrocautery',
      'cautery pen',
      'cold cautery',
    ],
    stops: 'heat',
  },
  {
    name: 'electrosurgery',
    synonyms: [
      'monopolar electrosurgery',
      'monopolar',
      'unipolar',
      'unipolar electrosurgery',
      'unipolar cautery',
      'unipolar electrocautery',
      'unipolar diathermy',
      'unipolar coagulation',
      'unipolar electrocoagulation',
      'monopolar cautery',
      'monopolar electrocautery',
      'monopolar diathermy',
      'monopolar electrocoagulation',
      'monoterminal electrosurgery',
      'monoterminal',
      'electrocoagulation',
      'electrofulguration',
      'fulguration',
      'electrosection',
      'diathermy',
      'radiofrequency',
      'radiosurgery',
      'electrosurgical coagulation',
      'electrosurgical unit',
      'electrosurgical',
      'ESU',
      'RF ablation',
      'radiofrequency ablation',
      'argon plasma coagulation',
      'monopolar electrodesiccation',
    ],
    stops: 'current',
  },
  {
    name: 'bipolar electrosurgery',
    synonyms: [
      'bipolar',
      'bipolar cautery',
      'bipolar electrocautery',
      'bipolar diathermy',
      'bipolar forceps',
      'bipolar coagulation',
      'bipolar electrocoagulation',
      'biterminal',
      'biterminal electrosurgery',
      'bipolar electrodesiccation',
    ],
    stops: 'bipolar',
  },
  {
    name: 'cautery',
    synonyms: [
      'electrocautery',
      'electro cautery',
      'electrodesiccation',
      'electrodessication',
      'electro desiccation',
      'electric cautery',
      'electrical cautery',
      'electro',
      'electrocauterization',
      'coagulation',
      'ED&C',
      'EDC',
      'desiccation',
      'cauterization',
      'cauterisation',
      'cauterized',
      'cauterised',
      'cauterize',
      'cauterise',
      'light electrodesiccation',
      'light cautery',
      'ED',
    ],
    stops: 'either',
  },
  {
    name: 'suture',
    synonyms: [
      'sutures',
      'stitch',
      'stitches',
      'suture ligature',
      'ligature',
      'figure of eight suture',
      'closure',
      'suture closure',
      'clip',
    ],
    stops: 'stitch',
  },
  {
    name: 'gelatin sponge',
    synonyms: ['absorbable gelatin sponge', 'gelatine sponge', 'gelatin foam', 'gelatin powder'],
    stops: 'material',
    contains: ['gelatin'],
  },
  {
    name: 'oxidized cellulose',
    synonyms: ['oxidised cellulose', 'oxidized regenerated cellulose', 'oxidised regenerated cellulose'],
    stops: 'material',
  },
  {
    name: 'collagen',
    synonyms: ['microfibrillar collagen', 'collagen sponge', 'collagen fleece'],
    stops: 'material',
    contains: ['collagen'],
  },
  { name: 'alginate', synonyms: ['calcium alginate', 'alginate dressing'], stops: 'material' },
  {
    name: 'chitosan',
    synonyms: ['chitosan dressing', 'chitosan powder'],
    stops: 'material',
    mayContain: ['shellfish'],
  },
  { name: 'thrombin', synonyms: ['topical thrombin', 'fibrin sealant'], stops: 'drug' },
  {
    name: 'tranexamic acid',
    synonyms: ['topical tranexamic acid', 'TXA'],
    stops: 'drug',
    contains: ['tranexamic acid'],
  },
  {
    name: 'epinephrine',
    synonyms: [
      'adrenaline',
      'topical epinephrine',
      'topical adrenaline',
      'epinephrine-soaked gauze',
      'epinephrine gauze',
    ],
    stops: 'drug',
    contains: ['epinephrine'],
  },
  {
    name: 'tissue glue',
    synonyms: ['cyanoacrylate', 'skin glue', 'tissue adhesive'],
    stops: 'material',
    contains: ['cyanoacrylate'],
    // Its text rules it out with an allergy to formaldehyde (source `tissue-glue-reference`).
    mayContain: ['formaldehyde'],
  },
  { name: 'laser', synonyms: ['laser coagulation'], stops: 'other' },
  { name: 'elevation', synonyms: ['tourniquet', 'ice', 'cold'], stops: 'other' },
];

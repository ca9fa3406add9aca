import { irrelevantAllergens } from './other-allergens.ts';
import type { Sourced, WordRow } from './types.ts';

/** Another allergen to which the same patients may react. */
export interface Crossing extends Sourced {
  readonly to: string;
}

export interface AllergenRow extends WordRow {
  /**
   * `none` and `unknown` are answers rather than allergens; `irrelevant` is in nothing that is used here, and what is
   * wrongly thought to cross with something here is among it.
   */
  readonly kind: 'none' | 'unknown' | 'substance' | 'class' | 'irrelevant';
  /** Other allergens that the word takes in. */
  readonly covers?: readonly string[];
  readonly crosses?: readonly Crossing[];
  /** The class of local anesthetics that the word takes in. */
  readonly anesthetics?: 'amide' | 'ester' | 'any';
  /** Where the word does not say enough, or the reaction is as a rule a rash under what was worn: a warning, no error. */
  readonly mild?: boolean;
}

/** What a patient's reaction or test says of an entry in the list of allergies. */
export interface ReactionRow extends WordRow {
  readonly kind: 'intolerance' | 'allergy' | 'cleared';
}

const substance = (
  name: string,
  synonyms: readonly string[],
  more: Partial<Pick<AllergenRow, 'covers' | 'crosses' | 'anesthetics' | 'mild'>> = {},
): AllergenRow => ({ name, synonyms, kind: 'substance', ...more });

const together: Sourced = { source: 'dermatology-nursing-antibiotics', mark: 'Q' };
const acrylics: Sourced = { source: 'cyanoacrylate-patch-tests', mark: 'Q' };
const resin: Sourced = { source: 'benzoin-2003', mark: 'Q' };
const glycolide: Sourced = { source: 'glycolide-sutures', mark: 'M' };
/** Sources differ: some name a cross-reaction between parabens and PABA, others see none that matters. */
const parabens: Sourced = { source: 'nus-parabens', mark: 'M' };

export const allergens: readonly AllergenRow[] = [
  {
    name: 'none',
    synonyms: [
      'NKDA',
      'NKA',
      'NKFA',
      'no known drug allergies',
      'no known allergies',
      'no allergies',
      'no known drug allergy',
      'no known allergy',
      'no drug allergies',
      'none known',
      'nil known',
      'nil',
      'no',
      'denies',
      'denies allergies',
    ],
    kind: 'none',
  },
  {
    name: 'unknown',
    synonyms: ['not known', 'not asked', 'unable to obtain', 'unsure'],
    kind: 'unknown',
  },

  // Anesthetics and what is in their vials. The agents themselves are found in their own table.
  {
    name: 'local anesthetics',
    synonyms: [
      'local anesthetic',
      'local anaesthetic',
      'local anaesthetics',
      'local anesthesia',
      'local anaesthesia',
      'anesthetic',
      'anesthetics',
      'anaesthetic',
      'anaesthetics',
      'anesthesia',
      'anaesthesia',
      'caine',
      'caines',
      'caine anesthetics',
      'caine drugs',
      'dental anesthetic',
      'dental anaesthetic',
      'numbing',
      'numbing shot',
      'numbing medicine',
      'numbing medication',
      'numbing injection',
    ],
    kind: 'class',
    anesthetics: 'any',
  },
  {
    name: 'amide anesthetics',
    synonyms: [
      'amide',
      'amides',
      'amide anaesthetics',
      'amide local anesthetics',
      'amide local anaesthetics',
      'amide-type anesthetics',
      'amide caines',
    ],
    kind: 'class',
    anesthetics: 'amide',
  },
  {
    name: 'ester anesthetics',
    synonyms: [
      'ester',
      'esters',
      'ester anaesthetics',
      'ester local anesthetics',
      'ester local anaesthetics',
      'ester-type anesthetics',
      'ester caines',
    ],
    kind: 'class',
    anesthetics: 'ester',
    crosses: [{ to: 'methylparaben', ...parabens }],
  },
  substance('benzocaine', ['benzocaine spray'], {
    anesthetics: 'ester',
    crosses: [{ to: 'methylparaben', ...parabens }],
  }),
  substance('cocaine', [], { anesthetics: 'ester' }),
  substance(
    'PABA',
    [
      'para-aminobenzoic acid',
      'p-aminobenzoic acid',
      'aminobenzoic acid',
      '4-aminobenzoic acid',
      'PABA sunscreen',
    ],
    { anesthetics: 'ester', crosses: [{ to: 'methylparaben', ...parabens }] },
  ),
  substance('methylparaben', [
    'paraben',
    'methyl paraben',
    'propylparaben',
    'paraben mix',
    'hydroxybenzoate',
    'methyl hydroxybenzoate',
  ]),
  substance('preservatives', ['preservative', 'vial preservative'], {
    covers: ['methylparaben', 'benzyl alcohol', 'sulfite'],
    mild: true,
  }),
  substance('benzyl alcohol', []),
  substance('sulfite', [
    'metabisulfite',
    'sodium metabisulfite',
    'potassium metabisulfite',
    'bisulfite',
    'sodium bisulfite',
    'sulphite',
    'metabisulphite',
    'sodium metabisulphite',
    'bisulphite',
    'sulfiting agent',
  ]),
  substance('epinephrine', ['adrenaline', 'adrenalin', 'epi', 'epinephrin']),

  // Dressings and adhesives.
  substance(
    'adhesive',
    [
      'tape',
      'adhesive tape',
      'surgical tape',
      'medical tape',
      'paper tape',
      'plaster',
      'sticking plaster',
      'adhesive bandage',
      'bandage',
      'bandage adhesive',
      'medical adhesive',
      'skin adhesive tape',
      'adhesive plaster',
    ],
    { mild: true },
  ),
  substance('acrylates', ['acrylate', 'acrylate adhesive', 'acrylic adhesive'], {
    covers: ['adhesive'],
    crosses: [{ to: 'cyanoacrylate', ...acrylics }],
    mild: true,
  }),
  substance('methacrylates', ['methacrylate', 'HEMA', 'acrylic nails', 'nail acrylics'], {
    crosses: [{ to: 'cyanoacrylate', ...acrylics }],
  }),
  substance('formaldehyde', ['formalin', 'formaldehyde releaser']),
  substance('silicone', ['silicone tape', 'silicone gel']),
  substance('latex', ['rubber', 'natural rubber', 'natural rubber latex', 'rubber gloves', 'latex gloves']),
  substance('benzoin', ['tincture of benzoin', 'benzoin tincture', 'compound tincture of benzoin'], {
    crosses: [{ to: 'mastic', source: 'benzoin-1983', mark: 'Q' }],
  }),
  substance('mastic', ['gum mastic', 'liquid adhesive', 'styrax'], {
    crosses: [{ to: 'benzoin', source: 'benzoin-1983', mark: 'Q' }],
  }),
  substance('colophony', ['rosin', 'pine resin', 'colophonium'], { crosses: [{ to: 'benzoin', ...resin }] }),
  substance('balsam of Peru', ['Peru balsam', 'Myroxylon pereirae', 'balsam'], {
    crosses: [{ to: 'benzoin', ...resin }],
  }),
  substance('fragrance', ['fragrance mix', 'perfume'], { crosses: [{ to: 'benzoin', ...resin }] }),
  substance('cyanoacrylate', [
    'tissue glue',
    'skin glue',
    'tissue adhesive',
    'surgical glue',
    'glue',
    'superglue',
    'super glue',
    'octyl cyanoacrylate',
    'eyelash glue',
    'nail glue',
  ]),
  substance('lanolin', ['wool alcohol', 'wool alcohols', 'wool fat', 'wool wax', 'wool wax alcohol', 'wool']),
  substance('petrolatum', ['petroleum jelly', 'white petrolatum', 'soft paraffin', 'petroleum']),
  substance('zinc oxide', ['zinc']),
  substance('honey', ['bee products', 'propolis']),

  // Topical antibiotics.
  substance('bacitracin', ['bacitracin zinc', 'bacitracin ointment'], {
    crosses: [
      { to: 'neomycin', ...together },
      { to: 'polymyxin', ...together },
    ],
  }),
  substance('neomycin', ['neomycin sulfate', 'neomycin ointment', 'framycetin'], {
    crosses: [
      { to: 'bacitracin', ...together },
      { to: 'gentamicin', ...together },
    ],
  }),
  substance('polymyxin', ['polymyxin B', 'polymixin', 'polymyxin B sulfate'], {
    crosses: [{ to: 'bacitracin', ...together }],
  }),
  substance(
    'topical antibiotics',
    ['triple antibiotic ointment', 'triple antibiotic', 'antibiotic ointment', 'topical antibiotic', 'TAO'],
    { covers: ['bacitracin', 'neomycin', 'polymyxin'] },
  ),
  substance('mupirocin', []),
  substance('gentamicin', ['aminoglycoside', 'tobramycin'], { crosses: [{ to: 'neomycin', ...together }] }),
  substance('fusidic acid', ['sodium fusidate']),
  substance('silver', ['silver nitrate', 'silver sulfadiazine', 'silver sulphadiazine']),
  substance('sulfonamide', [
    'sulfa',
    'sulpha',
    'sulfa drugs',
    'sulfa antibiotics',
    'sulphonamide',
    'sulfamethoxazole',
    'trimethoprim-sulfamethoxazole',
    'TMP-SMX',
    'co-trimoxazole',
    'sulfadiazine',
  ]),

  // Antiseptics and hemostatics.
  substance('povidone-iodine', [
    'topical iodine',
    'iodophor',
    'povidone',
    'PVP-I',
    'iodine on skin',
    'iodine prep',
  ]),
  substance('iodine', ['iodides'], { covers: ['povidone-iodine'], mild: true }),
  substance('chlorhexidine', [
    'CHG',
    'chlorhexidine gluconate',
    'chlorhexidine digluconate',
    'chlorhexidine wipes',
  ]),
  substance('alcohol', [
    'isopropyl alcohol',
    'isopropanol',
    'ethanol',
    'rubbing alcohol',
    'alcohol swab',
    'alcohol wipe',
  ]),
  substance('benzalkonium chloride', ['benzalkonium', 'BZK']),
  substance('triclosan', []),
  substance('aluminum', [
    'aluminium',
    'aluminum chloride',
    'aluminium chloride',
    'aluminum salts',
    'aluminium salts',
  ]),
  substance('iron', ['ferric subsulfate', 'ferric subsulphate', 'ferric salts']),
  substance('gelatin', ['gelatine', 'porcine gelatin', 'alpha-gal', 'pork', 'mammalian meat']),
  substance('collagen', ['bovine collagen']),
  substance('tranexamic acid', ['TXA']),

  // What stitches are made of.
  substance('nylon', ['polyamide', 'nylon suture']),
  substance('polypropylene', ['polypropylene suture']),
  substance('polyester', []),
  substance('silk', ['silk suture']),
  substance('polyglactin', ['polyglactin suture'], { crosses: [{ to: 'polyglycolic acid', ...glycolide }] }),
  substance('polyglycolic acid', ['polyglycolate'], { crosses: [{ to: 'polyglactin', ...glycolide }] }),
  substance('polydioxanone', ['PDO']),
  substance('poliglecaprone', []),
  substance('gut', ['catgut', 'gut suture', 'surgical gut'], { covers: ['collagen'] }),
  substance('chromium', ['chromate', 'dichromate', 'potassium dichromate', 'chromic gut', 'chrome']),
  substance(
    'absorbable sutures',
    ['absorbable suture', 'dissolvable sutures', 'dissolvable stitches', 'dissolving stitches'],
    {
      covers: ['polyglactin', 'polyglycolic acid', 'polydioxanone', 'poliglecaprone', 'gut'],
      mild: true,
    },
  ),
  substance('nickel', ['metal', 'cobalt', 'stainless steel', 'staples', 'surgical staples', 'metals'], {
    mild: true,
  }),

  ...irrelevantAllergens.map((name): AllergenRow => ({ name, synonyms: [], kind: 'irrelevant' })),
];

export const reactions: readonly ReactionRow[] = [
  {
    name: 'racing heart',
    synonyms: [
      'heart racing',
      'fast heart',
      'fast heartbeat',
      'palpitations',
      'palpitation',
      'tachycardia',
      'pounding heart',
      'heart pounding',
      'jittery',
      'jitters',
      'tremor',
      'shaky',
      'shaking',
      'nervous',
      'anxiety',
      'anxious',
      'panic',
    ],
    kind: 'intolerance',
  },
  {
    name: 'faint',
    synonyms: [
      'fainted',
      'fainting',
      'syncope',
      'vasovagal',
      'vasovagal syncope',
      'dizzy',
      'dizziness',
      'lightheaded',
      'light-headed',
    ],
    kind: 'intolerance',
  },
  {
    name: 'nausea',
    synonyms: [
      'nauseated',
      'upset stomach',
      'stomach upset',
      'GI upset',
      'vomiting',
      'headache',
      'intolerance',
      'side effect',
      'not a true allergy',
    ],
    kind: 'intolerance',
  },
  {
    name: 'anaphylaxis',
    synonyms: [
      'anaphylactic',
      'anaphylactic shock',
      'shock',
      'angioedema',
      'angio-oedema',
      'throat swelling',
      'throat closing',
      'throat tightness',
      'tight throat',
      'throat tight',
      'hoarseness',
      'cyanosis',
      'blue lips',
      'lips blue',
      'lip tingling',
      'tingling lips',
      'flushing',
      'collapse',
      'low blood pressure',
      'hypotension',
    ],
    kind: 'allergy',
  },
  {
    name: 'hives',
    synonyms: [
      'urticaria',
      'wheals',
      'rash',
      'itch',
      'itching',
      'itchy',
      'pruritus',
      'redness',
      'blisters',
      'blistering',
      'swelling',
      'swollen',
      'edema',
      'oedema',
      'dermatitis',
      'eczema',
      'contact dermatitis',
    ],
    kind: 'allergy',
  },
  {
    name: 'wheezing',
    synonyms: [
      'wheeze',
      'shortness of breath',
      'trouble breathing',
      'difficulty breathing',
      'breathing difficulty',
      'could not breathe',
      'unable to breathe',
      'cannot breathe',
      "can't breathe",
      "couldn't breathe",
      'breathless',
      'chest tightness',
      'choking',
      'dyspnea',
      'dyspnoea',
      'bronchospasm',
      'asthma',
      'asthma attack',
    ],
    kind: 'allergy',
  },
  {
    name: 'negative test',
    synonyms: [
      'negative',
      'negative to',
      'tested negative',
      'test negative',
      'negative patch test',
      'patch test negative',
      'negative skin test',
      'skin test negative',
      'negative challenge',
      'challenge negative',
      'tolerated challenge',
      'tolerated',
      'cleared by allergist',
      'delabeled',
    ],
    kind: 'cleared',
  },
  {
    name: 'doubtful test',
    synonyms: [
      'false negative',
      'falsely negative',
      'negative control',
      'inconclusive',
      'equivocal',
      'indeterminate',
      'borderline',
      'pending',
      'unreliable',
      'not valid',
      'invalid',
    ],
    kind: 'allergy',
  },
  {
    name: 'positive test',
    synonyms: [
      'positive',
      'positive patch test',
      'patch test positive',
      'positive skin test',
      'skin test positive',
    ],
    kind: 'allergy',
  },
];

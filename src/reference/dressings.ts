import type { WordRow } from './types.ts';

export interface DressingRow extends WordRow {
  /** Whether it holds by its own adhesive. */
  readonly adhesive?: boolean;
  readonly ointment?: boolean;
  /** Whether it presses on the wound. */
  readonly presses?: boolean;
  readonly contains?: readonly string[];
  /** What some products of this name hold. */
  readonly mayContain?: readonly string[];
}

const sticks = { adhesive: true, contains: ['adhesive'] } as const;

export const dressings: readonly DressingRow[] = [
  { name: 'none', synonyms: ['open to air', 'no dressing', 'left open', 'uncovered', 'air'] },
  {
    name: 'petrolatum',
    synonyms: [
      'petroleum jelly',
      'white petrolatum',
      'petrolatum ointment',
      'white soft paraffin',
      'soft paraffin',
      'yellow soft paraffin',
      'paraffin ointment',
      'plain petrolatum',
    ],
    ointment: true,
    contains: ['petrolatum'],
  },
  {
    name: 'petrolatum gauze',
    synonyms: ['paraffin gauze', 'petroleum gauze', 'paraffin tulle'],
    contains: ['petrolatum'],
  },
  {
    name: 'lanolin ointment',
    synonyms: [
      'lanolin',
      'wool fat',
      'petrolatum with lanolin',
      'healing ointment with lanolin',
      'wool alcohol ointment',
    ],
    ointment: true,
    contains: ['lanolin'],
  },
  {
    name: 'healing ointment',
    synonyms: ['ointment', 'emollient ointment', 'wound ointment', 'moisturizing ointment'],
    ointment: true,
    mayContain: ['lanolin', 'petrolatum'],
  },
  {
    name: 'bacitracin',
    synonyms: ['bacitracin ointment', 'bacitracin zinc', 'bacitracin zinc ointment'],
    ointment: true,
    contains: ['bacitracin'],
  },
  { name: 'neomycin', synonyms: ['neomycin ointment'], ointment: true, contains: ['neomycin'] },
  {
    name: 'polymyxin B',
    synonyms: ['polymyxin', 'polymyxin ointment', 'polymyxin B ointment'],
    ointment: true,
    contains: ['polymyxin'],
  },
  {
    name: 'double antibiotic ointment',
    synonyms: [
      'bacitracin-polymyxin',
      'bacitracin/polymyxin',
      'bacitracin polymyxin B',
      'polymyxin-bacitracin',
      'bacitracin and polymyxin',
      'double antibiotic',
    ],
    ointment: true,
    contains: ['bacitracin', 'polymyxin'],
  },
  {
    name: 'triple antibiotic ointment',
    synonyms: [
      'triple antibiotic',
      'TAO',
      'neomycin-polymyxin-bacitracin',
      'neomycin/polymyxin/bacitracin',
      'bacitracin-neomycin-polymyxin',
      'bacitracin/neomycin/polymyxin',
      'neomycin and bacitracin',
    ],
    ointment: true,
    contains: ['neomycin', 'polymyxin', 'bacitracin'],
  },
  {
    name: 'antibiotic ointment',
    synonyms: ['topical antibiotic', 'antibiotic', 'antibiotic cream', 'antibacterial ointment'],
    ointment: true,
    mayContain: ['bacitracin', 'neomycin', 'polymyxin'],
  },
  { name: 'mupirocin', synonyms: ['mupirocin ointment'], ointment: true, contains: ['mupirocin'] },
  {
    name: 'gentamicin',
    synonyms: ['gentamicin ointment', 'gentamicin cream'],
    ointment: true,
    contains: ['gentamicin'],
  },
  {
    name: 'fusidic acid',
    synonyms: ['fusidic acid cream', 'sodium fusidate'],
    ointment: true,
    contains: ['fusidic acid'],
  },
  {
    name: 'silver sulfadiazine',
    synonyms: ['silver sulphadiazine', 'SSD', 'silver sulfadiazine cream'],
    ointment: true,
    contains: ['silver', 'sulfonamide'],
  },
  {
    name: 'silver dressing',
    synonyms: ['silver foam', 'silver alginate', 'nanocrystalline silver'],
    contains: ['silver'],
  },
  {
    name: 'iodine dressing',
    synonyms: ['iodoform gauze', 'cadexomer iodine', 'povidone-iodine ointment', 'povidone-iodine dressing'],
    contains: ['povidone-iodine'],
  },
  {
    name: 'chlorhexidine gauze',
    synonyms: ['chlorhexidine dressing', 'chlorhexidine tulle'],
    contains: ['chlorhexidine', 'petrolatum'],
  },
  { name: 'honey dressing', synonyms: ['honey', 'medical honey'], contains: ['honey'] },
  {
    name: 'zinc oxide',
    synonyms: ['zinc oxide ointment', 'zinc paste'],
    ointment: true,
    contains: ['zinc oxide'],
  },
  {
    name: 'gauze',
    synonyms: [
      'gauze pad',
      'sterile gauze',
      'dry gauze',
      'gauze dressing',
      '2x2 gauze',
      '4x4 gauze',
      'gauze sponge',
      'cotton',
    ],
  },
  {
    name: 'non-adherent pad',
    synonyms: [
      'nonadherent pad',
      'non-adherent dressing',
      'nonadherent dressing',
      'nonstick pad',
      'non-stick pad',
      'non-stick dressing',
      'non-adherent gauze',
      'nonadherent',
      'non-adherent',
    ],
  },
  {
    name: 'adhesive bandage',
    synonyms: [
      'bandage',
      'plaster',
      'sticking plaster',
      'adhesive plaster',
      'spot bandage',
      'strip bandage',
      'adhesive dressing',
      'adhesive island dressing',
      'island dressing',
      'fabric bandage',
      'latex-free bandage',
    ],
    ...sticks,
  },
  {
    name: 'paper tape',
    synonyms: ['microporous tape', 'hypoallergenic tape', 'porous paper tape'],
    ...sticks,
  },
  { name: 'cloth tape', synonyms: ['silk tape', 'fabric tape', 'zinc oxide tape'], ...sticks },
  { name: 'plastic tape', synonyms: ['clear tape', 'transparent tape'], ...sticks },
  { name: 'tape', synonyms: ['adhesive tape', 'surgical tape', 'medical tape'], ...sticks },
  {
    name: 'silicone tape',
    synonyms: [
      'silicone dressing',
      'soft silicone dressing',
      'silicone foam',
      'silicone border dressing',
      'silicone sheet',
      'silicone gel',
    ],
    contains: ['silicone'],
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
    ],
    ...sticks,
  },
  {
    name: 'transparent film',
    synonyms: [
      'film',
      'film dressing',
      'clear film',
      'polyurethane film',
      'occlusive film',
      'transparent dressing',
    ],
    ...sticks,
  },
  {
    name: 'hydrocolloid',
    synonyms: ['hydrocolloid dressing', 'hydrocolloid bandage'],
    ...sticks,
    // A modified rosin makes some of them stick (source `hydrocolloid-1997`).
    mayContain: ['colophony'],
  },
  { name: 'foam', synonyms: ['foam dressing', 'polyurethane foam'] },
  { name: 'adhesive foam', synonyms: ['bordered foam', 'foam with adhesive border'], ...sticks },
  { name: 'hydrogel', synonyms: ['hydrogel dressing'] },
  { name: 'alginate', synonyms: ['calcium alginate', 'alginate dressing', 'hydrofiber'] },
  {
    name: 'benzoin',
    synonyms: [
      'tincture of benzoin',
      'benzoin tincture',
      'compound benzoin tincture',
      'compound tincture of benzoin',
    ],
    contains: ['benzoin'],
  },
  {
    name: 'liquid adhesive',
    synonyms: ['gum mastic', 'mastic', 'mastic adhesive', 'mastic gum', 'skin tackifier'],
    contains: ['mastic'],
  },
  {
    name: 'tissue glue',
    synonyms: ['cyanoacrylate', 'skin glue', 'tissue adhesive', 'liquid bandage'],
    contains: ['cyanoacrylate'],
    // Its text rules it out with an allergy to formaldehyde (source `tissue-glue-reference`).
    mayContain: ['formaldehyde'],
  },
  {
    name: 'elastic wrap',
    synonyms: [
      'elastic bandage',
      'cohesive bandage',
      'cohesive wrap',
      'self-adherent wrap',
      'crepe bandage',
      'compression wrap',
      'tubular bandage',
    ],
    presses: true,
    mayContain: ['latex'],
  },
  {
    name: 'latex-free wrap',
    synonyms: [
      'latex-free elastic wrap',
      'latex-free cohesive bandage',
      'latex-free elastic bandage',
      'roll gauze',
      'gauze roll',
      'gauze wrap',
    ],
    presses: true,
  },
  {
    name: 'pressure dressing',
    synonyms: ['pressure bandage', 'compression dressing', 'bulky dressing', 'pressure'],
    presses: true,
  },
  {
    name: 'panty liner',
    synonyms: [
      'pantyliner',
      'sanitary pad',
      'sanitary towel',
      'gauze in underwear',
      'gauze held by underwear',
    ],
  },
  {
    name: 'dressing',
    synonyms: [
      'sterile dressing',
      'dry dressing',
      'dry sterile dressing',
      'clean dressing',
      'light dressing',
    ],
    mayContain: ['adhesive'],
  },
  { name: 'dental roll', synonyms: ['bolster', 'tie-over dressing'], presses: true },
  { name: 'finger cot', synonyms: ['finger stall'], mayContain: ['latex'] },
  { name: 'splint', synonyms: ['sling'] },
];

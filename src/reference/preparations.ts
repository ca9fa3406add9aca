import type { WordRow } from './types.ts';

export interface PreparationRow extends WordRow {
  /** Whether it holds enough alcohol to burn until it is dry. */
  readonly flammable?: boolean;
  readonly contains?: readonly string[];
  readonly mayContain?: readonly string[];
  /** Whether its label keeps it out of eyes and ears. */
  readonly keepFromEyesAndEars?: boolean;
}

export const preparations: readonly PreparationRow[] = [
  { name: 'none', synonyms: ['not prepared', 'no preparation'] },
  {
    name: 'isopropyl alcohol',
    synonyms: [
      'alcohol',
      'isopropanol',
      'IPA',
      'rubbing alcohol',
      '70% alcohol',
      '70% isopropyl alcohol',
      'isopropyl alcohol 70%',
      'alcohol swab',
      'alcohol wipe',
      'alcohol pad',
      'alcohol prep',
      'alcohol prep pad',
      'ethanol',
      'ethyl alcohol',
      '70% ethanol',
      'surgical spirit',
      'spirit',
      'propanol',
      'alcohol spray',
    ],
    flammable: true,
    contains: ['alcohol'],
  },
  {
    name: 'chlorhexidine',
    synonyms: [
      'CHG',
      'chlorhexidine gluconate',
      'chlorhexidine digluconate',
      'aqueous chlorhexidine',
      'chlorhexidine aqueous',
      'chlorhexidine 4%',
      'chlorhexidine 2%',
      'chlorhexidine scrub',
      'chlorhexidine wipe',
      'chlorhexidine soap',
    ],
    contains: ['chlorhexidine'],
    keepFromEyesAndEars: true,
  },
  {
    name: 'chlorhexidine in alcohol',
    synonyms: [
      'chlorhexidine alcohol',
      'alcoholic chlorhexidine',
      'alcohol-based chlorhexidine',
      'chlorhexidine with alcohol',
      'chlorhexidine and alcohol',
      'chlorhexidine/alcohol',
      'chlorhexidine isopropyl alcohol',
      'chlorhexidine/isopropyl alcohol',
      'chlorhexidine in isopropyl alcohol',
      '2% chlorhexidine in 70% isopropyl alcohol',
      'chlorhexidine 2% in isopropyl alcohol 70%',
      'chlorhexidine in 70% alcohol',
      'chlorhexidine tincture',
      'chlorhexidine in 70% isopropyl alcohol',
      '2% chlorhexidine/70% isopropyl alcohol',
    ],
    flammable: true,
    contains: ['chlorhexidine', 'alcohol'],
    keepFromEyesAndEars: true,
  },
  {
    name: 'povidone-iodine',
    synonyms: [
      'PVP-I',
      'PVP iodine',
      'iodine',
      'iodophor',
      'povidone',
      'povidone-iodine 10%',
      '10% povidone-iodine',
      'aqueous povidone-iodine',
      'iodopovidone',
      'povidone-iodine swab',
      'povidone-iodine paint',
    ],
    contains: ['povidone-iodine'],
  },
  {
    name: 'povidone-iodine in alcohol',
    synonyms: [
      'iodine tincture',
      'tincture of iodine',
      'alcoholic povidone-iodine',
      'alcoholic iodine',
      'iodine in alcohol',
      'alcohol-based povidone-iodine',
      'iodine povacrylex in alcohol',
    ],
    flammable: true,
    contains: ['povidone-iodine', 'alcohol'],
  },
  {
    name: 'benzalkonium chloride',
    synonyms: ['benzalkonium', 'BZK', 'benzalkonium wipe'],
    contains: ['benzalkonium chloride'],
  },
  { name: 'hypochlorous acid', synonyms: ['hypochlorous acid spray', 'HOCl', 'sodium hypochlorite'] },
  { name: 'octenidine', synonyms: ['octenidine dihydrochloride'] },
  { name: 'polyhexanide', synonyms: ['PHMB'] },
  { name: 'chloroxylenol', synonyms: ['PCMX'] },
  { name: 'hydrogen peroxide', synonyms: ['peroxide'] },
  { name: 'soap and water', synonyms: ['soap', 'mild soap', 'cleanser'] },
  { name: 'saline', synonyms: ['normal saline', 'sterile saline', 'sterile water', 'water'] },
];

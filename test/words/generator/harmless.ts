import type { Group } from './cues.ts';

/** A statement beside the danger that says nothing of it. */
export interface Harmless {
  readonly text: string;
  /** A denial or a family word at its head could be read as reaching over a comma. */
  readonly reaches: boolean;
  /** Whether it is a statement of its own after a comma. */
  readonly alone: boolean;
  /** Whether no word of it denies, or puts something into the past, or is about another person. */
  readonly plain: boolean;
}

const harmless = (texts: string, traits: Omit<Harmless, 'text'>): readonly Harmless[] =>
  texts.split(' | ').map((text) => ({ text, ...traits }));

/** Said of the patient, with a verb or a year. */
const stated = { reaches: false, alone: true, plain: true } as const;
/** Named only. */
const named = { reaches: false, alone: false, plain: true } as const;
/** A denial of something else. */
const denying = { reaches: true, alone: true, plain: false } as const;
/** A complete statement that denies or ends something. */
const ended = { reaches: false, alone: true, plain: false } as const;
/** Of another person; what follows it without a stop could be theirs too. */
const family = { reaches: true, alone: true, plain: false } as const;

const general: readonly Harmless[] = [
  ...harmless(
    'BP 128/76 | pt lives alone | retired teacher | photo taken | drove here | has a ride home',
    stated,
  ),
  ...harmless(
    'denies chest pain | denies fever | no fever | no chest pain | denies smoking | no bleeding disorder | no SOB',
    denying,
  ),
  ...harmless(
    'patient declined suture | removed old dressing | quit smoking 2012 | pt did not want a photo | ' +
      'no questions from patient',
    denying,
  ),
  ...harmless('BCC removed 2019, cured | appendix removed 1998 | SCC resected 2020', ended),
  ...harmless(
    'FHx: CAD | father had skin cancer | mom had BCC | FHx of melanoma | sister has eczema',
    family,
  ),
];

const conditions: readonly Harmless[] = [
  ...harmless('hypertension | type 2 diabetes | psoriasis | osteoarthritis | hypothyroidism', named),
  // In another order the drops could be those of a medicine.
  ...harmless('glaucoma on drops', { ...named, plain: false }),
  ...harmless('diabetes since 2009 | has eczema | h/o BCC 2019 | psoriasis dx 2011', stated),
  ...harmless(
    'denies diabetes | no diabetes | no h/o keloids | denies seizures | negative for hepatitis',
    denying,
  ),
  ...harmless('eczema resolved 2010 | shingles 2015, resolved', ended),
];

/** Nothing of it is in what is used on the skin. */
const allergies: readonly Harmless[] = [
  ...harmless('penicillin | shellfish | peanuts | codeine | pollen | strawberries', named),
  ...harmless(
    'penicillin causes rash | has hay fever | codeine gives nausea | cefalexin - rash 2014',
    stated,
  ),
  ...harmless('penicillin: hives | peanuts - throat swelling | shellfish (hives)', named),
  ...harmless(
    'denies food allergies | no food allergies | not allergic to penicillin | no hay fever',
    denying,
  ),
  ...harmless('tolerates cefalexin | outgrew egg allergy', denying),
  ...harmless('NKDA | no known drug allergies', ended),
  ...harmless('mother allergic to penicillin | sister has peanut allergy | FHx: hay fever', family),
];

/** Nothing of it minds current. */
const implants: readonly Harmless[] = [
  ...harmless('hip replacement | IUD | dental implants | hernia mesh | breast implants', named),
  ...harmless('hip replacement 2010 | knee replacement L 2014 | has an IUD | coronary stent 2016', stated),
  ...harmless('denies stents | no stents | no metal | denies joint replacements | no hearing aids', denying),
  ...harmless('hip hardware removed 2010 | IUD removed 2018 | port removed 2020', ended),
  ...harmless('father has a hip replacement | mother had a stent', family),
];

const medicines: readonly Harmless[] = [
  ...harmless('lisinopril | metformin | vitamin D | levothyroxine | atorvastatin', named),
  ...harmless('takes lisinopril daily | started metformin 2019 | on atorvastatin since 2015', stated),
  ...harmless('no blood thinners | denies aspirin | not on insulin', denying),
  ...harmless('stopped ibuprofen 2021', denying),
  ...harmless('aspirin stopped 2020 | warfarin d/c’d 2018', ended),
  ...harmless('wife takes warfarin | father on insulin', family),
];

/** What may be written beside a danger, under the key that asks for its kind. */
export const besides: Readonly<Record<Group, readonly Harmless[]>> = {
  allergy: allergies,
  implant: [...implants, ...implants, ...general],
  condition: [...conditions, ...general],
  medicine: [...medicines, ...medicines, ...general],
};

/** What may be an entry of its own beside a danger: what is no device is not listed among devices. */
export const entriesBeside: Readonly<Record<Group, readonly Harmless[]>> = { ...besides, implant: implants };

/** What may be written beside a danger under every other key. */
export const elsewhere: readonly Harmless[] = [...general, ...conditions, ...implants, ...medicines];

/** Names of one kind that are no danger here: `{o}` of the clauses, and what lists are made of. */
export const sameKind: Readonly<Record<Group, readonly string[]>> = {
  allergy: ['penicillin', 'shellfish', 'peanut', 'codeine', 'cefalexin', 'egg'],
  implant: ['hip replacement', 'knee replacement', 'coronary stent', 'IUD', 'dental implant', 'hernia mesh'],
  condition: ['hypertension', 'diabetes', 'psoriasis', 'glaucoma', 'eczema', 'osteoarthritis'],
  medicine: ['lisinopril', 'metformin', 'levothyroxine', 'atorvastatin', 'omeprazole'],
};

/** Names of another kind: `{m}` of the clauses. */
export const otherKind: Readonly<Record<Group, readonly string[]>> = {
  allergy: ['diabetes', 'chest pain', 'fever', 'hypertension', 'seizures'],
  implant: ['chest pain', 'diabetes', 'fever', 'smoking', 'hypertension'],
  condition: ['smoking', 'alcohol use', 'aspirin', 'hip replacement'],
  medicine: ['chest pain', 'smoking', 'diabetes', 'hip replacement'],
};

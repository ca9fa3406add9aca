import { common, meaning } from './marked.ts';
import type { Sourced, WordRow } from './types.ts';
import type { WindowGroup } from './suture-windows.ts';

export type SiteRegion =
  | 'scalp'
  | 'face'
  | 'eye'
  | 'nose'
  | 'ear'
  | 'mouth'
  | 'neck'
  | 'chest'
  | 'breast'
  | 'axilla'
  | 'abdomen'
  | 'groin'
  | 'genital'
  | 'buttock'
  | 'back'
  | 'shoulder'
  | 'arm'
  | 'hand'
  | 'leg'
  | 'foot'
  | 'nail'
  /** A site of a practice that does not say where it is. */
  | 'other';

/** What is so close under the skin that a deep cut can harm it. */
export interface Danger extends Sourced {
  readonly structure: string;
  /** Whether only a cut that goes into the fat comes near it, since the skin over it is loose. */
  readonly inFat?: boolean;
}

export interface SiteRow extends WordRow {
  readonly region: SiteRegion;
  /** Whether left or right must be said; `never` for what is strictly in the midline. */
  readonly side: 'needed' | 'optional' | 'never';
  /** Whose suture window counts; null where no published row fits. */
  readonly group: WindowGroup | null;
  /** Whether an ordinary dressing holds: `hair` and `fold` say why not, `no` is a wet or open place. */
  readonly dressable: 'yes' | 'hair' | 'fold' | 'no';
  /** What rubs over it. */
  readonly friction?: 'waistband' | 'strap' | 'collar' | 'shoe' | 'seat' | undefined;
  /** Below the knee: heals slowly and lengthens a suture window. */
  readonly slowHealing: boolean;
  /** Digit, nose, ear, penis: supplied by end arteries. */
  readonly endArtery: boolean;
  /** So near the eye that a chemical can reach it. */
  readonly nearEye: boolean;
  readonly earCanal: boolean;
  readonly hairBearing: boolean;
  /** Palm, sole, digit or nail. */
  readonly acral: boolean;
  readonly mucosa: boolean;
  /** Where many patients cannot reach or see a wound of their own: back, buttock, foot. Common practice, no source. */
  readonly outOfReach: boolean;
  /** Where keloids are commonest: chest, shoulder, upper back, earlobe (source `keloid-sites`); the jawline is from memory. */
  readonly keloidProne: boolean;
  readonly danger?: Danger | undefined;
  /** Too large or too loose a word to find the place again. */
  readonly vague: boolean;
  /** Rows that are meant where another word is with it: a web space between toes. */
  readonly narrowed?: ReadonlyMap<string, string> | undefined;
  /** So small that the word alone finds it again. */
  readonly small: boolean;
  /** Number of the finger or toe, from the thumb or great toe. */
  readonly digit?: number | undefined;
}

/** What a site is called, and what has a source of its own in each row, or says only how it is written. */
type Unjudged = 'name' | 'synonyms' | 'tradeNames' | 'region' | 'group' | 'danger' | 'narrowed' | 'digit';

/** Where what follows from a trait of a site is from, and how sure that is, for all rows that have it. */
export const siteTraits: Readonly<Record<Exclude<keyof SiteRow, Unjudged>, Sourced>> = {
  side: meaning,
  dressable: common,
  friction: common,
  slowHealing: { source: 'clinical-handbook', mark: 'Q' },
  endArtery: { source: 'us-label-end-arteries', mark: 'Q' },
  nearEye: { source: 'procedure-text-hemostasis', mark: 'Q' },
  earCanal: { source: 'chlorhexidine-label', mark: 'Q' },
  hairBearing: common,
  acral: { source: 'melanoma-aad', mark: 'Q' },
  mucosa: meaning,
  outOfReach: common,
  keloidProne: { source: 'keloid-sites', mark: 'Q' },
  vague: { source: 'site-identification', mark: 'Q' },
  small: meaning,
};

type Traits = Partial<Omit<SiteRow, 'name' | 'synonyms'>>;
type Entry = readonly [name: string, synonyms?: string, traits?: Traits];

/** A site of which nothing special is known. */
export const ordinary: Omit<SiteRow, 'name' | 'synonyms' | 'region'> = {
  side: 'needed',
  group: null,
  dressable: 'yes',
  slowHealing: false,
  endArtery: false,
  nearEye: false,
  earCanal: false,
  hairBearing: false,
  acral: false,
  mucosa: false,
  outOfReach: false,
  keloidProne: false,
  vague: false,
  small: false,
};

/** Rows that share traits. Synonyms are in one text, with commas; word order and `of the` need no synonym of their own. */
function rows(shared: Traits & Pick<SiteRow, 'region'>, entries: readonly Entry[]): readonly SiteRow[] {
  const usual = { ...ordinary, ...shared };
  return entries.map(([name, synonyms = '', own = {}]) => ({
    ...usual,
    ...own,
    name,
    synonyms: synonyms === '' ? [] : synonyms.split(', '),
  }));
}

const vague: Traits = { vague: true };
const optional: Traits = { side: 'optional' };
const vagueOptional: Traits = { vague: true, side: 'optional' };
const smallOptional: Traits = { small: true, side: 'optional' };
const midline: Traits = { small: true, side: 'never' };

const temporalBranch: Danger = {
  structure: 'the temporal branch of the facial nerve',
  source: 'danger-zones',
  mark: 'Q',
};
const marginalMandibular: Danger = {
  structure: 'the marginal mandibular branch of the facial nerve',
  source: 'danger-zones',
  mark: 'Q',
};
const spinalAccessory: Danger = {
  structure: 'the spinal accessory nerve',
  source: 'danger-zones',
  mark: 'Q',
};
const fromMemory = (structure: string): Danger => ({ structure, source: 'site-anatomy', mark: 'M' });
const globe = fromMemory('the eyeball behind the thin skin of the lid');
const medianNerve = fromMemory('the median and ulnar nerves and the flexor tendons');
const achilles = fromMemory('the Achilles tendon');
const ulnarNerve = fromMemory('the ulnar nerve');
const peronealNerve = fromMemory('the common peroneal nerve');
const extensorTendons: Danger = { ...fromMemory('the extensor tendons of the fingers'), inFat: true };

const scalp = rows(
  { region: 'scalp', group: 'scalp', side: 'optional', dressable: 'hair', hairBearing: true },
  [
    ['scalp', 'head', vague],
    ['frontal scalp', 'anterior scalp, hairline, frontal hairline'],
    ['vertex of the scalp', 'vertex, crown, crown of scalp, top of head, top of scalp, mid scalp'],
    ['parietal scalp', 'parietal, temporoparietal scalp', { side: 'needed' }],
    ['temporal scalp', '', { side: 'needed' }],
    ['occipital scalp', 'occiput, occipital, posterior scalp, back of scalp, back of head'],
    ['postauricular scalp', 'retroauricular scalp, mastoid, mastoid scalp', { side: 'needed' }],
    ['nuchal scalp', 'lower occipital scalp, nuchal hairline, posterior hairline'],
  ],
);

const face = rows({ region: 'face', group: 'face' }, [
  ['face', '', vague],
  ['forehead', 'frontal face', optional],
  ['glabella', 'glabellar, between the eyebrows, between the brows', midline],
  ['temple', 'temporal, temporal face', { danger: temporalBranch }],
  ['eyebrow', 'brow', { hairBearing: true, dressable: 'hair', nearEye: true, small: true }],
  ['suprabrow', 'supraorbital forehead, above the eyebrow, above the brow'],
  ['cheek', 'buccal cheek'],
  [
    'malar cheek',
    'malar, malar eminence, zygoma, zygomatic, zygomatic arch, cheekbone, cheek bone, upper cheek',
  ],
  ['infraorbital cheek', 'infraorbital, below the eye, under the eye, tear trough', { nearEye: true }],
  ['medial cheek', 'paranasal cheek, paranasal'],
  ['lateral cheek', ''],
  ['lower cheek', ''],
  ['preauricular cheek', 'preauricular, anterior to ear, in front of ear, sideburn, preauricular face'],
  ['parotid cheek', 'parotid'],
  ['nasolabial fold', 'melolabial fold, nasolabial crease, nasolabial, melolabial, smile line'],
  [
    'jawline',
    'jaw, jaw line, jowl, mandible, mandibular, mandibular border, mandibular angle, angle of jaw',
    {
      danger: marginalMandibular,
      keloidProne: true,
    },
  ],
  ['chin', 'mentum, mental chin', optional],
  ['labiomental crease', 'mental crease, labiomental fold, chin crease', smallOptional],
]);

const eye = rows({ region: 'eye', group: 'eyelid', nearEye: true, danger: globe }, [
  ['eyelid', 'lid', vague],
  ['upper eyelid', 'upper lid'],
  ['lower eyelid', 'lower lid'],
  ['upper eyelid margin', 'upper lid margin', { small: true }],
  ['lower eyelid margin', 'lower lid margin', { small: true }],
  ['eyelid margin', 'lid margin, lash line', vague],
  ['medial canthus', 'medial canthal, inner corner of eye', { small: true }],
  ['lateral canthus', 'lateral canthal, outer corner of eye', { small: true }],
  ['periorbital skin', 'periorbital, periocular, around the eye, eye, orbit, orbital', vague],
]);

const nose = rows({ region: 'nose', group: 'face', endArtery: true }, [
  ['nose', '', optional],
  ['nasal tip', 'nose tip, apex of nose', smallOptional],
  ['nasal supratip', 'supratip', smallOptional],
  ['nasal dorsum', 'bridge of nose, nasal bridge, mid nose', optional],
  ['nasal root', 'root of nose, nasion, radix, upper nose', { ...smallOptional, nearEye: true }],
  ['nasal ala', 'ala, alar, nasal alar, wing of nose', { small: true }],
  ['alar crease', 'alar groove, nasal alar crease, nasal alar groove, perialar', { small: true }],
  ['alar rim', 'nostril rim, nasal alar rim', { small: true }],
  ['nasal sidewall', 'side of nose, nasal side wall, lateral nose, sidewall'],
  ['nasofacial sulcus', 'nasofacial groove, nasofacial crease', { small: true }],
  ['columella', 'columellar, nasal columella', midline],
  ['soft triangle', 'nasal soft triangle, nasal facet', { small: true }],
  [
    'nasal vestibule',
    'nostril, inside the nose',
    { group: null, mucosa: true, dressable: 'no', small: true },
  ],
]);

const ear = rows({ region: 'ear', group: 'ear', endArtery: true }, [
  ['ear', 'auricle, pinna, external ear', vague],
  ['helix', 'helical, helical rim, ear rim, ear helix'],
  ['helical root', 'helical crus, root of helix, crus of helix', { small: true }],
  ['antihelix', 'antihelical, ear antihelix'],
  ['scaphoid fossa', 'scapha, scaphoid', { small: true }],
  ['triangular fossa', 'triangular fossa of ear', { small: true }],
  ['concha', 'conchal, conchal bowl, concha bowl, cymba, cavum, ear concha'],
  ['tragus', 'tragal', { small: true }],
  ['antitragus', 'antitragal', { small: true }],
  ['earlobe', 'ear lobe, lobe, lobule, ear lobule', { small: true, keloidProne: true }],
  ['posterior ear', 'back of ear, ear back'],
  [
    'postauricular skin',
    'postauricular, retroauricular, behind the ear, postauricular sulcus, postauricular crease',
    {
      endArtery: false,
      dressable: 'fold',
    },
  ],
  [
    'ear canal',
    'external auditory canal, external auditory meatus, auditory canal, meatus',
    {
      earCanal: true,
      group: null,
      dressable: 'no',
      small: true,
    },
  ],
]);

const wet: Traits = { mucosa: true, dressable: 'no', group: null };
const mouth = rows({ region: 'mouth', group: 'lip', side: 'optional' }, [
  ['lip', '', vague],
  ['upper lip', 'upper cutaneous lip, above the lip, moustache area'],
  ['lower lip', 'lower cutaneous lip'],
  ['upper vermilion lip', 'upper vermilion, upper lip vermilion', { mucosa: true, dressable: 'no' }],
  ['lower vermilion lip', 'lower vermilion, lower lip vermilion', { mucosa: true, dressable: 'no' }],
  ['vermilion lip', 'vermilion, vermilion border', { ...vague, mucosa: true, dressable: 'no' }],
  ['philtrum', 'philtral, philtral column', { small: true }],
  [
    'oral commissure',
    'commissure, corner of mouth, angle of mouth, lip commissure',
    {
      side: 'needed',
      small: true,
    },
  ],
  ['perioral skin', 'perioral, around the mouth', { ...vague, group: 'face' }],
  [
    'labial mucosa',
    'mucosal lip, lip mucosa, inside the lip, inner lip, mucosal upper lip, mucosal lower lip, upper lip mucosa, lower lip mucosa, upper mucosal lip, lower mucosal lip, inner lower lip, inner upper lip, upper labial mucosa, lower labial mucosa',
    wet,
  ],
  ['buccal mucosa', 'buccal, inside the cheek, oral mucosa', { ...wet, side: 'needed' }],
  ['gingiva', 'gum, gingival', wet],
  ['tongue', 'lingual', wet],
  ['hard palate', 'palate, palatal', wet],
]);

const neck = rows({ region: 'neck', group: 'neck', friction: 'collar' }, [
  ['neck', 'cervical', vague],
  ['anterior neck', 'front of neck, throat', optional],
  ['lateral neck', 'side of neck', { danger: spinalAccessory }],
  ['posterior neck', 'nape, nape of neck, back of neck, nuchal, nuchal neck', optional],
  ['posterior triangle of the neck', 'posterior triangle, posterolateral neck', { danger: spinalAccessory }],
  ['supraclavicular neck', 'supraclavicular, supraclavicular fossa', { danger: spinalAccessory }],
  ['submandibular neck', 'submandibular, under the jaw', { danger: marginalMandibular }],
  ['submental neck', 'submental, submentum, under the chin, below the chin', optional],
  ['suprasternal notch', 'suprasternal, jugular notch, sternal notch', midline],
]);

const chest = rows({ region: 'chest', group: 'chest or abdomen', keloidProne: true }, [
  ['chest', 'thorax, anterior chest, chest wall, anterior chest wall', vague],
  ['upper chest', ''],
  ['lower chest', ''],
  [
    'lateral chest',
    'side of chest, lateral chest wall, axillary line, mid axillary line, midaxillary line, anterior axillary line',
    { friction: 'strap' },
  ],
  ['pectoral chest', 'pectoral, pectoralis'],
  [
    'sternum',
    'sternal, presternal, presternal chest, sternal chest, mid chest, midchest, intermammary, breastbone',
    optional,
  ],
  ['clavicle', 'clavicular, collarbone, collar bone', { friction: 'strap' }],
  ['infraclavicular chest', 'infraclavicular, below the clavicle, subclavicular'],
  ['decolletage', 'decollete, v of neck, v of chest, neckline', optional],
  ['xiphoid', 'xiphoid process, xyphoid', midline],
  ['trunk', 'torso, truncal', { ...vague, keloidProne: false }],
]);

const breast = rows({ region: 'breast', group: 'chest or abdomen' }, [
  ['breast', 'mammary, upper quadrant of breast, lower quadrant of breast', { friction: 'strap' }],
  ['areola', 'areolar, periareolar', { small: true }],
  ['nipple', '', { small: true }],
  [
    'inframammary fold',
    'inframammary, inframammary crease, submammary, under the breast, below the breast',
    {
      dressable: 'fold',
      friction: 'strap',
    },
  ],
]);

const axilla = rows({ region: 'axilla', group: 'chest or abdomen', dressable: 'fold', hairBearing: true }, [
  ['axilla', 'armpit, axillary, underarm, axillary vault'],
  ['anterior axillary fold', 'anterior axilla', { hairBearing: false, friction: 'strap' }],
  ['posterior axillary fold', 'posterior axilla', { hairBearing: false, friction: 'strap' }],
]);

const abdomen = rows({ region: 'abdomen', group: 'chest or abdomen' }, [
  ['abdomen', 'belly, stomach, abdominal, abdominal wall, abd', vague],
  ['upper abdomen', 'upper quadrant, upper quadrant of abdomen, hypochondrium'],
  ['lower abdomen', 'lower quadrant, lower quadrant of abdomen, iliac fossa', { friction: 'waistband' }],
  ['lateral abdomen', 'side of abdomen'],
  ['epigastrium', 'epigastric', optional],
  ['periumbilical skin', 'periumbilical, around the navel, around the umbilicus, mid abdomen', optional],
  ['umbilicus', 'umbilical, navel, belly button', { ...midline, dressable: 'fold' }],
  ['suprapubic skin', 'suprapubic, hypogastrium', { ...optional, friction: 'waistband' }],
  ['flank', 'loin, side of trunk, lateral trunk', { friction: 'waistband' }],
  ['waist', 'waistline, belt line, beltline', { friction: 'waistband' }],
  ['hip', 'iliac crest, lateral hip', { friction: 'waistband' }],
]);

const groin = rows({ region: 'groin', group: 'chest or abdomen', dressable: 'fold' }, [
  ['groin', 'inguinal, inguinal fold, inguinal crease, groin fold', { friction: 'waistband' }],
  ['mons pubis', 'pubis, pubic, mons', { ...optional, hairBearing: true, dressable: 'hair' }],
]);

const genital = rows({ region: 'genital', side: 'optional', dressable: 'no' }, [
  ['penis', 'penile', { ...vague, group: 'genital', endArtery: true }],
  ['penile shaft', 'shaft of penis', { group: 'genital', endArtery: true }],
  ['glans penis', 'glans', { group: 'genital', endArtery: true, mucosa: true, small: true }],
  [
    'coronal sulcus',
    'corona of glans, coronal sulcus of penis',
    { group: 'genital', endArtery: true, small: true },
  ],
  ['foreskin', 'prepuce, preputial', { group: 'genital', endArtery: true, small: true }],
  ['scrotum', 'scrotal', { group: 'genital', dressable: 'fold', hairBearing: true }],
  ['vulva', 'vulvar, vulval', { ...vague, group: 'vulva' }],
  [
    'labium majus',
    'labia majora, labium majora, outer labia, outer labium',
    { side: 'needed', group: 'vulva', hairBearing: true },
  ],
  [
    'labium minus',
    'labia minora, labium minora, inner labia, inner labium',
    { side: 'needed', group: 'vulva', mucosa: true },
  ],
  [
    'interlabial sulcus',
    'interlabial, interlabial fold',
    { side: 'needed', group: 'vulva', dressable: 'fold' },
  ],
  ['clitoris', 'clitoral, clitoral hood', { group: 'vulva', mucosa: true, small: true }],
  ['vaginal vestibule', 'vulvar vestibule, vulval vestibule, introitus', { group: 'vulva', mucosa: true }],
  ['fourchette', 'posterior fourchette', { group: 'vulva', mucosa: true, small: true }],
  ['vagina', 'vaginal', { ...vague, mucosa: true }],
  ['urethral meatus', 'urethral, urethral opening', { mucosa: true, small: true }],
  ['perineum', 'perineal', {}],
  ['perianal skin', 'perianal, anus, anal, anal margin, anal verge', { dressable: 'fold', outOfReach: true }],
]);

const buttock = rows({ region: 'buttock', group: 'back', friction: 'seat', outOfReach: true }, [
  ['buttock', 'gluteal, glute, gluteus'],
  ['upper buttock', '', { friction: 'waistband' }],
  ['gluteal fold', 'infragluteal fold, gluteal crease, infragluteal', { dressable: 'fold' }],
  ['natal cleft', 'gluteal cleft, intergluteal cleft, intergluteal', { side: 'never', dressable: 'fold' }],
  ['coccyx', 'tailbone, coccygeal', midline],
]);

const back = rows({ region: 'back', group: 'back', outOfReach: true }, [
  ['back', 'dorsal trunk, posterior trunk', vague],
  ['upper back', 'upper thoracic back', { keloidProne: true, friction: 'strap' }],
  ['mid back', 'midback, thoracic back, thoracic', { friction: 'strap' }],
  ['lower back', 'low back, lumbar, lumbar back, lumbosacral', { friction: 'waistband' }],
  ['lateral back', 'side of back'],
  ['scapula', 'shoulder blade, scapular, scapular back', { keloidProne: true, friction: 'strap' }],
  ['infrascapular back', 'infrascapular, below the scapula, below the shoulder blade', { friction: 'strap' }],
  [
    'interscapular back',
    'interscapular, between the shoulder blades, between the scapulae',
    {
      ...optional,
      keloidProne: true,
      friction: 'strap',
    },
  ],
  ['paraspinal back', 'paraspinal, paravertebral'],
  ['spine', 'spinal, vertebral', vagueOptional],
  ['sacrum', 'sacral, presacral, sacral back', { ...optional, friction: 'waistband' }],
]);

const shoulder = rows({ region: 'shoulder', group: 'arm', keloidProne: true, friction: 'strap' }, [
  ['shoulder', ''],
  ['anterior shoulder', 'front of shoulder'],
  ['posterior shoulder', 'back of shoulder', { group: 'back' }],
  ['top of the shoulder', 'upper shoulder, trapezius, trapezius ridge, acromion', { group: 'back' }],
  ['deltoid', 'lateral shoulder, deltoid arm', { friction: undefined }],
]);

const arm = rows({ region: 'arm', group: 'arm' }, [
  ['arm', 'upper extremity, upper limb', vague],
  ['upper arm', 'brachium, brachial'],
  ['medial upper arm', 'medial arm'],
  ['lateral upper arm', 'lateral arm'],
  ['anterior upper arm', 'anterior arm, biceps, bicep'],
  ['posterior upper arm', 'posterior arm, triceps, tricep, back of arm, back of upper arm'],
  ['elbow', 'olecranon, extensor elbow, posterior elbow', { group: 'joint extensor' }],
  [
    'medial elbow',
    'medial epicondyle, ulnar groove, cubital tunnel',
    { group: 'joint extensor', danger: ulnarNerve },
  ],
  [
    'antecubital fossa',
    'antecubital, cubital fossa, inside elbow, elbow crease, crook of elbow, medial elbow crease, flexor elbow',
    {
      group: 'joint flexor',
      dressable: 'fold',
    },
  ],
  ['forearm', 'lower arm, antebrachium'],
  ['dorsal forearm', 'extensor forearm, posterior forearm, back of forearm'],
  ['volar forearm', 'flexor forearm, anterior forearm, ventral forearm'],
  ['radial forearm', ''],
  ['ulnar forearm', ''],
  ['wrist', ''],
  ['dorsal wrist', 'extensor wrist, back of wrist'],
  ['volar wrist', 'flexor wrist, ventral wrist, anterior wrist, palmar wrist', { danger: medianNerve }],
]);

const numbered = ['1st', '2nd', '3rd', '4th', '5th'] as const;

/** `2nd finger, 2 finger, 2nd digit of hand, …`. "First finger" is the thumb to some and the index finger to others. */
const numberWords = (at: number, part: string, whole: string): string =>
  [
    ...(at === 0 && part === 'finger' ? [] : [numberedAs(at, part), numberedAs(at, `${whole} ${part}`)]),
    numberedAs(at, `digit ${whole}`),
  ].join(', ');
const numberedAs = (at: number, noun: string): string => `${numbered[at] ?? ''} ${noun}, ${at + 1} ${noun}`;

const fingerNames: readonly (readonly [name: string, synonyms: string])[] = [
  ['thumb', 'pollex'],
  ['index finger', 'forefinger, pointer finger, index'],
  ['middle finger', 'long finger'],
  ['ring finger', ''],
  ['little finger', 'small finger, pinky, pinky finger'],
];
const toeNames: readonly (readonly [name: string, synonyms: string])[] = [
  ['great toe', 'big toe, hallux'],
  ['second toe', ''],
  ['third toe', 'middle toe'],
  ['fourth toe', ''],
  ['fifth toe', 'little toe, small toe, pinky toe'],
];
const joined = (...parts: readonly string[]): string => parts.filter((part) => part !== '').join(', ');

const hand = rows({ region: 'hand', group: 'hand' }, [
  ['hand', '', vague],
  ['dorsal hand', 'dorsum of hand, back of hand, extensor hand', { danger: extensorTendons }],
  ['palm', 'palmar, palmar hand, palm of hand, volar hand', { acral: true, group: 'palm' }],
  ['thenar eminence', 'thenar, thenar palm', { acral: true, group: 'palm' }],
  ['hypothenar eminence', 'hypothenar, hypothenar palm', { acral: true, group: 'palm' }],
  [
    'finger web',
    'web space of hand, finger web space, interdigital hand, webspace of hand',
    { dressable: 'fold' },
  ],
  ['knuckle', 'metacarpophalangeal joint, mcp, mcp joint, metacarpophalangeal', { group: 'joint extensor' }],
  [
    'fingertip',
    'tip of finger, finger pad, fingerpad, finger pulp',
    {
      ...vague,
      group: 'fingertip',
      endArtery: true,
      acral: true,
    },
  ],
  ['finger', 'digit of hand', { ...vague, endArtery: true, acral: true }],
  ['digit', 'acral digit', { ...vague, endArtery: true, acral: true }],
  [
    'web space',
    'webspace, interdigital, interdigital web',
    {
      ...vague,
      dressable: 'fold',
      narrowed: new Map([
        ['toe', 'toe web'],
        ['hallux', 'toe web'],
        ['foot', 'toe web'],
        ['finger', 'finger web'],
        ['thumb', 'finger web'],
      ]),
    },
  ],
  ...fingerNames.map(([name, synonyms], at): Entry => [
    name,
    joined(synonyms, numberWords(at, 'finger', 'hand')),
    { endArtery: true, acral: true, digit: at + 1 },
  ]),
]);

const belowKnee: Traits = { slowHealing: true };
const leg = rows({ region: 'leg', group: 'leg' }, [
  ['leg', 'lower extremity, lower limb', { ...vague, slowHealing: true }],
  ['thigh', 'upper leg, femoral'],
  ['anterior thigh', 'front of thigh, quadriceps'],
  ['posterior thigh', 'back of thigh, hamstring'],
  ['medial thigh', ''],
  ['lateral thigh', 'side of thigh'],
  ['knee', 'anterior knee, patella, kneecap, extensor knee', { group: 'joint extensor' }],
  [
    'popliteal fossa',
    'popliteal, back of knee, behind the knee, posterior knee, flexor knee',
    // Stitched as a leg is: the sources' shorter window for flexor joints is that of the elbow and the wrist.
    { dressable: 'fold' },
  ],
  ['lower leg', '', belowKnee],
  ['shin', 'pretibial, pretibial leg, tibial, anterior lower leg, anterior leg, tibia', belowKnee],
  ['calf', 'posterior lower leg, posterior leg, back of lower leg', belowKnee],
  ['medial lower leg', 'medial leg', belowKnee],
  ['lateral lower leg', 'lateral leg', belowKnee],
  [
    'fibular head',
    'head of fibula, fibula head, fibular neck, neck of fibula',
    { ...belowKnee, danger: peronealNerve },
  ],
  ['ankle', '', belowKnee],
  ['medial malleolus', 'medial ankle', { ...belowKnee, friction: 'shoe' }],
  ['lateral malleolus', 'lateral ankle', { ...belowKnee, friction: 'shoe' }],
  ['anterior ankle', 'front of ankle, dorsal ankle', { ...belowKnee, friction: 'shoe' }],
  [
    'achilles',
    'achilles tendon, posterior ankle, back of ankle',
    {
      ...belowKnee,
      friction: 'shoe',
      danger: achilles,
    },
  ],
]);

const foot = rows({ region: 'foot', group: 'foot', slowHealing: true, friction: 'shoe', outOfReach: true }, [
  ['foot', '', vague],
  ['dorsal foot', 'dorsum of foot, top of foot, instep'],
  ['medial foot', ''],
  ['lateral foot', 'side of foot'],
  ['sole', 'plantar, plantar foot, bottom of foot, sole of foot, volar foot', { acral: true, group: 'sole' }],
  ['heel', 'calcaneus, calcaneal, plantar heel, posterior heel', { acral: true, group: 'sole' }],
  ['arch of the foot', 'arch, plantar arch', { acral: true, group: 'sole' }],
  ['ball of the foot', 'forefoot, plantar forefoot, metatarsal head', { acral: true, group: 'sole' }],
  ['toe web', 'web space of foot, toe web space, interdigital foot, webspace of foot', { dressable: 'fold' }],
  ['toe', 'digit of foot', { ...vague, endArtery: true, acral: true }],
  ...toeNames.map(([name, synonyms], at): Entry => [
    name,
    joined(synonyms, numberWords(at, 'toe', 'foot')),
    { endArtery: true, acral: true, digit: at + 1 },
  ]),
]);

const nailParts = ['nail', 'nail bed', 'nail matrix', 'nail fold', 'nail unit', 'nail plate'];

/** `index finger nail, 2nd finger nail bed, …` */
const nailsOf = (digit: string, at: number, part: string): string =>
  nailParts
    .flatMap((nail) => [
      `${digit} ${nail}`,
      ...(digit === 'thumb' ? [] : [`${numbered[at] ?? ''} ${part} ${nail}`]),
    ])
    .concat(digit === 'thumb' ? [] : [`${numbered[at] ?? ''} ${part}nail`])
    .join(', ');

const nail = rows({ region: 'nail', endArtery: true, acral: true, small: true, group: 'fingertip' }, [
  [
    'nail',
    'nail unit, nail bed, nail matrix, nail fold, nail plate, periungual, subungual',
    {
      ...vague,
      small: false,
    },
  ],
  ['fingernail', 'finger nail, periungual finger', { ...vague, small: false }],
  [
    'toenail',
    'toe nail, periungual toe',
    {
      ...vague,
      small: false,
      group: 'foot',
      slowHealing: true,
      friction: 'shoe',
    },
  ],
  ...fingerNames.map(([name], at): Entry => [
    name === 'thumb' ? 'thumbnail' : `${name}nail`,
    nailsOf(name, at, 'finger'),
    { digit: at + 1 },
  ]),
  ...toeNames.map(([name], at): Entry => [
    `${name}nail`,
    joined(nailsOf(name, at, 'toe'), at === 0 ? 'big toe nail, big toenail, hallux nail' : ''),
    { digit: at + 1, group: 'foot', slowHealing: true, friction: 'shoe' },
  ]),
]);

/** The body sites that Wheal knows. */
export const sites: readonly SiteRow[] = [
  scalp,
  face,
  eye,
  nose,
  ear,
  mouth,
  neck,
  chest,
  breast,
  axilla,
  abdomen,
  groin,
  genital,
  buttock,
  back,
  shoulder,
  arm,
  hand,
  leg,
  foot,
  nail,
].flat();

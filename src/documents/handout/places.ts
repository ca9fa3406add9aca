import type { SiteReading } from '../../note/words/site.ts';
import type { SiteRegion } from '../../reference/sites.ts';
import type { Language } from '../../note/words/language.ts';

export type Gender = 'm' | 'f';

/** Plain words for a place. */
export interface PlaceWords {
  readonly en: string;
  /** A side follows the word before the star; without a star there is one such place, and a side of it is meant. */
  readonly es: string;
  /** Of the noun before the star, or of the first noun where there is none: what an adjective agrees with. */
  readonly gender: Gender;
}

const rows = (text: string): ReadonlyMap<string, PlaceWords> =>
  new Map(
    text
      .trim()
      .split('\n')
      .map((line) => {
        const [name = '', en = '', es = '', gender] = line.split('|').map((part) => part.trim());
        return [name, { en: en === '=' ? name : en, es, gender: gender === 'f' ? 'f' : 'm' }] as const;
      }),
  );

/** Plain words for a region, for sites that have none of their own: name | English | Spanish | gender. */
const regions = rows(`
    scalp    | = | cuero cabelludo | m
    face     | = | cara | f
    eye      | area around the eye | zona del ojo* | m
    nose     | = | nariz | f
    ear      | = | oreja* | f
    mouth    | = | boca | f
    neck     | = | cuello | m
    chest    | = | pecho | m
    breast   | = | seno* | m
    axilla   | armpit | axila* | f
    abdomen  | belly | abdomen | m
    groin    | = | ingle* | f
    genital  | genital area | zona genital | f
    buttock  | = | glúteo* | m
    back     | = | espalda | f
    shoulder | = | hombro* | m
    arm      | = | brazo* | m
    hand     | = | mano* | f
    leg      | = | pierna* | f
    foot     | = | pie* | m
    nail     | = | uña* | f
`);

/** Plain words for a site; `=` where its own name is plain. */
const sites = rows(`
    forehead         | = | frente | f
    temple           | = | sien* | f
    eyebrow          | = | ceja* | f
    cheek            | = | mejilla* | f
    malar cheek      | cheek | mejilla* | f
    infraorbital cheek | cheek | mejilla* | f
    medial cheek     | cheek | mejilla* | f
    lateral cheek    | cheek | mejilla* | f
    lower cheek      | cheek | mejilla* | f
    preauricular cheek | cheek | mejilla* | f
    parotid cheek    | cheek | mejilla* | f
    chin             | = | barbilla | f
    jawline          | jaw | mandíbula | f
    eyelid           | = | párpado* | m
    upper eyelid     | = | párpado superior* | m
    lower eyelid     | = | párpado inferior* | m
    upper eyelid margin | edge of the upper eyelid | borde del párpado superior* | m
    lower eyelid margin | edge of the lower eyelid | borde del párpado inferior* | m
    earlobe          | = | lóbulo de la oreja* | f
    ear canal        | = | conducto del oído* | m
    posterior ear    | back of the ear | parte de atrás de la oreja* | f
    postauricular skin | skin behind the ear | piel de detrás de la oreja* | f
    lip              | = | labio | m
    upper lip        | = | labio superior | m
    lower lip        | = | labio inferior | m
    upper vermilion lip | upper lip | labio superior | m
    lower vermilion lip | lower lip | labio inferior | m
    tongue           | = | lengua | f
    gingiva          | gum | encía | f
    hard palate      | roof of the mouth | paladar | m
    buccal mucosa    | inside of the cheek | parte de adentro de la mejilla* | f
    labial mucosa    | inside of the lip | parte de adentro del labio | f
    anterior neck    | front of the neck | parte de adelante del cuello | f
    lateral neck     | side of the neck | costado* del cuello | m
    posterior neck   | back of the neck | nuca | f
    upper chest      | = | parte alta* del pecho | f
    lower chest      | = | parte baja* del pecho | f
    sternum          | middle of the chest | centro del pecho | m
    clavicle         | collarbone | clavícula* | f
    nipple           | = | pezón* | m
    inframammary fold | fold under the breast | pliegue de debajo del seno* | m
    upper abdomen    | upper belly | parte alta* del abdomen | f
    lower abdomen    | lower belly | parte baja* del abdomen | f
    umbilicus        | belly button | ombligo | m
    flank            | side of the trunk | costado* | m
    waist            | = | cintura | f
    hip              | = | cadera* | f
    penis            | = | pene | m
    scrotum          | = | escroto | m
    vulva            | = | vulva | f
    perianal skin    | skin around the anus | piel de alrededor del ano | f
    upper back       | = | parte alta* de la espalda | f
    mid back         | middle of the back | parte media* de la espalda | f
    lower back       | = | parte baja* de la espalda | f
    scapula          | shoulder blade | omóplato* | m
    upper arm        | = | parte alta del brazo* | m
    medial upper arm | inner upper arm | parte de adentro del brazo* | m
    lateral upper arm | outer upper arm | parte de afuera del brazo* | m
    elbow            | = | codo* | m
    antecubital fossa | fold of the elbow | pliegue del codo* | m
    forearm          | = | antebrazo* | m
    dorsal forearm   | back of the forearm | parte de atrás del antebrazo* | m
    volar forearm    | front of the forearm | parte de adelante del antebrazo* | m
    wrist            | = | muñeca* | f
    dorsal wrist     | back of the wrist | parte de atrás de la muñeca* | f
    volar wrist      | front of the wrist | parte de adelante de la muñeca* | f
    dorsal hand      | back of the hand | dorso de la mano* | f
    palm             | = | palma de la mano* | f
    finger           | = | dedo de la mano* | f
    fingertip        | = | punta del dedo de la mano* | f
    thumb            | = | pulgar* | m
    index finger     | = | dedo índice de la mano* | f
    middle finger    | = | dedo medio de la mano* | f
    ring finger      | = | dedo anular de la mano* | f
    little finger    | = | dedo meñique de la mano* | f
    thigh            | = | muslo* | m
    anterior thigh   | front of the thigh | parte de adelante del muslo* | m
    posterior thigh  | back of the thigh | parte de atrás del muslo* | m
    medial thigh     | inner thigh | parte de adentro del muslo* | m
    lateral thigh    | outer thigh | parte de afuera del muslo* | m
    knee             | = | rodilla* | f
    popliteal fossa  | back of the knee | parte de atrás de la rodilla* | f
    lower leg        | = | parte baja de la pierna* | f
    shin             | = | espinilla* | f
    calf             | = | pantorrilla* | f
    medial lower leg | inner lower leg | parte de adentro de la pantorrilla* | f
    lateral lower leg | outer lower leg | parte de afuera de la pantorrilla* | f
    ankle            | = | tobillo* | m
    medial malleolus | inner ankle | parte de adentro del tobillo* | m
    lateral malleolus | outer ankle | parte de afuera del tobillo* | m
    anterior ankle   | front of the ankle | parte de adelante del tobillo* | m
    achilles         | back of the ankle | parte de atrás del tobillo* | m
    dorsal foot      | top of the foot | empeine del pie* | m
    sole             | sole of the foot | planta del pie* | m
    heel             | = | talón* | m
    toe              | = | dedo del pie* | m
    great toe        | big toe | dedo gordo del pie* | m
    second toe       | = | segundo dedo del pie* | m
    third toe        | = | tercer dedo del pie* | m
    fourth toe       | = | cuarto dedo del pie* | m
    fifth toe        | little toe | dedo pequeño del pie* | m
    fingernail       | = | uña de la mano* | f
    toenail          | = | uña del pie* | m
    thumbnail        | nail of the thumb | uña del pulgar* | m
    index fingernail | nail of the index finger | uña del dedo índice de la mano* | f
    middle fingernail | nail of the middle finger | uña del dedo medio de la mano* | f
    ring fingernail  | nail of the ring finger | uña del dedo anular de la mano* | f
    little fingernail | nail of the little finger | uña del dedo meñique de la mano* | f
    great toenail    | nail of the big toe | uña del dedo gordo del pie* | m
    second toenail   | nail of the second toe | uña del segundo dedo del pie* | m
    third toenail    | nail of the third toe | uña del tercer dedo del pie* | m
    fourth toenail   | nail of the fourth toe | uña del cuarto dedo del pie* | m
    fifth toenail    | nail of the little toe | uña del dedo pequeño del pie* | m
`);

/** Words beside `fingertip` that say whose tip it is. */
const fingerWords: ReadonlyMap<string, string> = new Map([
  ['thumb', 'thumb'],
  ...['index', '2nd', 'second'].map((word) => [word, 'index finger'] as const),
  ...['middle', 'long', '3rd', 'third'].map((word) => [word, 'middle finger'] as const),
  ...['ring', '4th', 'fourth'].map((word) => [word, 'ring finger'] as const),
  ...['little', 'small', 'pinky', '5th', 'fifth'].map((word) => [word, 'little finger'] as const),
]);

/** Words for the tip of a finger, where the note says of which. */
function fingertipWords({ base, qualifiers = [] }: Place): PlaceWords | undefined {
  if (base.name !== 'fingertip') return undefined;
  const finger = qualifiers
    .map((word) => fingerWords.get(word.toLowerCase()))
    .find((name) => name !== undefined);
  const words = finger === undefined ? undefined : sites.get(finger);
  return words && { ...words, en: `tip of the ${words.en}`, es: `punta del ${words.es}` };
}

/** Ends with a place of which there is one, so that a side of it is meant and not one of two. */
const single =
  /(?:^|\bthe )(?:nose|mouth|lip|tongue|neck|chest|belly|belly button|genital area|penis|scrotum|vulva|anus|back|trunk|scalp|face|chin|forehead|waist|gum|jaw)$/;

/** `left cheek`, `back of the left hand`; `left side of the nose`, `back of the neck, left side`. */
function sided(side: string, name: string): string {
  const after = name.lastIndexOf('the ');
  if (!single.test(name))
    return after < 0 ? `${side} ${name}` : `${name.slice(0, after + 4)}${side} ${name.slice(after + 4)}`;
  if (after < 0) return `${side} side of the ${name}`;
  return name.startsWith('side') ? `${side} ${name}` : `${name}, ${side} side`;
}

type Side = NonNullable<SiteReading['side']>;

/** The Spanish adjective for a side, by gender. */
const adjectives: Readonly<Record<'left' | 'right', Readonly<Record<Gender, string>>>> = {
  left: { m: 'izquierdo', f: 'izquierda' },
  right: { m: 'derecho', f: 'derecha' },
};

/** `rodilla derecha`, `parte alta derecha de la espalda`; `lado derecho de la nariz`. */
function sidedInSpanish(side: 'left' | 'right', { es, gender }: PlaceWords): string {
  if (es.includes('*')) return es.replace('*', ` ${adjectives[side][gender]}`);
  return `lado ${adjectives[side].m} ${gender === 'f' ? 'de la' : 'del'} ${es}`;
}

function inSpanish(words: PlaceWords, side: Side | undefined): string {
  if (side === 'left' || side === 'right') return sidedInSpanish(side, words);
  if (side === 'both') return `${sidedInSpanish('left', words)} y ${sidedInSpanish('right', words)}`;
  return words.es.replace('*', '');
}

function inEnglish({ en }: PlaceWords, side: Side | undefined): string {
  if (side === 'left' || side === 'right') return sided(side, en);
  return side === 'both' ? `${en}, both sides` : en;
}

/** A site as it was read. */
export type Place = Pick<SiteReading, 'base' | 'side'> & Partial<Pick<SiteReading, 'qualifiers'>>;

/** Plain words for a site without its side; undefined where there are none, as for a practice's own place. */
export const wordsOf = (place: Place): PlaceWords | undefined =>
  fingertipWords(place) ?? sites.get(place.base.name) ?? regions.get(place.base.region);

/** A body site in plain words; undefined where there are none, as for a practice's own place. */
export function placeWords(place: Place, language: Language): string | undefined {
  const words = wordsOf(place);
  if (words === undefined) return undefined;
  return language === 'es' ? inSpanish(words, place.side) : inEnglish(words, place.side);
}

/** Every site and region that has words, for the test that each of them exists. */
export const placeNames = { sites: [...sites.keys()], regions: [...regions.keys()] as readonly SiteRegion[] };

import type { SiteReading } from '../../note/words/site.ts';
import type { SiteRegion } from '../../reference/sites.ts';
import type { Language } from './language.ts';

type Words = Readonly<Record<Language, string>>;

const rows = (text: string): readonly (readonly [string, Words])[] =>
  text
    .trim()
    .split('\n')
    .map((line) => {
      const [name = '', en = '', es = ''] = line.split('|').map((part) => part.trim());
      return [name, { en: en === '=' ? name : en, es }] as const;
    });

/** Plain words for a region, for sites that have none of their own: name | English | Spanish. */
const regions: ReadonlyMap<string, Words> = new Map(
  rows(`
    scalp    | = | cuero cabelludo
    face     | = | cara
    eye      | area around the eye | zona del ojo
    nose     | = | nariz
    ear      | = | oreja
    mouth    | = | boca
    neck     | = | cuello
    chest    | = | pecho
    breast   | = | seno
    axilla   | armpit | axila
    abdomen  | belly | abdomen
    groin    | = | ingle
    genital  | genital area | zona genital
    buttock  | = | glúteo
    back     | = | espalda
    shoulder | = | hombro
    arm      | = | brazo
    hand     | = | mano
    leg      | = | pierna
    foot     | = | pie
    nail     | = | uña
  `),
);

/** Plain words for a site; `=` where its own name is plain. */
const sites: ReadonlyMap<string, Words> = new Map(
  rows(`
    forehead         | = | frente
    temple           | = | sien
    eyebrow          | = | ceja
    cheek            | = | mejilla
    malar cheek      | cheek | mejilla
    infraorbital cheek | cheek | mejilla
    medial cheek     | cheek | mejilla
    lateral cheek    | cheek | mejilla
    lower cheek      | cheek | mejilla
    preauricular cheek | cheek | mejilla
    parotid cheek    | cheek | mejilla
    chin             | = | barbilla
    jawline          | jaw | mandíbula
    eyelid           | = | párpado
    upper eyelid     | = | párpado de arriba
    lower eyelid     | = | párpado de abajo
    upper eyelid margin | edge of the upper eyelid | borde del párpado de arriba
    lower eyelid margin | edge of the lower eyelid | borde del párpado de abajo
    earlobe          | = | lóbulo de la oreja
    ear canal        | = | canal del oído
    posterior ear    | back of the ear | parte de atrás de la oreja
    postauricular skin | skin behind the ear | piel detrás de la oreja
    lip              | = | labio
    upper lip        | = | labio de arriba
    lower lip        | = | labio de abajo
    upper vermilion lip | upper lip | labio de arriba
    lower vermilion lip | lower lip | labio de abajo
    tongue           | = | lengua
    gingiva          | gum | encía
    hard palate      | roof of the mouth | paladar
    buccal mucosa    | inside of the cheek | parte de adentro de la mejilla
    labial mucosa    | inside of the lip | parte de adentro del labio
    anterior neck    | front of the neck | parte de adelante del cuello
    lateral neck     | side of the neck | parte de lado del cuello
    posterior neck   | back of the neck | parte de atrás del cuello
    upper chest      | = | parte alta del pecho
    lower chest      | = | parte baja del pecho
    sternum          | middle of the chest | medio del pecho
    clavicle         | collarbone | clavícula
    nipple           | = | pezón
    inframammary fold | fold under the breast | pliegue debajo del seno
    upper abdomen    | upper belly | parte alta del abdomen
    lower abdomen    | lower belly | parte baja del abdomen
    umbilicus        | belly button | ombligo
    flank            | side of the trunk | costado
    waist            | = | cintura
    hip              | = | cadera
    penis            | = | pene
    scrotum          | = | escroto
    vulva            | = | vulva
    perianal skin    | skin around the anus | piel alrededor del ano
    upper back       | = | parte alta de la espalda
    mid back         | middle of the back | parte media de la espalda
    lower back       | = | parte baja de la espalda
    scapula          | shoulder blade | omóplato
    upper arm        | = | parte alta del brazo
    medial upper arm | inner upper arm | parte de adentro del brazo
    lateral upper arm | outer upper arm | parte de afuera del brazo
    elbow            | = | codo
    antecubital fossa | fold of the elbow | pliegue del codo
    forearm          | = | antebrazo
    dorsal forearm   | back of the forearm | parte de atrás del antebrazo
    volar forearm    | front of the forearm | parte de adelante del antebrazo
    wrist            | = | muñeca
    dorsal wrist     | back of the wrist | parte de atrás de la muñeca
    volar wrist      | front of the wrist | parte de adelante de la muñeca
    dorsal hand      | back of the hand | dorso de la mano
    palm             | = | palma de la mano
    finger           | = | dedo de la mano
    fingertip        | = | punta del dedo
    thumb            | = | pulgar
    index finger     | = | dedo índice
    middle finger    | = | dedo medio
    ring finger      | = | dedo anular
    little finger    | = | dedo meñique
    thigh            | = | muslo
    anterior thigh   | front of the thigh | parte de adelante del muslo
    posterior thigh  | back of the thigh | parte de atrás del muslo
    medial thigh     | inner thigh | parte de adentro del muslo
    lateral thigh    | outer thigh | parte de afuera del muslo
    knee             | = | rodilla
    popliteal fossa  | back of the knee | parte de atrás de la rodilla
    lower leg        | = | parte baja de la pierna
    shin             | = | espinilla
    calf             | = | pantorrilla
    medial lower leg | inner lower leg | parte baja de la pierna, por adentro
    lateral lower leg | outer lower leg | parte baja de la pierna, por afuera
    ankle            | = | tobillo
    medial malleolus | inner ankle | parte de adentro del tobillo
    lateral malleolus | outer ankle | parte de afuera del tobillo
    anterior ankle   | front of the ankle | parte de adelante del tobillo
    achilles         | back of the ankle | parte de atrás del tobillo
    dorsal foot      | top of the foot | dorso del pie
    sole             | sole of the foot | planta del pie
    heel             | = | talón
    toe              | = | dedo del pie
    great toe        | big toe | dedo gordo del pie
    second toe       | = | segundo dedo del pie
    third toe        | = | tercer dedo del pie
    fourth toe       | = | cuarto dedo del pie
    fifth toe        | little toe | dedo pequeño del pie
    fingernail       | = | uña de la mano
    toenail          | = | uña del pie
  `),
);

/** Ends with a place of which there is one, so that a side of it is meant and not one of two. */
const single =
  /(?:^|\bthe )(?:nose|mouth|lip|tongue|neck|chest|belly|belly button|genital area|penis|scrotum|vulva|anus|back|trunk|scalp|face|chin|forehead)$/;

/** `left cheek`, `back of the left hand`; `left side of the nose`, `back of the neck, left side`. */
const sided = (side: string, name: string): string => {
  const behind = name.lastIndexOf('the ');
  if (!single.test(name))
    return behind < 0 ? `${side} ${name}` : `${name.slice(0, behind + 4)}${side} ${name.slice(behind + 4)}`;
  if (behind < 0) return `${side} side of the ${name}`;
  return name.startsWith('side') ? `${side} ${name}` : `${name}, ${side} side`;
};

type Side = NonNullable<SiteReading['side']>;

const sides: Readonly<Record<Side, (name: Words) => Words>> = {
  left: ({ en, es }) => ({ en: sided('left', en), es: `${es}, lado izquierdo` }),
  right: ({ en, es }) => ({ en: sided('right', en), es: `${es}, lado derecho` }),
  both: ({ en, es }) => ({ en: `${en}, both sides`, es: `${es}, ambos lados` }),
  midline: (name) => name,
};

/** A body site in plain words; undefined where Wheal has none, as for a practice's own place. */
export function placeWords(
  { base, side }: Pick<SiteReading, 'base' | 'side'>,
  language: Language,
): string | undefined {
  const name = sites.get(base.name) ?? regions.get(base.region);
  if (name === undefined) return undefined;
  return (side === undefined ? name : sides[side](name))[language];
}

/** Every site and region that has words, for the test that each of them exists. */
export const placeNames = { sites: [...sites.keys()], regions: [...regions.keys()] as readonly SiteRegion[] };

import type { Language } from '../../note/words/language.ts';
import type { ViewName } from './body/views.ts';

/** Why a site is not on the figure. */
export type NotPlaced = 'unknown' | 'contradiction' | 'no-side' | 'not-drawn';

interface Wording {
  readonly title: string;
  readonly hint: string;
  /** A site that the note does not have. */
  readonly unnamed: string;
  readonly left: string;
  readonly right: string;
  readonly head: readonly string[];
  readonly not: Readonly<Record<NotPlaced, string>>;
  /** What a drawing shows. */
  readonly viewOf: (view: ViewName, side: 'left' | 'right' | undefined) => string;
}

const english: Readonly<Record<ViewName, string>> = {
  front: 'From the front',
  back: 'From behind',
  face: 'Face',
  'head-back': 'Head from behind',
  'head-top': 'Head from above',
  profile: 'Head, * side',
  ear: '* ear',
  mouth: 'Open mouth',
  'hand-back': '* hand, back',
  palm: '* hand, palm',
  'foot-top': '* foot, top',
  sole: '* foot, sole',
  intimate: 'Genital and anal area',
};

/** `o` or `a` after the star is the ending of the side. */
const spanish: Readonly<Record<ViewName, string>> = {
  front: 'Por delante',
  back: 'Por detrás',
  face: 'Cara',
  'head-back': 'Cabeza por detrás',
  'head-top': 'Cabeza por arriba',
  profile: 'Cabeza, lado *o',
  ear: 'Oreja *a',
  mouth: 'Boca abierta',
  'hand-back': 'Mano *a, dorso',
  palm: 'Mano *a, palma',
  'foot-top': 'Pie *o, dorso',
  sole: 'Pie *o, planta',
  intimate: 'Zona genital y anal',
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const placeWordings: Readonly<Record<Language, Wording>> = {
  en: {
    title: 'Where on the body',
    hint: 'Left and right are those of the patient. An area is marked, not an exact place.',
    unnamed: 'site not recorded',
    left: 'left',
    right: 'right',
    head: ['Number', 'Site', 'Shown on'],
    not: {
      unknown: 'not on the figure, since no site that is known is named',
      contradiction: 'not on the figure, since two sides are named',
      'no-side': 'not on the figure, since no side is named',
      'not-drawn': 'not on the figure, which does not have this site',
    },
    viewOf: (view, side) => capital(english[view].replace('*', side ?? '')),
  },
  es: {
    title: 'En qué parte del cuerpo',
    hint: 'Izquierda y derecha son las del paciente. Se marca una zona, no un punto exacto.',
    unnamed: 'lugar no anotado',
    left: 'izquierda',
    right: 'derecha',
    head: ['Número', 'Lugar', 'Se ve en'],
    not: {
      unknown: 'no está en la figura: el lugar no se conoce',
      contradiction: 'no está en la figura: se nombran dos lados',
      'no-side': 'no está en la figura: no se nombra el lado',
      'not-drawn': 'no está en la figura, que no tiene este lugar',
    },
    viewOf: (view, side) => spanish[view].replace('*', side === 'left' ? 'izquierd' : 'derech'),
  },
};

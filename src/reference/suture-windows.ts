import type { Sourced, WordRow } from './types.ts';

/** Sites that sources give one row for suture removal. */
export type WindowGroup =
  | 'face'
  | 'eyelid'
  | 'lip'
  | 'ear'
  | 'neck'
  | 'scalp'
  | 'chest or abdomen'
  | 'back'
  | 'arm'
  | 'hand'
  | 'palm'
  | 'fingertip'
  | 'joint extensor'
  | 'joint flexor'
  | 'leg'
  | 'foot'
  | 'sole'
  | 'genital'
  | 'vulva';

/** Days from the procedure to suture removal as one source gives them, both ends included. */
export interface SutureWindowRow extends Sourced {
  readonly group: WindowGroup;
  readonly from: number;
  readonly to: number;
  /** Rows for children only widen what is in order; the source names no age. */
  readonly children?: true;
  /**
   * The row that Wheal proposes. One rule chooses it: the leaflet on punch biopsies where it names the site, else
   * the suture handbook's row for adults, else the clinical handbook, else the page on biopsies of that site.
   */
  readonly proposed?: true;
  /** Whether what makes a wound hold late lengthens it. The handbook's short table keeps the face at five days, and late removal leaves tracks there. */
  readonly lengthens: boolean;
}

/** Another way to say which sites a practice's own window is for. */
export interface PracticeSutureWindow {
  /** Name of a body site, of its region, or of its window group. */
  readonly site: string;
  readonly from: number;
  readonly to: number;
}

/** What makes a wound hold late. */
export interface LengtheningRow extends Sourced, WordRow {
  /** Old age: from this age on. The sources name no number. */
  readonly fromYears?: number;
}

type Figures = readonly [source: string, from: number, to: number, kind?: 'proposed' | 'children'];

const faceLike: ReadonlySet<WindowGroup> = new Set(['face', 'eyelid', 'lip', 'ear']);

const group = (name: WindowGroup, figures: readonly Figures[]): readonly SutureWindowRow[] =>
  figures.map(([source, from, to, kind]) => ({
    group: name,
    from,
    to,
    source,
    mark: marks[source] ?? 'Q',
    lengthens: !faceLike.has(name),
    ...(kind === undefined ? {} : { [kind]: true as const }),
  }));

/** Sources whose figures were not read in the source itself. */
const marks: Readonly<Record<string, 'M' | 'Q2'>> = {
  'laceration-table': 'M',
  'ear-page': 'Q2',
  'labiaplasty-page': 'Q2',
};

const face: readonly Figures[] = [
  ['punch-leaflet', 5, 7, 'proposed'],
  ['clinical-handbook', 3, 5],
  ['suture-handbook', 3, 5],
  ['suture-handbook', 3, 5, 'children'],
  ['suture-chart', 5, 7],
  ['plastic-surgery-text', 5, 7],
  ['family-practice-guide', 5, 5],
  ['closure-removal-text', 4, 5],
  ['laceration-table', 3, 5],
];
const hand: readonly Figures[] = [
  ['suture-handbook', 8, 10, 'proposed'],
  ['suture-handbook', 6, 8, 'children'],
  ['clinical-handbook', 14, 14],
  ['suture-chart', 7, 10],
  ['laceration-table', 10, 14],
];
const foot: readonly Figures[] = [
  ['suture-handbook', 10, 12, 'proposed'],
  ['suture-handbook', 8, 10, 'children'],
  ['suture-chart', 12, 14],
  ['plastic-surgery-text', 10, 14],
];

/** Every published window; where sources differ each has its row. */
export const sutureWindows: readonly SutureWindowRow[] = [
  group('face', face),
  group('eyelid', [
    ['suture-handbook', 3, 5, 'proposed'],
    ['suture-handbook', 3, 5, 'children'],
    ['suture-chart', 5, 7],
    ['family-practice-guide', 3, 3],
  ]),
  group('lip', [
    ['suture-handbook', 4, 5, 'proposed'],
    ['suture-handbook', 3, 5, 'children'],
    ['family-practice-guide', 5, 5],
  ]),
  group('ear', [
    ['suture-handbook', 4, 5, 'proposed'],
    ['suture-handbook', 3, 5, 'children'],
    ['suture-chart', 5, 7],
    ['ear-page', 10, 14],
  ]),
  group('neck', [
    ['clinical-handbook', 5, 7, 'proposed'],
    ['family-practice-guide', 3, 4],
    ['web-notes', 7, 7],
  ]),
  group('scalp', [
    ['punch-leaflet', 7, 10, 'proposed'],
    ['clinical-handbook', 7, 7],
    ['suture-handbook', 6, 8],
    ['suture-handbook', 5, 7, 'children'],
    ['suture-chart', 7, 7],
    ['plastic-surgery-text', 10, 14],
    ['family-practice-guide', 7, 14],
    ['laceration-table', 7, 10],
  ]),
  group('chest or abdomen', [
    ['punch-leaflet', 10, 14, 'proposed'],
    ['clinical-handbook', 10, 14],
    ['suture-handbook', 8, 10],
    ['suture-handbook', 6, 8, 'children'],
    ['suture-chart', 12, 14],
    ['plastic-surgery-text', 10, 14],
    ['family-practice-guide', 7, 7],
    ['laceration-table', 10, 14],
  ]),
  group('back', [
    ['punch-leaflet', 10, 14, 'proposed'],
    ['clinical-handbook', 10, 14],
    ['suture-handbook', 12, 14],
    ['suture-handbook', 10, 12, 'children'],
    ['suture-chart', 7, 10],
    ['plastic-surgery-text', 10, 14],
    ['family-practice-guide', 7, 7],
    ['web-notes', 14, 14],
    ['laceration-table', 10, 14],
  ]),
  group('arm', [
    ['punch-leaflet', 10, 14, 'proposed'],
    ['clinical-handbook', 10, 14],
    ['suture-handbook', 8, 10],
    ['suture-handbook', 6, 8, 'children'],
    ['suture-chart', 7, 10],
    ['plastic-surgery-text', 10, 12],
    ['family-practice-guide', 7, 7],
    ['laceration-table', 7, 10],
  ]),
  group('hand', hand),
  // The handbook means the back of the hand, and the table has a row of its own for palms.
  group('palm', [
    ...hand.filter(([source]) => source !== 'clinical-handbook' && source !== 'laceration-table'),
    ['laceration-table', 14, 21],
  ]),
  group('fingertip', [
    ['suture-handbook', 10, 12, 'proposed'],
    ['suture-handbook', 8, 10, 'children'],
  ]),
  group('joint extensor', [
    ['suture-handbook', 10, 14, 'proposed'],
    ['suture-handbook', 8, 10, 'children'],
    ['suture-chart', 10, 14],
  ]),
  group('joint flexor', [
    ['suture-handbook', 8, 10, 'proposed'],
    ['suture-handbook', 6, 8, 'children'],
    ['suture-chart', 7, 10],
  ]),
  group('leg', [
    ['punch-leaflet', 10, 14, 'proposed'],
    ['clinical-handbook', 14, 28],
    ['suture-handbook', 8, 12],
    ['suture-handbook', 6, 10, 'children'],
    ['suture-chart', 7, 10],
    ['plastic-surgery-text', 10, 14],
    ['family-practice-guide', 8, 10],
    ['laceration-table', 10, 14],
  ]),
  group('foot', [...foot, ['laceration-table', 10, 14]]),
  group('sole', [...foot, ['laceration-table', 14, 21]]),
  group('genital', [
    ['suture-handbook', 7, 10, 'proposed'],
    ['suture-handbook', 6, 8, 'children'],
    ['suture-chart', 7, 10],
  ]),
  group('vulva', [
    ['vulval-biopsy-page', 5, 7, 'proposed'],
    ['labiaplasty-page', 7, 10],
  ]),
].flat();

/** Days by which one step lengthens: the suture handbook's short table goes from 10 to 15 with one such factor and to 20 with several. */
export const lengtheningStep = 5;

/** What lengthens a window, beside a site below the knee. */
export const lengthening: readonly LengtheningRow[] = [
  {
    name: 'diabetes',
    synonyms: [
      'diabetic',
      'diabetes mellitus',
      'type 1 diabetes',
      'type 2 diabetes',
      'T1DM',
      'T2DM',
      'DM',
      'IDDM',
      'NIDDM',
      'diabetes type 2',
      'diabetes type 1',
      'DM2',
      'DM1',
      'DM II',
      'DMII',
      'T2D',
      'T1D',
      'DM type 2',
      'DM type 1',
      'type II diabetes',
      'insulin-dependent diabetes',
      'DM 2',
      'type 2 DM',
      'type 1 DM',
      'diabetes mellitus type 2',
      'diabetes mellitus type 1',
      'type II DM',
      'LADA',
      'sugar diabetes',
      'uncontrolled diabetes',
      'poorly controlled diabetes',
      'brittle diabetes',
      'diabetics',
    ],
    source: 'suture-handbook',
    mark: 'Q',
  },
  {
    name: 'steroids',
    synonyms: [
      'steroid',
      'corticosteroid',
      'corticosteroids',
      'prednisone',
      'prednisolone',
      'methylprednisolone',
      'dexamethasone',
      'oral steroids',
      'chronic steroids',
      'chronic prednisone',
      'steroid use',
      'oral prednisone',
      'systemic steroids',
      'chronic steroid use',
      'hydrocortisone tablets',
      'systemic corticosteroids',
      'long-term steroids',
      'deflazacort',
    ],
    source: 'suture-handbook',
    mark: 'Q',
  },
  {
    name: 'vascular disease',
    synonyms: [
      'peripheral vascular disease',
      'peripheral arterial disease',
      'peripheral artery disease',
      'venous insufficiency',
      'chronic venous insufficiency',
      'PAD',
      'PVD',
      'PAOD',
      'CLI',
      'CLTI',
      'arterial insufficiency',
      'CVI',
      'venous stasis',
      'chronic venous stasis',
      'venous disease',
      'venous stasis disease',
      'PVD/PAD',
      'peripheral venous disease',
      'venous ulcer',
      'chronic venous disease',
    ],
    source: 'clinical-handbook',
    mark: 'Q',
  },
  {
    name: 'malnutrition',
    synonyms: ['malnourished', 'low albumin', 'cachexia', 'cachectic', 'underweight', 'protein malnutrition'],
    source: 'clinical-handbook',
    mark: 'Q',
  },
  {
    name: 'old age',
    synonyms: ['elderly', 'frail', 'frailty'],
    fromYears: 80,
    source: 'suture-handbook',
    mark: 'M',
  },
];

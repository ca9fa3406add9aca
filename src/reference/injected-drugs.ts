import { marked, meaning } from './marked.ts';
import type { Sourced, WordRow } from './types.ts';

/** How much of a drug one session, or one square centimeter, may get. */
export interface InjectedLimit extends Sourced {
  readonly per: 'session' | 'cm2';
  readonly mg: number;
  /** The month in which it was read. */
  readonly asOf: string;
}

/** A drug that is injected into a lesion and is no anesthetic. */
export interface InjectedDrugRow extends WordRow, Sourced {
  /** What in it a patient may be allergic to, by its name in the table of allergens. */
  readonly contains: readonly string[];
  /** What is published for adults, one for each measure; empty where nothing is known here. */
  readonly limits: readonly InjectedLimit[];
}

type Line = readonly [name: string, synonyms: readonly string[]];

const steroids: readonly Line[] = [
  ['betamethasone', ['betamethasone sodium phosphate', 'betamethasone acetate']],
  ['dexamethasone', ['dexamethasone sodium phosphate']],
  ['methylprednisolone', ['methylprednisolone acetate']],
  ['hydrocortisone', ['hydrocortisone acetate']],
];

const others: readonly Line[] = [
  ['fluorouracil', ['5-fluorouracil', '5-FU', '5FU']],
  ['bleomycin', ['bleomycin sulfate']],
  ['methotrexate', ['MTX']],
  ['candida antigen', ['candida', 'candida albicans antigen', 'candida skin test antigen']],
  ['hyaluronidase', ['hyaluronidase injection']],
  ['verapamil', ['verapamil hydrochloride']],
  ['interferon', ['interferon alfa', 'interferon alfa-2b']],
  ['botulinum toxin', ['onabotulinumtoxinA', 'botulinum toxin type A']],
  ['polidocanol', ['lauromacrogol']],
  ['sodium tetradecyl sulfate', ['STS', 'tetradecyl sulfate']],
  ['collagenase', ['collagenase clostridium histolyticum']],
  ['hyaluronic acid', ['hyaluronic acid filler', 'HA filler']],
];

/**
 * Drugs that are injected into lesions. Limits are known for triamcinolone alone; the sources differ, and the stricter
 * one of a session is followed. Its label asks for sites a centimeter apart, which no note says.
 */
export const injectedDrugs = marked<InjectedDrugRow>(meaning, [
  {
    name: 'triamcinolone',
    synonyms: [
      'triamcinolone acetonide',
      'TAC',
      'ILK',
      'ILTAC',
      'triamcinolone diacetate',
      'IL triamcinolone',
    ],
    contains: ['triamcinolone'],
    limits: [
      { per: 'session', mg: 40, asOf: '2026-11', source: 'triamcinolone-session', mark: 'Q2' },
      { per: 'cm2', mg: 20, asOf: '2026-12', source: 'keloid-trials-2023', mark: 'Q' },
    ],
    source: 'us-label-triamcinolone',
    mark: 'Q',
  },
  ...steroids.map(([name, synonyms]) => ({ name, synonyms, contains: ['corticosteroid'], limits: [] })),
  ...others.map(([name, synonyms]) => ({ name, synonyms, contains: [], limits: [] })),
]);

import type { Sourced } from './types.ts';

/** For whom a limit holds. Ages in months and weights in kg, the upper bound not included. */
export interface Population {
  readonly text: string;
  readonly fromMonths?: number;
  readonly belowMonths?: number;
  readonly fromKg?: number;
  /** A weight that itself is not enough, as where a label says "more than". */
  readonly aboveKg?: number;
  readonly belowKg?: number;
}

/** One published limit: of one authority, for one agent, with or without epinephrine, for one population. */
export interface LimitRow extends Sourced {
  readonly agent: string;
  readonly epinephrine: boolean;
  readonly authority: string;
  readonly population: Population;
  readonly mgPerKg?: number;
  readonly capMg?: number;
  /** Where the mg/kg is from, if the authority's own text has only a cap. */
  readonly mgPerKgFrom?: string;
  /** How the source prints it, where that is a range. */
  readonly printed?: string;
  /** Other authorities whose ceiling this is, since their text has only an example here. */
  readonly ceilingFor?: readonly string[];
  /** Set where the authority gives no limit but advises against the use. */
  readonly notRecommended?: true;
  /** A limit of the practice: a stricter one joins the ceiling, an approved one takes its place. */
  readonly practice?: 'stricter' | 'approved';
  /** Date of the stored copy or edition that was read, YYYY or YYYY-MM-DD. */
  readonly asOf: string;
}

type Origin = Pick<LimitRow, 'authority' | 'source' | 'mark' | 'asOf'>;
type Value = Omit<LimitRow, 'agent' | 'epinephrine' | keyof Origin>;

const anyAge: Population = { text: 'any age' };
const adults: Population = { text: 'adults', fromMonths: 216 };
const from12: Population = { text: '12 years and over', fromMonths: 144 };
const from12To17: Population = { text: '12 to 17 years', fromMonths: 144, belowMonths: 216 };
const under12: Population = { text: 'under 12 years', belowMonths: 144 };
const childInAnyCase: Population = { text: 'under 12 years, in any case', belowMonths: 144 };
const under18: Population = { text: 'under 18 years', belowMonths: 216 };

const plain = (agent: string, value: Value, origin: Origin): LimitRow => ({
  agent,
  epinephrine: false,
  ...value,
  ...origin,
});
const withEpinephrine = (agent: string, value: Value, origin: Origin): LimitRow => ({
  agent,
  epinephrine: true,
  ...value,
  ...origin,
});

const origin = (authority: string, source: string, asOf: string, mark: LimitRow['mark'] = 'Q'): Origin => ({
  authority,
  source,
  mark,
  asOf,
});

const us = (source: string, mark: LimitRow['mark'] = 'Q'): Origin =>
  origin('US prescribing information', source, '2026', mark);
const bnfc = origin('BNF for Children', 'bnfc', '2019');
const bnf = origin('British National Formulary', 'bnf', '2026', 'M');
const smpc = origin('UK and Irish product characteristics', 'uk-smpc-lidocaine', '2026');
const australia = origin('Therapeutic Guidelines (Australia)', 'australia-toxicology', '2026');
const aad = origin('AAD guideline 2016', 'aad-2016', '2016', 'Q2');
const aap = origin('AAP/AAPD guideline 2019', 'aap-2019', '2019', 'Q2');
const poisoning = origin('Poisoning & Drug Overdose', 'poisoning-drug-overdose', '2026');
const wikem = origin('WikEM', 'wikem-local-anesthetics', '2026');
const medscape = origin('Medscape table', 'medscape-local-anesthetics', '2019');
const canada = origin('Canadian dental table', 'canada-dental', '2026');
const pearls = origin('Emergency Medicine Educational Pearls', 'em-pearls', '2023');
const revision = origin('UK revision page', 'uk-revision-page', '2026');
const hongKong = origin('Hong Kong label', 'hk-label-bupivacaine', '2026');

const ukLevobupivacaine = origin('UK medicines reference', 'uk-reference-levobupivacaine', '2026-11-30');

/**
 * Limits for the use in skin; maxima for dental blocks are left out where one for infiltration is known. A printed
 * range counts by its upper end in a guideline, so that what it allows is not warned of, and by the end that
 * `mgPerKg` or `capMg` names elsewhere.
 */
export const limits: readonly LimitRow[] = [
  // Lidocaine. For children the US label names an example only, and the adult's limits as what is never passed.
  plain('lidocaine', { population: from12, mgPerKg: 4.5, capMg: 300 }, us('us-label-lidocaine')),
  withEpinephrine('lidocaine', { population: from12, mgPerKg: 7, capMg: 500 }, us('us-label-lidocaine')),
  plain(
    'lidocaine',
    { population: childInAnyCase, mgPerKg: 4.5, capMg: 300 },
    us('us-label-lidocaine-topical'),
  ),
  withEpinephrine(
    'lidocaine',
    { population: childInAnyCase, mgPerKg: 7, capMg: 500 },
    us('us-label-lidocaine-topical'),
  ),
  plain(
    'lidocaine',
    {
      population: under12,
      mgPerKg: 3,
      ceilingFor: ['US prescribing information', 'UK and Irish product characteristics'],
    },
    bnfc,
  ),
  plain('lidocaine', { population: from12, mgPerKg: 4.5, capMg: 200 }, smpc),
  plain(
    'lidocaine',
    { population: from12, mgPerKg: 5, capMg: 200 },
    origin('another UK product', 'uk-smpc-lidocaine-5', '2026'),
  ),
  plain('lidocaine', { population: from12, mgPerKg: 3, capMg: 200 }, bnf),
  withEpinephrine('lidocaine', { population: from12, mgPerKg: 7, capMg: 500 }, bnf),
  plain(
    'lidocaine',
    { population: adults, capMg: 200 },
    origin('an export label', 'export-label-lidocaine', '2026'),
  ),
  withEpinephrine(
    'lidocaine',
    { population: adults, capMg: 500 },
    origin('an export label', 'export-label-lidocaine', '2026'),
  ),
  plain(
    'lidocaine',
    { population: adults, mgPerKg: 3 },
    origin('Singapore label', 'sg-label-lidocaine', '2026'),
  ),
  plain('lidocaine', { population: adults, mgPerKg: 3 }, australia),
  withEpinephrine('lidocaine', { population: adults, mgPerKg: 7 }, australia),
  plain('lidocaine', { population: adults, mgPerKg: 4.5 }, aad),
  withEpinephrine('lidocaine', { population: adults, mgPerKg: 7 }, aad),
  plain('lidocaine', { population: under12, mgPerKg: 2, printed: '1.5 to 2.0 mg/kg' }, aad),
  withEpinephrine('lidocaine', { population: under12, mgPerKg: 4.5, printed: '3.0 to 4.5 mg/kg' }, aad),
  plain('lidocaine', { population: under18, mgPerKg: 4.4 }, aap),
  withEpinephrine('lidocaine', { population: under18, mgPerKg: 7 }, aap),
  plain('lidocaine', { population: adults, mgPerKg: 5, capMg: 300 }, wikem),
  withEpinephrine('lidocaine', { population: adults, mgPerKg: 7, capMg: 500 }, wikem),
  withEpinephrine('lidocaine', { population: anyAge, mgPerKg: 7, capMg: 500 }, canada),
  plain(
    'lidocaine',
    { population: adults, mgPerKg: 4 },
    origin('ABC of Practical Procedures', 'abc-procedures', '2026'),
  ),
  plain('lidocaine', { population: under18, mgPerKg: 4 }, pearls),
  withEpinephrine('lidocaine', { population: under18, mgPerKg: 7 }, pearls),
  plain('lidocaine', { population: adults, mgPerKg: 3 }, revision),
  withEpinephrine('lidocaine', { population: adults, mgPerKg: 6 }, revision),

  // Bupivacaine: the US label has caps only; the mg/kg beside them are those of the reference tables.
  plain(
    'bupivacaine',
    { population: from12, mgPerKg: 2.5, capMg: 175, mgPerKgFrom: 'wikem-local-anesthetics' },
    us('us-label-bupivacaine'),
  ),
  withEpinephrine(
    'bupivacaine',
    { population: from12, mgPerKg: 3, capMg: 225, mgPerKgFrom: 'wikem-local-anesthetics' },
    us('us-label-bupivacaine'),
  ),
  // The current label is for adults; what older ones gave from 12 years on stays the ceiling, and is advised against.
  plain('bupivacaine', { population: from12To17, notRecommended: true }, us('us-label-bupivacaine-adults')),
  withEpinephrine(
    'bupivacaine',
    { population: from12To17, notRecommended: true },
    us('us-label-bupivacaine-adults'),
  ),
  plain(
    'bupivacaine',
    { population: under12, notRecommended: true },
    us('us-label-bupivacaine-children', 'Q2'),
  ),
  withEpinephrine(
    'bupivacaine',
    { population: under12, notRecommended: true },
    us('us-label-bupivacaine-children', 'Q2'),
  ),
  plain(
    'bupivacaine',
    { population: { text: '1 to 12 years', fromMonths: 12, belowMonths: 144 }, mgPerKg: 2 },
    hongKong,
  ),
  plain('bupivacaine', { population: adults, mgPerKg: 2 }, australia),
  withEpinephrine('bupivacaine', { population: adults, mgPerKg: 2 }, australia),
  plain('bupivacaine', { population: adults, mgPerKg: 2, capMg: 175 }, poisoning),
  withEpinephrine('bupivacaine', { population: adults, mgPerKg: 3, capMg: 225 }, poisoning),
  plain('bupivacaine', { population: adults, mgPerKg: 2.5, capMg: 175 }, wikem),
  withEpinephrine('bupivacaine', { population: adults, mgPerKg: 3, capMg: 225 }, wikem),
  plain('bupivacaine', { population: adults, mgPerKg: 2.5, capMg: 175 }, medscape),
  withEpinephrine('bupivacaine', { population: adults, capMg: 225 }, medscape),
  plain('bupivacaine', { population: under18, mgPerKg: 2.5, printed: '1.3 to 2.5 mg/kg' }, aap),
  withEpinephrine('bupivacaine', { population: under18, mgPerKg: 3 }, aap),
  plain(
    'bupivacaine',
    { population: { text: '1 to 17 years', fromMonths: 12, belowMonths: 216 }, mgPerKg: 2 },
    pearls,
  ),
  withEpinephrine('bupivacaine', { population: under18, mgPerKg: 3 }, pearls),
  plain(
    'bupivacaine',
    { population: adults, mgPerKg: 2 },
    origin('ABC of Practical Procedures', 'abc-procedures', '2026'),
  ),
  plain('bupivacaine', { population: adults, mgPerKg: 2 }, revision),
  withEpinephrine('bupivacaine', { population: adults, mgPerKg: 2 }, revision),

  // Levobupivacaine
  plain('levobupivacaine', { population: adults, mgPerKg: 2, capMg: 200 }, poisoning),
  withEpinephrine('levobupivacaine', { population: adults, mgPerKg: 3, capMg: 225 }, poisoning),
  plain('levobupivacaine', { population: adults, capMg: 150 }, ukLevobupivacaine),
  withEpinephrine(
    'levobupivacaine',
    { population: adults, capMg: 150, printed: '150 mg as a single dose; none apart with epinephrine' },
    ukLevobupivacaine,
  ),

  // Mepivacaine: the US label has a cap for adults.
  plain(
    'mepivacaine',
    { population: from12, mgPerKg: 7, capMg: 400, mgPerKgFrom: 'wikem-local-anesthetics' },
    us('us-label-mepivacaine'),
  ),
  plain(
    'mepivacaine',
    { population: under12, mgPerKg: 6, capMg: 400, printed: '5 to 6 mg/kg' },
    us('us-label-mepivacaine-children', 'Q2'),
  ),
  plain(
    'mepivacaine',
    { population: adults, mgPerKg: 6 },
    origin('UK medicines reference', 'uk-reference-mepivacaine', '2026'),
  ),
  plain(
    'mepivacaine',
    { population: { text: '4 to 11 years', fromMonths: 48, belowMonths: 144 }, mgPerKg: 3 },
    origin('UK medicines reference', 'uk-reference-mepivacaine', '2026'),
  ),
  // Under 4 years the UK texts rule it out and no other gives a dose, so that nothing is in order.
  plain(
    'mepivacaine',
    { population: adults, mgPerKg: 4.4, capMg: 300 },
    origin('another UK product', 'uk-smpc-mepivacaine', '2026-11-30'),
  ),
  plain('mepivacaine', { population: adults, mgPerKg: 7, printed: '5 to 7 mg/kg' }, australia),
  withEpinephrine('mepivacaine', { population: adults, mgPerKg: 6.6 }, australia),
  plain('mepivacaine', { population: adults, mgPerKg: 4.5, capMg: 350 }, poisoning),
  withEpinephrine('mepivacaine', { population: adults, mgPerKg: 7, capMg: 500 }, poisoning),
  plain('mepivacaine', { population: adults, mgPerKg: 7 }, wikem),
  withEpinephrine('mepivacaine', { population: adults, mgPerKg: 8 }, wikem),
  plain('mepivacaine', { population: adults, mgPerKg: 7, capMg: 400 }, medscape),
  plain('mepivacaine', { population: under18, mgPerKg: 5, printed: '4.4 to 5.0 mg/kg' }, aap),
  withEpinephrine('mepivacaine', { population: under18, mgPerKg: 7 }, aap),
  // Made for dentistry; for children the label divides the weight in lb by 150 and takes that share of 400 mg.
  plain(
    'mepivacaine with levonordefrin',
    { population: adults, mgPerKg: 6.6, capMg: 400, printed: '3 mg/lb, not above 400 mg' },
    us('us-label-mepivacaine-levonordefrin'),
  ),
  plain(
    'mepivacaine with levonordefrin',
    {
      population: under18,
      mgPerKg: 5.8,
      capMg: 180,
      printed: 'weight in lb / 150 of 400 mg, not above 180 mg',
    },
    us('us-label-mepivacaine-levonordefrin'),
  ),

  // Ropivacaine
  plain('ropivacaine', { population: adults, mgPerKg: 3, capMg: 200 }, poisoning),
  plain('ropivacaine', { population: adults, mgPerKg: 3 }, wikem),
  plain('ropivacaine', { population: adults, mgPerKg: 3 }, australia),
  withEpinephrine('ropivacaine', { population: adults, mgPerKg: 3 }, australia),
  plain(
    'ropivacaine',
    { population: adults, capMg: 300 },
    origin('Swedish anesthesia guide', 'swedish-anesthesia', '2026'),
  ),
  plain('ropivacaine', { population: under18, mgPerKg: 2 }, aap),
  withEpinephrine('ropivacaine', { population: under18, mgPerKg: 3 }, aap),

  // Prilocaine
  plain('prilocaine', { population: adults, mgPerKg: 6, capMg: 400 }, poisoning),
  withEpinephrine('prilocaine', { population: adults, mgPerKg: 8, capMg: 600 }, poisoning),
  plain('prilocaine', { population: adults, mgPerKg: 6 }, wikem),
  plain('prilocaine', { population: adults, mgPerKg: 6 }, australia),
  plain(
    'prilocaine',
    { population: { text: 'adults under 70 kg', fromMonths: 216, belowKg: 70 }, mgPerKg: 8, capMg: 500 },
    medscape,
  ),
  plain(
    'prilocaine',
    { population: { text: 'adults from 70 kg', fromMonths: 216, fromKg: 70 }, capMg: 600 },
    medscape,
  ),
  plain('prilocaine', { population: anyAge, mgPerKg: 8, capMg: 500 }, canada),
  withEpinephrine('prilocaine', { population: anyAge, mgPerKg: 8, capMg: 500 }, canada),

  // Articaine is made with epinephrine; the US label has no cap.
  withEpinephrine(
    'articaine',
    { population: { text: '4 years and over', fromMonths: 48 }, mgPerKg: 7 },
    us('us-label-articaine'),
  ),
  withEpinephrine(
    'articaine',
    { population: { text: '4 years and over', fromMonths: 48 }, mgPerKg: 7, capMg: 500 },
    canada,
  ),

  // Chloroprocaine
  plain('chloroprocaine', { population: adults, mgPerKg: 11, capMg: 800 }, us('us-label-chloroprocaine')),
  withEpinephrine(
    'chloroprocaine',
    { population: adults, mgPerKg: 14, capMg: 1000 },
    us('us-label-chloroprocaine'),
  ),
  plain('chloroprocaine', { population: adults, mgPerKg: 10, capMg: 800 }, poisoning),
  withEpinephrine('chloroprocaine', { population: adults, mgPerKg: 12, capMg: 1000 }, poisoning),

  // Procaine
  plain(
    'procaine',
    { population: adults, mgPerKg: 7, capMg: 350, printed: '7 mg/kg, not above 350 to 600 mg' },
    medscape,
  ),
  plain('procaine', { population: adults, mgPerKg: 7 }, wikem),
  withEpinephrine('procaine', { population: adults, mgPerKg: 10 }, wikem),
  plain('procaine', { population: adults, mgPerKg: 10, capMg: 600 }, poisoning),
  plain(
    'procaine',
    { population: adults, mgPerKg: 10, capMg: 1000, printed: '7 to 10 mg/kg, not above 1000 mg' },
    origin('examination table', 'mcq-site-table', '2026'),
  ),
];

/** In the first months of life the clearance of amides is low: a guideline takes 30% off. */
export const infantReduction = {
  class: 'amide',
  belowMonths: 6,
  factor: 0.7,
  authority: 'AAP/AAPD guideline 2019',
  source: 'aap-2019',
  mark: 'Q2',
  asOf: '2019',
} as const;

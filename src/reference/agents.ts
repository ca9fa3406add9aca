import type { Sourced, WordRow } from './types.ts';

/** A preservative, and in which forms of the product it is. */
export interface PreservativeFact extends Sourced {
  readonly name: string;
  readonly forms: string;
  /** Whether every form holds it, so that no preservative-free one is made. */
  readonly always: boolean;
}

/**
 * How it is given, which says what a record of it needs: an injection its strength and volume, a cream its amount,
 * other fluids their volume, a spray nothing more.
 */
export type AgentForm = 'injected' | 'cream' | 'spray' | 'other';

export interface AgentRow extends WordRow, Sourced {
  readonly class: 'amide' | 'ester' | 'none';
  readonly form: AgentForm;
  /** Anesthetics inside, where the name is that of a product. */
  readonly contains: readonly string[];
  /** Strengths that are made, in mg/mL, of a cream in mg/g; empty where none is known. Source and mark of the row are theirs. */
  readonly strengths: readonly number[];
  /** Whether a limit in mg, or in g of a cream, is looked for. */
  readonly limited: boolean;
  readonly preservatives: readonly PreservativeFact[];
  /** Where it says that the solution with epinephrine holds a sulfite; undefined where no such solution is made. */
  readonly sulfiteWithEpinephrine?: Sourced;
  /** Where it says that bicarbonate makes it precipitate. */
  readonly precipitates?: Sourced;
}

const multidose = (source: string, mark: Sourced['mark'] = 'Q'): PreservativeFact => ({
  name: 'methylparaben',
  forms: 'multiple-dose vials',
  always: false,
  source,
  mark,
});

const sulfite: Sourced = { source: 'us-label-potassium-metabisulfite', mark: 'Q' };

const injected = { form: 'injected', contains: [], limited: true } as const;

const lidocaineCream = {
  class: 'amide',
  form: 'cream',
  contains: ['lidocaine'],
  limited: true,
  preservatives: [],
  source: 'lidocaine-cream-from-memory',
  mark: 'M',
} as const;

export const agents: readonly AgentRow[] = [
  {
    ...injected,
    name: 'lidocaine',
    synonyms: ['lignocaine', 'lido', 'lidocaine hydrochloride', 'lidocaine HCl', 'lignocaine hydrochloride'],
    class: 'amide',
    strengths: [5, 10, 15, 20],
    preservatives: [multidose('us-label-multidose-lidocaine')],
    sulfiteWithEpinephrine: sulfite,
    source: 'us-label-lidocaine-epinephrine',
    mark: 'Q',
  },
  {
    ...injected,
    name: 'mepivacaine',
    synonyms: ['mepivacaine hydrochloride', 'mepivacaine HCl'],
    class: 'amide',
    strengths: [10, 15, 20, 30],
    preservatives: [multidose('handbook-mepivacaine')],
    source: 'us-label-mepivacaine',
    mark: 'Q',
  },
  {
    ...injected,
    name: 'bupivacaine',
    synonyms: ['bupivacaine hydrochloride', 'bupivacaine HCl', 'bupi'],
    class: 'amide',
    strengths: [2.5, 5, 7.5],
    preservatives: [multidose('us-label-bupivacaine-strengths', 'Q2')],
    sulfiteWithEpinephrine: sulfite,
    precipitates: { source: 'dermatologic-surgery-text', mark: 'Q' },
    source: 'us-label-bupivacaine-strengths',
    mark: 'Q',
  },
  {
    ...injected,
    name: 'ropivacaine',
    synonyms: ['ropivacaine hydrochloride', 'ropivacaine HCl', 'ropi'],
    class: 'amide',
    strengths: [2, 5, 7.5, 10],
    preservatives: [],
    source: 'poisoning-drug-overdose',
    mark: 'Q2',
  },
  {
    ...injected,
    name: 'levobupivacaine',
    synonyms: ['levobupivacaine hydrochloride', 'levobupivacaine HCl'],
    class: 'amide',
    strengths: [2.5, 5, 7.5],
    preservatives: [],
    source: 'common',
    mark: 'M',
  },
  {
    ...injected,
    name: 'prilocaine',
    synonyms: ['prilocaine hydrochloride', 'prilocaine HCl'],
    class: 'amide',
    strengths: [40],
    preservatives: [],
    sulfiteWithEpinephrine: sulfite,
    source: 'canada-dental',
    mark: 'Q2',
  },
  {
    ...injected,
    name: 'articaine',
    synonyms: ['articaine hydrochloride', 'articaine HCl', 'carticaine'],
    class: 'amide',
    strengths: [40],
    preservatives: [],
    sulfiteWithEpinephrine: { source: 'us-label-articaine', mark: 'Q' },
    source: 'us-label-articaine',
    mark: 'Q',
  },
  {
    ...injected,
    name: 'chloroprocaine',
    synonyms: ['chloroprocaine hydrochloride', 'chloroprocaine HCl', '2-chloroprocaine'],
    class: 'ester',
    strengths: [10, 20, 30],
    preservatives: [multidose('us-label-chloroprocaine')],
    source: 'us-label-chloroprocaine',
    mark: 'Q',
  },
  {
    ...injected,
    name: 'procaine',
    synonyms: ['procaine hydrochloride', 'procaine HCl'],
    class: 'ester',
    strengths: [10, 20],
    preservatives: [],
    source: 'common',
    mark: 'M',
  },
  {
    name: 'tetracaine',
    synonyms: ['amethocaine', 'tetracaine gel', 'tetracaine cream', 'topical tetracaine', 'amethocaine gel'],
    class: 'ester',
    form: 'cream',
    contains: [],
    strengths: [],
    limited: true,
    preservatives: [],
    source: 'common',
    mark: 'M',
  },
  {
    name: 'lidocaine-prilocaine cream',
    synonyms: [
      'lidocaine-prilocaine',
      'lidocaine/prilocaine',
      'lidocaine/prilocaine cream',
      'lidocaine and prilocaine cream',
      'lidocaine 2.5% and prilocaine 2.5% cream',
      'lidocaine 2.5%/prilocaine 2.5% cream',
      'prilocaine-lidocaine cream',
      'lignocaine-prilocaine cream',
    ],
    class: 'amide',
    form: 'cream',
    contains: ['lidocaine', 'prilocaine'],
    strengths: [25],
    limited: true,
    preservatives: [],
    source: 'us-label-lidocaine-prilocaine',
    mark: 'Q',
  },
  {
    ...lidocaineCream,
    name: 'lidocaine cream 4%',
    synonyms: ['lidocaine 4% cream', '4% lidocaine cream', 'lignocaine 4% cream', 'liposomal lidocaine 4%'],
    strengths: [40],
  },
  {
    ...lidocaineCream,
    name: 'lidocaine cream 5%',
    synonyms: [
      'lidocaine 5% cream',
      '5% lidocaine cream',
      'lignocaine 5% cream',
      'lidocaine ointment 5%',
      'lidocaine 5% ointment',
    ],
    strengths: [50],
  },
  {
    ...lidocaineCream,
    name: 'lidocaine cream',
    synonyms: ['topical lidocaine', 'lignocaine cream', 'lidocaine ointment', 'lidocaine gel'],
    strengths: [40, 50],
  },
  {
    ...injected,
    name: 'diphenhydramine',
    synonyms: ['diphenhydramine 1%', 'diphenhydramine hydrochloride', 'diphenhydramine HCl'],
    class: 'none',
    strengths: [10],
    limited: false,
    preservatives: [],
    source: 'wikem-local-anesthetics',
    mark: 'Q',
  },
  {
    name: 'bacteriostatic saline',
    synonyms: [
      'bacteriostatic sodium chloride',
      'bacteriostatic normal saline',
      'bacteriostatic 0.9% sodium chloride',
      'saline with benzyl alcohol',
    ],
    class: 'none',
    form: 'other',
    contains: [],
    strengths: [],
    limited: false,
    preservatives: [{ name: 'benzyl alcohol', forms: 'all', always: true, source: 'aad-2016', mark: 'Q2' }],
    source: 'aad-2016',
    mark: 'Q2',
  },
  {
    name: 'vapocoolant spray',
    synonyms: ['vapocoolant', 'cold spray', 'ethyl chloride', 'ethyl chloride spray'],
    class: 'none',
    form: 'spray',
    contains: [],
    strengths: [],
    limited: false,
    preservatives: [],
    source: 'common',
    mark: 'M',
  },
];

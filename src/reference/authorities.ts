import type { WordRow } from './types.ts';

/** Who publishes dose limits. */
export interface AuthorityRow extends WordRow {
  readonly country: 'US' | 'UK' | 'Australia' | 'Canada' | 'other';
  /**
   * What it may be used for. A label, formulary or reference table can be a ceiling; a guideline is the advisory of
   * its country; teaching is shown beside them and never judges.
   */
  readonly kind: 'label' | 'formulary' | 'table' | 'guideline' | 'teaching';
  /** Whether a practice can take it as its ceiling. */
  readonly choosable: boolean;
}

const beside = { synonyms: [], choosable: false } as const;

/** Whose dose limits are known. */
export const authorities: readonly AuthorityRow[] = [
  {
    name: 'US prescribing information',
    synonyms: ['US', 'US label', 'FDA', 'FDA label'],
    country: 'US',
    kind: 'label',
    choosable: true,
  },
  {
    name: 'UK and Irish product characteristics',
    synonyms: ['UK', 'UK SmPC', 'SmPC', 'HPRA', 'UK label', 'Ireland'],
    country: 'UK',
    kind: 'label',
    choosable: true,
  },
  {
    name: 'Therapeutic Guidelines (Australia)',
    synonyms: ['Australia', 'Therapeutic Guidelines', 'eTG'],
    country: 'Australia',
    kind: 'formulary',
    choosable: true,
  },
  { name: 'BNF for Children', synonyms: ['BNFC'], country: 'UK', kind: 'formulary', choosable: false },
  {
    name: 'British National Formulary',
    synonyms: ['BNF'],
    country: 'UK',
    kind: 'guideline',
    choosable: false,
  },
  { name: 'AAD guideline 2016', synonyms: ['AAD 2016'], country: 'US', kind: 'guideline', choosable: false },
  {
    name: 'AAP/AAPD guideline 2019',
    synonyms: ['AAP 2019', 'AAPD 2019'],
    country: 'US',
    kind: 'guideline',
    choosable: false,
  },
  { ...beside, name: 'another UK product', country: 'UK', kind: 'label' },
  { ...beside, name: 'UK medicines reference', country: 'UK', kind: 'table' },
  { ...beside, name: 'Singapore label', country: 'other', kind: 'label' },
  { ...beside, name: 'Hong Kong label', country: 'other', kind: 'label' },
  { ...beside, name: 'an export label', country: 'other', kind: 'label' },
  { ...beside, name: 'Canadian dental table', country: 'Canada', kind: 'table' },
  { ...beside, name: 'Poisoning & Drug Overdose', country: 'US', kind: 'table' },
  { ...beside, name: 'WikEM', country: 'US', kind: 'table' },
  { ...beside, name: 'Medscape table', country: 'US', kind: 'table' },
  { ...beside, name: 'Swedish anesthesia guide', country: 'other', kind: 'table' },
  { ...beside, name: 'ABC of Practical Procedures', country: 'UK', kind: 'teaching' },
  { ...beside, name: 'Emergency Medicine Educational Pearls', country: 'US', kind: 'teaching' },
  { ...beside, name: 'UK revision page', country: 'UK', kind: 'teaching' },
  { ...beside, name: 'examination table', country: 'other', kind: 'teaching' },
];

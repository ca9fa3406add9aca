import type { Population } from './limits.ts';
import type { Sourced } from './types.ts';

/** How much of an anesthetic cream, on how much skin and for how long. */
export interface CreamRow extends Sourced {
  readonly agent: string;
  readonly population: Population;
  readonly maxGrams?: number;
  readonly maxCm2?: number;
  /** Where the area is from, if not from the source of the row. */
  readonly maxCm2From?: Sourced;
  /** Of the anesthetic in it, for each kg of the patient. */
  readonly maxMgPerKg?: number;
  readonly maxMinutes?: number;
  /** A maximum of the label, or only the most that was studied. */
  readonly kind: 'maximum' | 'studied';
  readonly asOf: string;
}

const pair = {
  agent: 'lidocaine-prilocaine cream',
  kind: 'maximum',
  source: 'us-label-lidocaine-prilocaine',
  mark: 'Q2',
  asOf: '2026',
} as const;
const lidocaine4 = {
  agent: 'lidocaine cream 4%',
  kind: 'maximum',
  source: 'uk-reference-lidocaine-cream',
  mark: 'Q',
  asOf: '2026-11-30',
} as const;
/** Of the US label, up to 20 kg. */
const smallArea = { maxCm2: 100, maxCm2From: { source: 'us-lidocaine-cream-area', mark: 'Q2' } } as const;
const tetracaineGel = {
  agent: 'tetracaine',
  kind: 'maximum',
  source: 'uk-smpc-tetracaine-gel',
  mark: 'Q',
  asOf: '2018',
} as const;
/** What is put on at a visit counts as one application. */
const ointment5 = {
  agent: 'lidocaine ointment 5%',
  kind: 'maximum',
  maxGrams: 5,
  source: 'us-label-lidocaine-ointment',
  mark: 'Q',
  asOf: '2026-11-30',
} as const;

/**
 * From the least to the most. A patient has the last row whose age and weight are both reached: who is old enough
 * and too light stays in the row of the weight.
 */
export const creams: readonly CreamRow[] = [
  {
    ...pair,
    population: { text: 'under 3 months, or not above 5 kg', belowMonths: 216 },
    maxGrams: 1,
    maxCm2: 10,
    maxMinutes: 60,
  },
  {
    ...pair,
    population: { text: '3 months and over, above 5 kg', fromMonths: 3, belowMonths: 216, aboveKg: 5 },
    maxGrams: 2,
    maxCm2: 20,
    maxMinutes: 240,
  },
  {
    ...pair,
    population: { text: '1 year and over, above 10 kg', fromMonths: 12, belowMonths: 216, aboveKg: 10 },
    maxGrams: 10,
    maxCm2: 100,
    maxMinutes: 240,
  },
  {
    ...pair,
    population: { text: '7 years and over, above 20 kg', fromMonths: 84, belowMonths: 216, aboveKg: 20 },
    maxGrams: 20,
    maxCm2: 200,
    maxMinutes: 240,
  },
  {
    ...pair,
    kind: 'studied',
    population: { text: 'adults', fromMonths: 216 },
    maxGrams: 60,
    maxCm2: 400,
    source: 'us-label-lidocaine-prilocaine-studies',
    mark: 'Q',
  },
  {
    ...lidocaine4,
    ...smallArea,
    population: { text: 'under 3 months', belowMonths: 3 },
    maxGrams: 1,
    maxMinutes: 60,
  },
  {
    ...lidocaine4,
    ...smallArea,
    population: { text: '3 to 11 months', fromMonths: 3, belowMonths: 12 },
    maxGrams: 1,
    maxMinutes: 240,
  },
  {
    ...lidocaine4,
    ...smallArea,
    population: { text: '1 year and over, up to 20 kg', fromMonths: 12, belowMonths: 216 },
    maxMinutes: 300,
  },
  {
    ...lidocaine4,
    population: { text: '1 year and over, above 20 kg', fromMonths: 12, aboveKg: 20 },
    maxMinutes: 300,
  },
  { ...tetracaineGel, population: { text: 'under 5 years', belowMonths: 60 }, maxGrams: 1 },
  { ...tetracaineGel, population: { text: '5 years and over', fromMonths: 60 }, maxGrams: 5 },
  { ...ointment5, population: { text: 'under 18 years', belowMonths: 216 }, maxMgPerKg: 4.5 },
  { ...ointment5, population: { text: 'adults', fromMonths: 216 } },
];

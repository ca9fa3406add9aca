import type { Population } from './limits.ts';
import type { Sourced } from './types.ts';

/** How much of an anesthetic cream, on how much skin and for how long. */
export interface CreamRow extends Sourced {
  readonly agent: string;
  readonly population: Population;
  readonly maxGrams?: number;
  readonly maxCm2?: number;
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
  source: 'lidocaine-cream-from-memory',
  mark: 'M',
  asOf: '2026',
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
    population: { text: 'children under 10 kg', belowMonths: 216 },
    maxCm2: 100,
  },
  {
    ...lidocaine4,
    population: { text: 'children from 10 kg', belowMonths: 216, fromKg: 10 },
    maxCm2: 600,
  },
];

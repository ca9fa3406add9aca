import type { Sourced } from './types.ts';

/** For whom a limit holds. Ages in months, the upper bound not included. */
export interface Population {
  readonly text: string;
  readonly fromMonths?: number;
  readonly belowMonths?: number;
}

/** One published limit: of one authority, for one agent, with or without epinephrine, for one population. */
export interface LimitRow extends Sourced {
  readonly agent: string;
  readonly epinephrine: boolean;
  readonly authority: string;
  readonly population: Population;
  readonly mgPerKg?: number;
  readonly capMg?: number;
  /** Date of the stored copy that was read, YYYY or YYYY-MM-DD. */
  readonly asOf: string;
}

const adults = { text: 'adults' };

export const limits: readonly LimitRow[] = [
  {
    agent: 'lidocaine',
    epinephrine: false,
    authority: 'US prescribing information',
    population: adults,
    mgPerKg: 4.5,
    capMg: 300,
    source: 'us-label-lidocaine',
    mark: 'Q',
    asOf: '2026',
  },
  {
    agent: 'lidocaine',
    epinephrine: true,
    authority: 'US prescribing information',
    population: adults,
    mgPerKg: 7,
    capMg: 500,
    source: 'us-label-lidocaine',
    mark: 'Q',
    asOf: '2026',
  },
];

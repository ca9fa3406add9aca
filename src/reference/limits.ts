import type { LimitRow } from './types.ts';

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

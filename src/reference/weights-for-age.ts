import type { Sourced } from './types.ts';

/** Weights in kg at an age, by the percentiles of a growth table. */
export type Percentiles = readonly [
  third: number,
  quarter: number,
  middle: number,
  threeQuarters: number,
  ninetySeventh: number,
];

/** What boys and girls weigh at an age. */
export interface WeightForAge extends Sourced {
  readonly months: number;
  readonly boys: Percentiles;
  readonly girls: Percentiles;
  readonly asOf: string;
}

const who = { source: 'who-weight-for-age', mark: 'Q', asOf: '2006' } as const;
const cdc = { source: 'cdc-weight-for-age', mark: 'Q', asOf: '2000' } as const;

const at = (
  origin: Sourced & { readonly asOf: string },
  months: number,
  boys: Percentiles,
  girls: Percentiles,
): WeightForAge => ({ months, boys, girls, ...origin });

/** Under 2 years the WHO standards, each month; from then on the CDC charts, each birthday. Rounded to 0.1 kg. */
export const weightsForAge: readonly WeightForAge[] = [
  at(who, 0, [2.5, 3.0, 3.3, 3.7, 4.3], [2.4, 2.9, 3.2, 3.6, 4.2]),
  at(who, 1, [3.4, 4.1, 4.5, 4.9, 5.7], [3.2, 3.8, 4.2, 4.6, 5.4]),
  at(who, 2, [4.4, 5.1, 5.6, 6.1, 7.0], [4.0, 4.7, 5.1, 5.6, 6.5]),
  at(who, 3, [5.1, 5.9, 6.4, 6.9, 7.9], [4.6, 5.4, 5.8, 6.4, 7.4]),
  at(who, 4, [5.6, 6.5, 7.0, 7.6, 8.6], [5.1, 5.9, 6.4, 7.0, 8.1]),
  at(who, 5, [6.1, 7.0, 7.5, 8.1, 9.2], [5.5, 6.3, 6.9, 7.5, 8.7]),
  at(who, 6, [6.4, 7.4, 7.9, 8.5, 9.7], [5.8, 6.7, 7.3, 7.9, 9.2]),
  at(who, 7, [6.7, 7.7, 8.3, 8.9, 10.2], [6.1, 7.0, 7.6, 8.3, 9.6]),
  at(who, 8, [7.0, 8.0, 8.6, 9.3, 10.6], [6.3, 7.3, 8.0, 8.6, 10.0]),
  at(who, 9, [7.2, 8.3, 8.9, 9.6, 10.9], [6.6, 7.6, 8.2, 8.9, 10.4]),
  at(who, 10, [7.5, 8.5, 9.2, 9.9, 11.2], [6.8, 7.8, 8.5, 9.2, 10.7]),
  at(who, 11, [7.7, 8.7, 9.4, 10.1, 11.5], [7.0, 8.0, 8.7, 9.5, 11.0]),
  at(who, 12, [7.8, 9.0, 9.6, 10.4, 11.8], [7.1, 8.2, 8.9, 9.7, 11.3]),
  at(who, 13, [8.0, 9.2, 9.9, 10.6, 12.1], [7.3, 8.4, 9.2, 10.0, 11.6]),
  at(who, 14, [8.2, 9.4, 10.1, 10.9, 12.4], [7.5, 8.6, 9.4, 10.2, 11.9]),
  at(who, 15, [8.4, 9.6, 10.3, 11.1, 12.7], [7.7, 8.8, 9.6, 10.4, 12.2]),
  at(who, 16, [8.5, 9.8, 10.5, 11.3, 12.9], [7.8, 9.0, 9.8, 10.7, 12.5]),
  at(who, 17, [8.7, 10.0, 10.7, 11.6, 13.2], [8.0, 9.2, 10.0, 10.9, 12.7]),
  at(who, 18, [8.9, 10.1, 10.9, 11.8, 13.5], [8.2, 9.4, 10.2, 11.1, 13.0]),
  at(who, 19, [9.0, 10.3, 11.1, 12.0, 13.7], [8.3, 9.6, 10.4, 11.4, 13.3]),
  at(who, 20, [9.2, 10.5, 11.3, 12.2, 14.0], [8.5, 9.8, 10.6, 11.6, 13.5]),
  at(who, 21, [9.3, 10.7, 11.5, 12.5, 14.3], [8.7, 10.0, 10.9, 11.8, 13.8]),
  at(who, 22, [9.5, 10.9, 11.8, 12.7, 14.5], [8.8, 10.2, 11.1, 12.0, 14.1]),
  at(who, 23, [9.7, 11.1, 12.0, 12.9, 14.8], [9.0, 10.4, 11.3, 12.3, 14.3]),
  at(cdc, 24, [10.4, 11.8, 12.7, 13.6, 15.6], [10.0, 11.2, 12.1, 13.0, 15.0]),
  at(cdc, 36, [11.8, 13.4, 14.4, 15.6, 18.0], [11.4, 12.9, 13.9, 15.2, 18.0]),
  at(cdc, 48, [13.3, 15.1, 16.3, 17.7, 21.0], [12.8, 14.6, 15.9, 17.4, 21.3]),
  at(cdc, 60, [14.9, 17.0, 18.5, 20.3, 24.5], [14.3, 16.5, 18.0, 20.0, 24.9]),
  at(cdc, 72, [16.5, 19.0, 20.8, 22.9, 28.3], [16.0, 18.5, 20.3, 22.7, 28.9]),
  at(cdc, 84, [18.3, 21.1, 23.2, 25.8, 32.5], [17.7, 20.7, 22.9, 25.7, 33.4]),
  at(cdc, 96, [20.1, 23.3, 25.8, 28.8, 37.4], [19.5, 23.1, 25.8, 29.2, 38.5]),
  at(cdc, 108, [22.1, 25.8, 28.7, 32.4, 43.1], [21.6, 25.9, 29.1, 33.3, 44.6]),
  at(cdc, 120, [24.2, 28.7, 32.1, 36.6, 49.4], [24.0, 29.2, 33.1, 38.0, 51.4]),
  at(cdc, 132, [26.6, 32.0, 36.1, 41.4, 56.3], [26.8, 32.9, 37.4, 43.2, 58.7]),
  at(cdc, 144, [29.5, 35.9, 40.7, 46.8, 63.3], [30.0, 36.7, 41.8, 48.3, 65.9]),
  at(cdc, 156, [33.0, 40.4, 45.8, 52.7, 70.3], [33.4, 40.6, 46.0, 53.0, 72.4]),
  at(cdc, 168, [37.1, 45.3, 51.2, 58.6, 77.0], [36.7, 43.9, 49.5, 56.8, 77.7]),
  at(cdc, 180, [41.5, 50.2, 56.5, 64.2, 83.2], [39.6, 46.7, 52.1, 59.4, 81.6]),
  at(cdc, 192, [45.8, 54.7, 61.1, 69.0, 89.0], [41.8, 48.6, 53.9, 61.2, 84.4]),
  at(cdc, 204, [49.3, 58.2, 64.7, 72.8, 93.8], [43.3, 50.0, 55.2, 62.3, 86.2]),
  at(cdc, 216, [51.7, 60.7, 67.3, 75.6, 97.2], [44.2, 51.0, 56.2, 63.4, 87.4]),
];

/** Weights that a person of an age can have, in kg, from `fromMonths` on. */
export interface WeightRange extends Sourced {
  readonly fromMonths: number;
  /** Outside of these a weight is asked about: wide, since the very light and the very heavy exist. */
  readonly minKg: number;
  readonly maxKg: number;
  /** From the 3rd percentile to the 97th of either sex; for adults the bounds themselves. */
  readonly usual: Bounds;
  /** From the first quarter to the third of either sex; undefined for adults. */
  readonly middle?: Bounds;
}

export interface Bounds {
  readonly low: number;
  readonly high: number;
}

/** How far outside of the usual a weight is asked about; Wheal's own numbers. */
const below = 0.6;
const above = { child: 1.4, fromMonths: 144, adolescent: 2 };

/** The bounds of an age and of the whole time until the next row. */
function rangeOf(row: WeightForAge, index: number): WeightRange {
  const next = weightsForAge[index + 1] ?? row;
  const both = (from: WeightForAge, percentile: 0 | 1 | 3 | 4): readonly number[] => [
    from.boys[percentile],
    from.girls[percentile],
  ];
  const usual = { low: Math.min(...both(row, 0)), high: Math.max(...both(next, 4)) };
  const middle = { low: Math.min(...both(row, 1)), high: Math.max(...both(next, 3)) };
  const factor = row.months < above.fromMonths ? above.child : above.adolescent;
  const { source, mark } = row;
  return {
    source,
    mark,
    fromMonths: row.months,
    minKg: usual.low * below,
    maxKg: usual.high * factor,
    usual,
    middle,
  };
}

/** Of adults the bounds are Wheal's own numbers. */
const adults: WeightRange = {
  fromMonths: 216,
  minKg: 28,
  maxKg: 250,
  usual: { low: 28, high: 250 },
  source: 'format',
  mark: 'format',
};

/** From the youngest on. */
export const weightRanges: readonly WeightRange[] = [
  ...weightsForAge.filter(({ months }) => months < adults.fromMonths).map(rangeOf),
  adults,
];

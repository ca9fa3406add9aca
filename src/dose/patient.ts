import type { Note } from '../note/generated/types.ts';
import type { IsoDate } from '../note/values/values.ts';
import type { Facts } from '../limits/ceilings.ts';
import type { WeightRange } from '../reference/weights-for-age.ts';
import { isOver } from './arithmetic.ts';

/** Below this weight an adult can't be taken for granted. */
const ageNeededBelowKg = 50;

/** Whether the weight is so low that no limit can be chosen without an age. */
export const needsAge = ({ kg, months }: Facts): boolean =>
  months === undefined && kg !== undefined && isOver(ageNeededBelowKg, kg);

/**
 * Weight and age on a day. The date of birth goes before a typed age; a birth after the day counts as unknown.
 * An age is that at the visit and is taken for later days of the note as it is.
 */
export function factsOn({ patient }: Note, day: IsoDate | undefined): Facts {
  if (patient === undefined) return { kg: undefined, months: undefined };
  const kg = patient.weight?.value?.amount;
  const months = monthsOn(patient.born?.value, day) ?? patient.age?.value?.months;
  return { kg: kg !== undefined && kg > 0 ? kg : undefined, months };
}

function monthsOn(born: IsoDate | undefined, day: IsoDate | undefined): number | undefined {
  if (born === undefined || day === undefined || born > day) return undefined;
  return monthsBetween(born, day);
}

/** Whole months from one date to another. */
export function monthsBetween(from: IsoDate, to: IsoDate): number {
  const part = (date: IsoDate, start: number, end: number): number => Number(date.slice(start, end));
  const years = part(to, 0, 4) - part(from, 0, 4);
  const months = part(to, 5, 7) - part(from, 5, 7);
  return years * 12 + months - (to.slice(8) < from.slice(8) ? 1 : 0);
}

/** Whether a weight is outside of a range; its bounds are within. */
export const isOutside = (kg: number, { minKg, maxKg }: WeightRange): boolean =>
  isOver(minKg, kg) || isOver(kg, maxKg);

/** The range of the age; undefined where the age is not known. */
export const rangeOf = ({ months }: Facts, ranges: readonly WeightRange[]): WeightRange | undefined =>
  months === undefined ? undefined : ranges.findLast(({ fromMonths }) => months >= fromMonths);

/** The range of the age that the weight misses; undefined where it fits, or where one of the two is not known. */
export function missedRange(facts: Facts, ranges: readonly WeightRange[]): WeightRange | undefined {
  const range = rangeOf(facts, ranges);
  return facts.kg !== undefined && range !== undefined && isOutside(facts.kg, range) ? range : undefined;
}

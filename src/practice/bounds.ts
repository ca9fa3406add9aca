import type { Leaf } from '../note/tree/leaf.ts';
import type { Faults } from './faults.ts';

/** From and to which number a setting is believed, and what it is called. */
export interface Bounds {
  readonly low: number;
  readonly high: number;
  readonly what: string;
}

/** Terms of follow-up, in days. None is longer than a year. */
export const termBounds = {
  result: { low: 1, high: 366, what: 'days until a result is overdue' },
  fungalCulture: { low: 1, high: 366, what: 'days until a fungal culture is overdue' },
  mycobacterialCulture: { low: 1, high: 366, what: 'days until a mycobacterial culture is overdue' },
  telling: { low: 0, high: 366, what: 'days until telling a result is overdue' },
  cancer: { low: 0, high: 366, what: 'days until telling a diagnosis that can’t wait is overdue' },
  attempts: { low: 1, high: 20, what: 'tries to reach a patient' },
} satisfies Record<string, Bounds>;

/** What a patient is told to do who bleeds at home. */
export const pressBounds = {
  minutes: { low: 1, high: 60, what: 'minutes of pressure' },
  times: { low: 1, high: 10, what: 'times to press' },
} satisfies Record<string, Bounds>;

/** Days from the procedure on which stitches may come out. */
export const windowBounds: Bounds = { low: 1, high: 120, what: 'days to suture removal' };

/** A number within its bounds; undefined where there is none, or it is out of proportion, which is then a fault. */
export function bounded(
  leaf: Leaf<number> | undefined,
  { low, high, what }: Bounds,
  faults: Faults,
): number | undefined {
  const value = leaf?.value;
  if (leaf === undefined || value === undefined || (value >= low && value <= high)) return value;
  faults.add('out-of-proportion', leaf, { value, what, low, high });
  return undefined;
}

/** Relative room for the last digits of binary arithmetic: exactly the limit is not over it. */
const tolerance = 1e-9;

/** From this share of its limit on a dose is near it. */
export const nearLimit = 0.8;

/** Whether an amount is over its limit. */
export function isOver(amount: number, limit: number): boolean {
  return amount > limit * (1 + tolerance);
}

/** Whether an amount has come up to a bound, or is over it. */
export function isAtLeast(amount: number, bound: number): boolean {
  return amount >= bound * (1 - tolerance);
}

/**
 * The largest multiple of `step` that is not over `amount`. Never rounds up.
 * @param step 1, or 1 divided by a whole number
 */
export function floorTo(amount: number, step: number): number {
  const steps = Math.floor((amount / step) * (1 + tolerance));
  // Dividing by a whole number keeps 27.9 from becoming 27.900000000000002.
  return steps / Math.round(1 / step);
}

/**
 * The smallest multiple of `step` that is not below `amount`. Never rounds down.
 * @param step 1, or 1 divided by a whole number
 */
export function ceilTo(amount: number, step: number): number {
  const steps = Math.ceil((amount / step) * (1 - tolerance));
  return steps / Math.round(1 / step);
}

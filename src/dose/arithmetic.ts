/** Relative room for the last digits of binary arithmetic: exactly the limit is not over it. */
const tolerance = 1e-9;

/** Whether an amount is over its limit. */
export function isOver(amount: number, limit: number): boolean {
  return amount > limit * (1 + tolerance);
}

/** The largest multiple of `step` that is not over `amount`. Never rounds up. */
export function floorTo(amount: number, step: number): number {
  const steps = Math.floor((amount / step) * (1 + tolerance));
  // Dividing by a whole number keeps 27.9 from becoming 27.900000000000002.
  return steps / Math.round(1 / step);
}

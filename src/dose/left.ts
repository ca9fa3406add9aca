import { floorTo } from './arithmetic.ts';
import type { Left } from './types.ts';

/**
 * What may still be given of a product when part of the limit is used up; never rounded up.
 * @param used the share of the limit that is used up; above 1 nothing is left
 */
export function leftOf(product: string, mgPerMl: number, limitMg: number, used: number): Left {
  const mg = Math.max(0, 1 - used) * limitMg;
  return { product, mg, ml: floorTo(mg / mgPerMl, 0.1) };
}

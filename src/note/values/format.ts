import type { Dilution } from './values.ts';

/** Significant digits that are shown at most: what is after them is noise of binary arithmetic. */
const shownDigits = 12;

/** A number without the noise of binary arithmetic in its last digits. */
export const clean = (value: number): number => Number(value.toPrecision(shownDigits));

/**
 * A number as people write doses: a zero before the point, none at the end, no noise of binary arithmetic, no
 * exponent. With `decimals` it is rounded to so many places; round a permitted amount down before (`floorTo`).
 */
export function formatNumber(value: number, decimals?: number): string {
  const whole = String(value);
  // In so few digits there is no noise, and most numbers of a note have fewer.
  if (whole.length <= shownDigits && !whole.includes('e') && (decimals === undefined || !whole.includes('.')))
    return whole;
  const shown = decimals === undefined ? clean(value) : Number(clean(value).toFixed(decimals));
  const text = String(shown);
  if (!text.includes('e')) return text;
  return Math.abs(shown) < 1 ? shown.toFixed(20).replace(/0+$/, '') : BigInt(shown).toString();
}

/** A whole number with commas between its thousands: `100,000`. */
export function formatThousands(value: number): string {
  return formatNumber(value).replace(/\B(?=(\d{3})+$)/g, ',');
}

/** Epinephrine as it was meant: `1:100,000`, `10 mcg/mL`, `none`. */
export function formatDilution({ microgramsPerMl, ratio }: Dilution): string {
  if (ratio !== undefined) return `1:${formatThousands(ratio)}`;
  return microgramsPerMl === 0 ? 'none' : `${formatNumber(microgramsPerMl)} mcg/mL`;
}

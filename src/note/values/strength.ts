import { readNumber, splitNumber } from './numbers.ts';
import { readQuantity } from './quantity.ts';
import { longestRead, part, remarkOn, trimmed, type Reading, type Remark } from './reading.ts';

/** A strength in units of the drug's own, as of hyaluronidase or bleomycin. */
const perVolume =
  /^(iu|u|units?|international units?|meq|mmol|ku)\s*(?:\/|\bper\b)\s*(?:m[lL]|cc|milliliter|millilitre)$/i;
const misread = /^i?u\b/i;

/**
 * Reads the strength of a drug that is no anesthetic, as typed: 10 mg/mL, 1%, 1 unit/mL. Nothing is reckoned with it,
 * so that units of the drug's own are in order.
 */
export function readStrength(text: string): Reading<string> {
  const typed = trimmed(text);
  const split = typed.typed.length > longestRead ? undefined : splitNumber(typed);
  if (split === undefined || !perVolume.test(split.rest.typed)) {
    const { value, remarks } = readQuantity(text, 'concentration');
    return { value: value === undefined ? undefined : text, remarks };
  }
  const { digits, remark } = readNumber(split.number);
  const short = misread.exec(split.rest.typed)?.[0];
  const unit: Remark | undefined =
    short === undefined
      ? undefined
      : remarkOn(part(split.rest, 0, short.length), 'quantity/misread-unit', {
          instead: ['units'],
          sure: true,
          args: { instead: 'units' },
        });
  const remarks = [remark, unit].filter((one) => one !== undefined);
  return { value: digits === undefined ? undefined : text, remarks };
}

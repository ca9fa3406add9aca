import type { Problem } from '../tree/finding.ts';
import { readNumber, splitNumber } from './numbers.ts';
import { readQuantity } from './quantity.ts';
import { longestRead, part, problemAt, trimmed, type Reading } from './reading.ts';

/** A strength in units of the drug's own, as of hyaluronidase or bleomycin. */
const perVolume =
  /^(iu|u|units?|international units?|meq|mmol|ku)\s*(?:\/|\bper\b)\s*(?:m[lL]|cc|milliliter|millilitre)$/i;
const misread = /^i?u\b/i;

/**
 * Reads the strength of a drug that is no anesthetic, as typed: 10 mg/mL, 1%, 1 unit/mL. Nothing is counted with it,
 * so that units of the drug's own are in order.
 */
export function readStrength(text: string): Reading<string> {
  const typed = trimmed(text);
  const split = typed.typed.length > longestRead ? undefined : splitNumber(typed);
  if (split === undefined || !perVolume.test(split.rest.typed)) {
    const { value, problems } = readQuantity(text, 'concentration');
    return { value: value === undefined ? undefined : text, problems };
  }
  const { digits, problem } = readNumber(split.number);
  const short = misread.exec(split.rest.typed)?.[0];
  const unit: Problem | undefined =
    short === undefined
      ? undefined
      : problemAt(part(split.rest, 0, short.length), 'quantity/misread-unit', {
          instead: ['units'],
          sure: true,
          args: { instead: 'units' },
        });
  const problems = [problem, unit].filter((one) => one !== undefined);
  return { value: digits === undefined ? undefined : text, problems };
}

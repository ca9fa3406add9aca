import type { Procedure } from '../../note/generated/types.ts';

const lengths =
  /(?<![\d.])(\d{1,4}(?:\.\d{1,4})?)(?:\s{0,3}(?:-|–|to)\s{0,3}\d{1,4}(?:\.\d{1,4})?)?(?:\s{0,3}[x×]\s{0,3}(\d{1,4}(?:\.\d{1,4})?))?(?:\s{0,3}[x×]\s{0,3}\d{1,4}(?:\.\d{1,4})?)?\s{0,3}(mm|cm)\b/gi;

interface Length {
  /** In mm; of two sides the greater, of a range the lower. */
  readonly mm: number;
  readonly from: number;
  readonly to: number;
}

const lengthsIn = (text: string): readonly Length[] =>
  Array.from(text.matchAll(lengths), ({ 0: typed, 1: one, 2: other, 3: unit, index }) => ({
    mm: Math.max(Number(one), Number(other ?? 0)) * (unit?.toLowerCase() === 'cm' ? 10 : 1),
    from: index,
    to: index + typed.length,
  }));

/** The greatest length in mm that the description of the lesion gives. */
export function lesionMm({ lesion }: Procedure): number | undefined {
  const found = lengthsIn(lesion?.value ?? '').map(({ mm }) => mm);
  return found.length === 0 ? undefined : Math.max(...found);
}

/** What is before or after a length that is how high something is, how far away, or how large something else. */
const otherBefore =
  /\b(?:raised|elevated|high|height|thick|thickness|depth|deep|within|inside|in an?|beside|margin|scar|halo|erythema|rim)\s*(?:of|by|about|approx\.?|~)?\s*$/i;
const otherAfter =
  /^\s*(?:raised|elevated|high|in height|tall|thick|deep|in depth|from|above|below|away|margin|halo|rim|scar)\b/i;

/**
 * The length in mm that the lesion surely has: the smallest of those that its description gives as its width.
 * Undefined where it gives none.
 */
export function surelyMm({ lesion }: Procedure): number | undefined {
  const text = lesion?.value ?? '';
  const found = lengthsIn(text).filter(
    ({ from, to }) => !otherBefore.test(text.slice(0, from)) && !otherAfter.test(text.slice(to)),
  );
  return found.length === 0 ? undefined : Math.min(...found.map(({ mm }) => mm));
}

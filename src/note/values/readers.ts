import { readAge } from './ages.ts';
import { readCount, readDecimal } from './count.ts';
import { readDate, readMoment, readOccasion, readSent } from './dates.ts';
import { readQuantity } from './quantity.ts';
import { readPlannedDay } from './intervals.ts';
import { readDilution, readMixture } from './ratios.ts';
import { noProblems, type Reading } from './reading.ts';
import { readArea, readDimensions, readSutureSize } from './sizes.ts';
import { readStrength } from './strength.ts';
import type { Quantity } from './values.ts';
import { readWeighed } from './weighed.ts';
import { readYesNo } from './yes-no.ts';

/** Makes a value of a text; `key` is the canonical key that it is under. Returns every text, in linear time. */
export type Reader = (text: string, key: string) => Reading<unknown>;

const verbatim: Reader = (text) => ({ value: text, problems: noProblems });

const isNone = (text: string): boolean => /^(?:none|no|no margin)$/i.test(text.trim());
const noLength: Reading<Quantity> = {
  value: { amount: 0, unit: 'mm', typedAmount: 0, typedUnit: 'mm' },
  problems: noProblems,
};

const marginRange = /^(\d{1,2}(?:\.5)?)\s?(?:-|–|to)\s?(\d{1,2}(?:\.5)?)\s?mm$/i;

/** A margin is drawn by eye: of `1-2 mm`, with ends a millimeter apart at most, the lesser is judged. */
function readMargin(text: string, key: string): Reading<Quantity> {
  if (isNone(text)) return noLength;
  const [, from, to] = marginRange.exec(text.trim()) ?? [];
  const near = from !== undefined && Number(to) > Number(from) && Number(to) - Number(from) <= 1;
  return readQuantity(near ? `${from} mm` : text, 'length', key);
}

/** The readers by the name that the schema's `x-reads` uses. */
export const readers: ReadonlyMap<string, Reader> = new Map<string, Reader>([
  ['text', verbatim],
  ['word', verbatim],
  ['site', verbatim],
  ['date', (text, key) => (key === 'sent' ? readSent(text) : readDate(text))],
  ['plannedDay', readPlannedDay],
  ['moment', readMoment],
  ['occasion', readOccasion],
  ['age', readAge],
  ['mass', (text, key) => readQuantity(text, key === 'amount' ? 'amount' : 'weight', key)],
  ['volume', (text, key) => readQuantity(text, 'volume', key)],
  ['concentration', (text, key) => readQuantity(text, 'concentration', key)],
  ['strength', readStrength],
  ['length', (text, key) => (key === 'margin' ? readMargin(text, key) : readQuantity(text, 'length', key))],
  ['area', readArea],
  ['dimensions', readDimensions],
  ['dilution', readDilution],
  ['mixture', readMixture],
  ['weighed', readWeighed],
  ['sutureSize', readSutureSize],
  ['yesno', readYesNo],
  ['count', readCount],
  ['decimal', readDecimal],
]);

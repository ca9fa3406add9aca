import { isOver } from '../../dose/arithmetic.ts';
import { isOutside, rangeOf } from '../../dose/patient.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Finding, Fix, Report } from '../../note/tree/finding.ts';
import type { Bounds, WeightRange } from '../../reference/weights-for-age.ts';
import type { Check, Subject } from '../check.ts';
import { format } from '../sources.ts';

const kgPerLb = 0.45359237;

interface Slip {
  /** The weight as it would be right, with the other unit. */
  readonly instead: string;
}

interface Typed {
  readonly amount: number;
  readonly pounds: boolean;
}

const isWithin = (kg: number, { low, high }: Bounds): boolean => !isOver(low, kg) && !isOver(kg, high);

const inKg = (amount: number, pounds: boolean): number => (pounds ? amount * kgPerLb : amount);

const swapped = ({ amount, pounds }: Typed): Slip => ({
  instead: `${formatNumber(amount)} ${pounds ? 'kg' : 'lb'}`,
});

/** The same number with the other unit, where the weight misses its range and that would not. */
const slipOf = (typed: Typed, range: WeightRange): Slip | undefined =>
  isOutside(inKg(typed.amount, !typed.pounds), range) ? undefined : swapped(typed);

/** The same number with the other unit, where that is in the middle of the age and the weight is not even usual. */
function middleSlip(typed: Typed, { usual, middle }: WeightRange): Slip | undefined {
  if (middle === undefined) return undefined;
  const isUnusual = !isWithin(inKg(typed.amount, typed.pounds), usual);
  return isUnusual && isWithin(inKg(typed.amount, !typed.pounds), middle) ? swapped(typed) : undefined;
}

const ageText = (months: number): string =>
  months < 24 ? `${Math.floor(months)} months` : `${Math.floor(months / 12)} years`;

function find({ note, dose, tables, problems }: Subject): readonly Report[] {
  const weight = note.patient?.weight;
  const range = rangeOf(dose.facts, tables.weightRanges);
  if (weight?.value === undefined || range === undefined || dose.facts.kg === undefined) return [];
  if (problems('quantity/implausible').some(({ at }) => at.start >= weight.start && at.start < weight.end))
    return [];
  const { typedAmount: amount, typedUnit } = weight.value;
  const typed = { amount, pounds: /^(lb|lbs|pound|pounds)$/i.test(typedUnit) };
  const isMissed = isOutside(dose.facts.kg, range);
  const slip = isMissed ? slipOf(typed, range) : middleSlip(typed, range);
  if (!isMissed && slip === undefined) return [];
  const { low, high } = range.usual;
  const args = {
    weight: weight.text,
    age: ageText(dose.facts.months ?? 0),
    low: formatNumber(low),
    high: formatNumber(high),
  };
  return slip === undefined
    ? [{ at: weight, args, rests: range }]
    : [{ at: weight, form: 'unit', rests: range, args: { ...args, ...slip }, data: slip }];
}

export const check: Check = {
  code: 'dose/weight-implausible',
  severity: 'warning',
  title: 'A weight that does not fit the age',
  why: 'Pounds typed as kilograms more than double the limit. Usual means the 3rd to the 97th percentile of the growth tables. How far outside of it is reported is Wheal’s own choice, and so is to ask about a number that is near the middle in the other unit.',
  sources: [{ source: 'who-weight-for-age', mark: 'Q' }, { source: 'cdc-weight-for-age', mark: 'Q' }, format],
  messages: {
    main: '{weight} is unlikely at the age of {age} ({low} to {high} kg is usual). Check the weight and the age: the dose limit depends on both.',
    unit: '{weight} is unlikely at the age of {age} ({low} to {high} kg is usual). Was it {instead}? The dose limit depends on it.',
  },
  find,
  fix: (_place, { start, end, data }: Finding): readonly Fix[] => {
    if (data === undefined) return [];
    const { instead } = data as Slip;
    return [
      {
        title: `correct the record: ${instead}`,
        kind: 'record',
        sure: false,
        edits: [{ start, end, text: instead }],
      },
    ];
  },
};

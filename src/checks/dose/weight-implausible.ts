import { isOutside, missedRange } from '../../dose/patient.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Finding, Fix } from '../../note/tree/finding.ts';
import type { WeightRange } from '../../reference/limits.ts';
import type { Check, Report, Subject } from '../check.ts';

const kgPerLb = 0.45359237;

interface Slip {
  /** The weight as it would be right, with the other unit. */
  readonly instead: string;
}

/** The same number with the other unit, where that suits the age. */
function slipOf(typed: number, unit: string, range: WeightRange): Slip | undefined {
  const pounds = /^(lb|lbs|pound|pounds)$/i.test(unit);
  const kg = pounds ? typed : typed * kgPerLb;
  return !isOutside(kg, range) ? { instead: `${formatNumber(typed)} ${pounds ? 'kg' : 'lb'}` } : undefined;
}

const ageText = (months: number): string =>
  months < 24 ? `${Math.floor(months)} months` : `${Math.floor(months / 12)} years`;

function find({ note, dose, tables, problems }: Subject): readonly Report[] {
  const found: Report[] = [];
  const weight = note.patient?.weight;
  const range = missedRange(dose.facts, tables.weightRanges);
  if (weight?.value === undefined || range === undefined) return found;
  if (problems('quantity/implausible').some(({ start }) => start >= weight.start && start < weight.end))
    return found;
  const slip = slipOf(weight.value.typedAmount, weight.value.typedUnit, range);
  const args = {
    weight: weight.text,
    age: ageText(dose.facts.months ?? 0),
    low: formatNumber(range.minKg),
    high: formatNumber(range.maxKg),
  };
  found.push(
    slip === undefined
      ? { at: weight, args }
      : { at: weight, form: 'unit', args: { ...args, ...slip }, data: slip },
  );
  return found;
}

export const checks: readonly Check[] = [
  {
    code: 'dose/weight-implausible',
    severity: 'warning',
    title: 'A weight that does not fit the age',
    why: 'Pounds typed as kilograms more than double the limit.',
    sources: [
      { source: 'weight-for-age', mark: 'format' },
      { source: 'format', mark: 'format' },
    ],
    messages: {
      main: '{weight} is unlikely at the age of {age} ({low} to {high} kg is usual). Check the weight and the age: the dose limit goes by both.',
      unit: '{weight} is unlikely at the age of {age} ({low} to {high} kg is usual). Was it {instead}? The dose limit goes by it.',
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
  },
];

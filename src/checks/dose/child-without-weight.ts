import type { Report } from '../../note/tree/finding.ts';
import { type DoseJudgement } from '../../dose/judge.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Check, Subject } from '../check.ts';
import { daysOf } from './_days.ts';
import { adultFromMonths, placeOfWeight, doseText } from './_cannot-judge.ts';
import { format } from '../sources.ts';

/** A child is one below this age; from here to 18 years the weight is asked for less loudly. */
const childBelowMonths = 144;

const hasDose = ({ given, creams, unread }: DoseJudgement): boolean =>
  given.length > 0 || creams.length > 0 || unread.length > 0;

/** The day that needs the most weight; without a weight only. */
function heaviest(days: readonly DoseJudgement[]): DoseJudgement | undefined {
  return days.reduce<DoseJudgement | undefined>(
    (most, day) => ((day.neededKg ?? 0) > (most?.neededKg ?? 0) ? day : most),
    undefined,
  );
}

function childWithoutWeight({ note, dose }: Subject): readonly Report[] {
  const found: Report[] = [];
  const { kg, months } = dose.facts;
  if (kg !== undefined || months === undefined || months >= adultFromMonths) return found;
  const days = daysOf(dose).filter(hasDose);
  const at = placeOfWeight(note);
  if (days.length === 0 || at === undefined) return found;
  const day = heaviest(days);
  const child = months < childBelowMonths;
  found.push({
    at,
    severity: child ? 'error' : 'warning',
    form: day === undefined ? 'main' : 'from',
    args: {
      who: child ? 'a child under 12 years' : 'a patient under 18 years',
      ...(day === undefined ? {} : { dose: doseText(day), kg: formatNumber(day.neededKg ?? 0) }),
    },
  });
  return found;
}

export const check: Check = {
  code: 'dose/child-without-weight',
  misses: () => 'weight',
  severity: 'error',
  title: 'Anesthetic for a child without a weight',
  why: 'A child’s limit depends on weight alone; without it a usual adult dose can be too much.',
  sources: [{ source: 'bnfc', mark: 'Q' }, format],
  messages: {
    main: 'No weight is written for {who}, so the dose can’t be judged. Write `weight` in kg.',
    from: 'No weight is written for {who}, so the dose can’t be judged: {dose} would be within the limit from {kg} kg. Write `weight` in kg.',
  },
  find: childWithoutWeight,
};

import type { Report } from '../../note/tree/finding.ts';
import { isAtLeast } from '../../dose/arithmetic.ts';
import { daysBetween } from '../../note/values/days.ts';
import type { Note } from '../../note/generated/types.ts';
import type { Check, Subject } from '../check.ts';

const daysOfWeek = 7;

/** Days from weighing to the visit, where the note says both. */
function ageOfWeight({ patient, visit }: Note): number | undefined {
  const on = patient?.weighed?.value?.on;
  const day = visit?.value?.date;
  return on === undefined || day === undefined ? undefined : daysBetween(on, day);
}

function old({ note, dose, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  const { months } = dose.facts;
  const days = ageOfWeight(note);
  const at = note.patient?.weighed;
  if (at === undefined || days === undefined || months === undefined) return found;
  const limit = tables.weightAges.find(({ belowMonths }) => months < belowMonths);
  const used = dose.given.length > 0 || dose.creams.length > 0;
  if (used && limit !== undefined && days > limit.days && isAtLeast(dose.atLeast, limit.fromShare))
    found.push({ at, args: { days, weeks: Math.floor(limit.days / daysOfWeek) } });
  return found;
}

export const check: Check = {
  code: 'dose/weight-old',
  severity: 'information',
  title: 'A dose by an old weight',
  why: 'A child’s limit depends on weight alone, and children grow; after an illness they may also have lost weight. The intervals are common practice: a month for infants, three under 3 years, six up to 12. From 12 years a weight may be a year old, and is reported only once the dose is half of the limit.',
  sources: [{ source: 'common', mark: 'common' }],
  messages: {
    main: 'This weight is {days} days old; at this age patients are weighed again after {weeks} weeks. Weigh the patient before calculating the dose.',
  },
  find: old,
};

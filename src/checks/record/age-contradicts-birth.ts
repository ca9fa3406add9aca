import type { Check } from '../check.ts';
import { monthsBetween } from '../../note/values/days.ts';
import type { Age } from '../../note/values/values.ts';
import { format } from '../sources.ts';

/** Years are whole years; small children are told in rounded months or weeks, where one month more or less is no contradiction. */
const differ = (age: Age, months: number): boolean =>
  age.typedUnit === 'years'
    ? Math.floor(age.months / 12) !== Math.floor(months / 12)
    : Math.abs(age.months - months) > 1;

const ageText = (months: number): string =>
  months < 24 ? `${months} months` : `${Math.floor(months / 12)} years`;

export const check: Check = {
  code: 'record/age-contradicts-birth',
  severity: 'warning',
  title: 'Age and date of birth contradict each other',
  why: 'Two answers to the same question often mean that the wrong chart is open, and the age decides which dose limits apply.',
  sources: [format],
  messages: {
    main: 'The age is written as {age}, but a patient born on {born} is {reckoned} old at the visit. Check both against the chart.',
  },
  find({ note }) {
    const { age, born } = note.patient ?? {};
    const visit = note.visit?.value?.date;
    if (age?.value === undefined || born?.value === undefined || visit === undefined) return [];
    if (born.value > visit) return [];
    const months = monthsBetween(born.value, visit);
    if (!differ(age.value, months)) return [];
    return [{ at: age, args: { age: age.text, born: born.value, reckoned: ageText(months) } }];
  },
};

import type { Report } from '../../note/tree/finding.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Check, Subject } from '../check.ts';
import { daysOf } from './_days.ts';
import { format } from '../sources.ts';

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

const written =
  /^(?:exp\.?\s*)?(?:(?<year>\d{4})[-/.](?<month>\d{1,2})(?:[-/.](?<day>\d{1,2}))?|(?<monthFirst>\d{1,2}|[a-z]{3})[a-z]*[\s/.-]+(?<yearLast>(?:\d{2})?\d{2}))$/i;

const two = (number: number): string => String(number).padStart(2, '0');

/** The month, or the day, up to which a vial is in date: YYYY-MM or YYYY-MM-DD. A vial is good until its month ends. */
function lastOf(text: string): string | undefined {
  const { year, month, day, monthFirst, yearLast } = written.exec(text.trim())?.groups ?? {};
  const named = months.indexOf((monthFirst ?? '').toLowerCase()) + 1;
  const number = named > 0 ? named : Number(month ?? monthFirst);
  const years = Number(year ?? yearLast);
  if (!(number >= 1 && number <= 12) || Number.isNaN(years)) return undefined;
  const whole = `${years < 100 ? 2000 + years : years}-${two(number)}`;
  return day === undefined ? whole : `${whole}-${two(Number(day))}`;
}

function expired({ note, dose }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysOf(dose)) {
    const on: IsoDate | undefined = day.day ?? note.visit?.value?.date;
    for (const { expires } of day.injections) {
      if (expires?.value === undefined || on === undefined) continue;
      const last = lastOf(expires.value);
      const args = { expires: expires.text, on };
      if (last === undefined) found.push({ at: expires, form: 'unread', severity: 'information', args });
      else if (on.slice(0, last.length) > last) found.push({ at: expires, args });
    }
  }
  return found;
}

export const check: Check = {
  code: 'dose/expired',
  severity: 'warning',
  title: 'A vial past its date',
  why: 'After the date on the vial nobody guarantees what is in it; epinephrine breaks down first. A month means its last day.',
  sources: [format],
  messages: {
    main: 'The vial was good until {expires}, and was used on {on}. Look at the vial; if that is right, set it aside and tell the clinician.',
    unread: '“{expires}” cannot be read as a month or a day. Write it as on the vial, such as 2027-04.',
  },
  find: expired,
};

import type { Check } from '../check.ts';
import { isAtLeast } from '../../dose/arithmetic.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Report, Subject } from '../check.ts';
import { cautionsOf } from './_cautions.ts';
import { daysOf } from './_days.ts';
import { said, saidHere } from './_caution-findings.ts';

function lessTolerance(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysOf(subject.dose)) {
    const last = day.given.at(-1);
    if (last === undefined || !isAtLeast(day.atLeast, subject.tables.toleranceFrom)) continue;
    for (const caution of cautionsOf(subject))
      if (caution.row.tolerance !== undefined)
        found.push({
          at: last.at,
          args: { name: caution.row.name, percent: formatNumber(day.atLeast * 100, 0) },
          related: [said(caution)],
        });
  }
  return found;
}

export const check: Check = {
  code: 'dose/reduced-tolerance',
  severity: 'information',
  title: 'More than half of the limit in a patient who bears less',
  why: 'The limits are for healthy adults. Labels want less for the debilitated and with cardiac or liver disease, and give no number; from half of the limit on Wheal says so.',
  sources: [{ source: 'us-label-reduced-doses', mark: 'Q' }],
  messages: {
    main: 'The dose comes to {percent}% of the limit for a healthy patient; with {name} the label wants less, without a number. Weigh whether less will do.',
    said: saidHere,
  },
  find: lessTolerance,
};

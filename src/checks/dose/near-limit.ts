import type { Report } from '../../note/tree/finding.ts';
import { isAtLeast, nearLimit } from '../../dose/arithmetic.ts';
import { overLimit } from '../../dose/judge.ts';
import type { Check } from '../check.ts';
import { daysOf } from './_days.ts';
import { sourcesDiffer, sources, report, also } from './_over-limit.ts';

export const check: Check = {
  code: 'dose/near-limit',
  severity: 'warning',
  title: 'Dose of local anesthetic at 80% of the limit or more',
  why: 'Little can be added. Weight, liver, heart and age can make less than the published limit too much.',
  sources,
  messages: {
    main: 'The dose of {day} is {percent}% of the limit: {sum}. Give at most {left} mL more here.',
    'nothing-left': 'The dose of {day} is {percent}% of the limit: {sum}. Add nothing more.',
    also,
  },
  sourcesDiffer,
  find({ dose, tables }) {
    const reports: Report[] = [];
    for (const day of daysOf(dose)) {
      if (day.facts.kg === undefined || overLimit(day) || !isAtLeast(day.atLeast, nearLimit)) continue;
      const found = report(day, dose, nearLimit, tables);
      if (found !== undefined)
        reports.push({ ...found, form: isAtLeast(day.atLeast, 1) ? 'nothing-left' : 'main' });
    }
    return reports;
  },
};

import type { Check } from '../check.ts';
import { overLimit } from '../../dose/judge.ts';
import type { Report } from '../check.ts';
import { daysOf } from './_days.ts';
import { sourcesDiffer, sources, report, also } from './_over-limit.ts';

export const check: Check = {
  code: 'dose/over-limit',
  severity: 'error',
  title: 'More local anesthetic than the limit for this patient',
  why: 'Past the limit the risk of seizures and of cardiac arrest rises. All sites of a visit count together, and different anesthetics add up.',
  sources,
  messages: {
    main: 'The dose of {day} is {percent}% of the limit: {sum}. At most {ml} mL of this {product} would be in order{beside}; check volume, strength and weight.',
    'nothing-left':
      'The dose of {day} is {percent}% of the limit: {sum}. The rest has used up the limit, so that no {product} would be in order; check volumes, strengths and weight.',
    also,
  },
  alternatives: { readAs: ['tenth-of-one-dose'], mayLeaveMilder: true },
  sourcesDiffer,
  find({ dose, tables }) {
    const reports: Report[] = [];
    for (const day of daysOf(dose)) {
      const found = overLimit(day) ? report(day, dose, 1, tables) : undefined;
      if (found !== undefined) reports.push(found);
    }
    return reports;
  },
};

import type { Report } from '../../note/tree/finding.ts';
import { overLimit } from '../../dose/judge.ts';
import { bounded } from '../bounded.ts';
import type { Check } from '../check.ts';
import { daysOf } from './_days.ts';
import { sourcesDiffer, lowestByAgent, reportOf, also } from './_advisories.ts';

export const check: Check = {
  code: 'dose/advisory-passed',
  severity: 'warning',
  title: 'Within the limit, and above what a guideline advises for this patient',
  why: 'Guidelines for children and for infants advise less than the labels allow. Sources differ, and no average of them is taken.',
  sources: [
    { source: 'aad-2016', mark: 'Q2' },
    { source: 'aap-2019', mark: 'Q2' },
    { source: 'us-label-mepivacaine-children', mark: 'Q2' },
    { source: 'us-label-bupivacaine-children', mark: 'Q2' },
  ],
  messages: {
    main: 'The {product} of {day}, {mg} mg, is more than the {max} mg ({binding}{printed}) of the {authority} for this patient ({population}). It is within the limit; consider whether less is enough.',
    'not-recommended':
      'The {authority} advises against {product} for this patient ({population}); {mg} mg is within the limit that another source gives. Consider another anesthetic.',
    also,
  },
  sourcesDiffer,
  find({ dose }) {
    const found: Report[] = [];
    for (const day of daysOf(dose)) {
      if (overLimit(day)) continue;
      for (const advisory of lowestByAgent(day.advisories)) {
        const report = reportOf(advisory, day, dose);
        if (report !== undefined)
          found.push({ ...report, severity: bounded('warning', advisory.limit.mark) });
      }
    }
    return found;
  },
};

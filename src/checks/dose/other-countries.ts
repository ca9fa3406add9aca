import type { Report } from '../../note/tree/finding.ts';
import { overLimit } from '../../dose/judge.ts';
import type { Check } from '../check.ts';
import { daysOf } from './_days.ts';
import { sourcesDiffer, lowestByAgent, reportOf, also } from './_advisories.ts';

export const check: Check = {
  code: 'dose/other-countries',
  severity: 'information',
  title: 'Within the limit, and above what another source gives',
  why: 'Published limits of the same anesthetic differ by half and more from country to country.',
  sources: [
    { source: 'australia-toxicology', mark: 'Q' },
    { source: 'uk-smpc-lidocaine', mark: 'Q' },
    { source: 'sg-label-lidocaine', mark: 'Q' },
    { source: 'poisoning-drug-overdose', mark: 'Q' },
  ],
  messages: {
    main: 'The {product} of {day}, {mg} mg, is within the limit used here and above the {max} mg ({binding}{printed}) of {authority}. Published limits differ.',
    also,
  },
  sourcesDiffer,
  find({ dose }) {
    const found: Report[] = [];
    for (const day of daysOf(dose)) {
      if (overLimit(day)) continue;
      for (const advisory of lowestByAgent(day.elsewhere)) {
        const report = reportOf(advisory, day, dose);
        if (report !== undefined) found.push({ ...report, rests: advisory.limit });
      }
    }
    return found;
  },
};

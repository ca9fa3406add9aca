import type { Report } from '../../note/tree/finding.ts';
import { overLimit } from '../../dose/judge.ts';
import type { Check } from '../check.ts';
import { daysOf } from './_days.ts';
import { sourcesDiffer, sources, overReport, also } from './_over-limit.ts';

const after = 'if given, stop, watch for seizures and arrhythmia, lipid emulsion at hand.';

export const check: Check = {
  code: 'dose/over-limit',
  severity: 'error',
  title: 'More local anesthetic than the limit for this patient',
  why: 'Past the limit the risk of seizures and of cardiac arrest rises, and it may show some time after the injection. The guideline on toxicity stops, calls for help, and gives lipid emulsion with a collapse. All sites of a visit count together, and different anesthetics add up.',
  sources: [...sources, { source: 'aagbi-toxicity', mark: 'Q' }],
  messages: {
    main: `{over} mg over the limit of {max} mg{where}: {binding}. Give at most {ml} mL here{beside}; ${after}`,
    'main-nothing-left': `{over} mg over the limit of {max} mg{where}: {binding}. The rest has used it up, give none here; ${after}`,
    together: `{excess}% over the limits of two anesthetics together{where}. Give at most {ml} mL here{beside}; ${after}`,
    'together-nothing-left': `{excess}% over the limits of two anesthetics together{where}. The rest has used them up, give none here; ${after}`,
    also,
  },
  alternatives: { readAs: ['tenth-of-one-dose'], mayLeaveMilder: true },
  sourcesDiffer,
  find({ dose, tables }) {
    const reports: Report[] = [];
    for (const day of daysOf(dose)) {
      const found = overLimit(day) ? overReport(day, dose, tables) : undefined;
      if (found !== undefined) reports.push(found);
    }
    return reports;
  },
};

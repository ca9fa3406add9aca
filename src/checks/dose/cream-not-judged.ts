import type { Report } from '../../note/tree/finding.ts';
import { creamGap } from '../../dose/creams.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Check, Subject } from '../check.ts';
import { daysOf } from './_days.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'dose/cream-not-judged',
  severity: 'information',
  title: 'An anesthetic cream that cannot be judged',
  why: 'A cream that was not judged must not look like a safe one.',
  sources: [format],
  messages: {
    main: 'Wheal knows no maximum of {cream} for this patient, so {amount} g is not judged. Look it up in the label.',
    area: 'The maximum of {cream} that is known here is an area, and none is written, so {amount} g is not judged. Write `area`, such as 20 cm2.',
  },
  find({ dose }: Subject) {
    const found: Report[] = [];
    for (const day of daysOf(dose))
      for (const cream of day.creams) {
        const form = creamGap(cream);
        const [first] = cream.applied;
        if (form !== undefined && first !== undefined)
          found.push({
            at: first.at,
            form,
            args: { cream: cream.agent.name, amount: formatNumber(cream.grams) },
          });
      }
    return found;
  },
};

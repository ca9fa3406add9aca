import type { Report } from '../../note/tree/finding.ts';
import { addDays } from '../../note/values/days.ts';
import { bounded } from '../bounded.ts';
import type { Check, Subject } from '../check.ts';
import { sourcesDiffer, daysWithWindow, argsOf, sources } from './_removal.ts';

function early(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysWithWindow(subject)) {
    const { kind, leaf, date, visit, window } = day;
    if (date < addDays(visit, window.widest.from))
      found.push({ at: leaf, form: kind, severity: bounded('warning', window.mark), args: argsOf(day) });
    else if (kind === 'due' && window.kindOfDays === 'lengthened' && date < window.from)
      found.push({ at: leaf, form: 'slow', severity: 'information', args: argsOf(day) });
  }
  return found;
}

export const check: Check = {
  code: 'closure/removal-early',
  severity: 'warning',
  title: 'Stitches removed before any source would remove them',
  why: 'A wound whose stitches come out too soon gapes. Sources differ by site, some up to fourfold: only a day before the earliest of them, or of the practice’s own window, is a warning. With what slows healing, such as diabetes or steroids, a day before the lengthened window is information.',
  sources,
  messages: {
    due: 'The stitches are due on {date}, earlier than any source removes them here; {days} are {from} to {to}. Check the date.',
    out: 'The stitches came out on {date}, earlier than any source removes them here; {days} are {from} to {to}. Check the date, or look at the wound again.',
    slow: 'The stitches are due on {date}, and this patient or site heals slowly: {days} are {from} to {to}.',
  },
  alternatives: { readAs: ['other-date', 'working-day'] },
  sourcesDiffer,
  find: early,
};

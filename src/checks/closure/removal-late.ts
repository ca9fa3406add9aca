import type { Report } from '../../note/tree/finding.ts';
import { addDays } from '../../note/values/days.ts';
import { bounded } from '../bounded.ts';
import type { Check, Subject } from '../check.ts';
import { sourcesDiffer, daysWithWindow, argsOf, sources } from './_removal.ts';

function late(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysWithWindow(subject)) {
    const { kind, leaf, date, visit, window } = day;
    if (date <= addDays(visit, window.widest.to)) continue;
    const severity = kind === 'due' ? bounded('warning', window.mark) : 'information';
    found.push({ at: leaf, form: kind, severity, args: argsOf(day) });
  }
  return found;
}

export const check: Check = {
  code: 'closure/removal-late',
  severity: 'warning',
  title: 'Stitches out later than any source leaves them in',
  why: 'Stitches that stay too long leave tracks, on the face from about the seventh day on. Sources differ by site: only a day after the latest of them, or of the practice’s own window, is found. Once they are out it is information.',
  sources,
  messages: {
    due: 'The stitches are due on {date}, later than any source leaves them in here; {days} are {from} to {to}. Check the date.',
    out: 'The stitches came out on {date}, later than any source leaves them in here; {days} were {from} to {to}. Check the date.',
  },
  alternatives: { readAs: ['other-date', 'working-day'] },
  sourcesDiffer,
  find: late,
};

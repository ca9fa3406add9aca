import type { Report } from '../../note/tree/finding.ts';
import { isClosed, nextOpenDay } from '../../followup/working-days.ts';
import type { Check, Subject } from '../check.ts';
import { format } from '../sources.ts';

function onClosedDays({ note, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const { suturesDue, suturesOut } of note.procedures ?? []) {
    const date = suturesDue?.value;
    if (suturesDue === undefined || date === undefined || suturesOut !== undefined) continue;
    if (isClosed(date, tables.closedDays))
      found.push({ at: suturesDue, args: { date, next: nextOpenDay(date, tables.closedDays) } });
  }
  return found;
}

export const check: Check = {
  code: 'closure/removal-on-closed-day',
  severity: 'information',
  title: 'Stitches due on a day on which the practice is closed',
  why: 'A patient who comes to a closed door comes late, or has the stitches taken out elsewhere. Saturday and Sunday count as closed unless the practice file says otherwise.',
  sources: [format],
  messages: {
    main: 'The practice is closed on {date}. The next open day is {next}.',
  },
  alternatives: { readAs: ['working-day'] },
  find: onClosedDays,
};

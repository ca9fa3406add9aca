import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'closure/removal-before-visit',
  severity: 'error',
  title: 'Stitches due or out before they were put in',
  why: 'Everything that is due later is counted from these dates.',
  sources: [format],
  messages: {
    due: 'The stitches are due on {date}, before the visit on {visit}. Check both dates.',
    out: 'The stitches are said to have been taken out on {date}, before the visit on {visit}. Check both dates.',
    visit: 'the visit',
  },
  alternatives: { readAs: ['other-date', 'working-day'] },
  find({ note }) {
    const found: Report[] = [];
    const visit = note.visit;
    if (visit?.value === undefined) return found;
    const day = visit.value.date;
    const related = [{ start: visit.start, end: visit.end, form: 'visit', args: {} }];
    for (const { suturesDue, suturesOut } of note.procedures ?? [])
      for (const [form, leaf] of [
        ['due', suturesDue] as const,
        ...(suturesOut ?? []).map(({ on }) => ['out', on] as const),
      ])
        if (leaf?.value !== undefined && leaf.value < day)
          found.push({ at: leaf, form, args: { date: leaf.value, visit: day }, related });
    return found;
  },
};

import type { Report } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { isAbsent } from '../absent.ts';
import type { Check, Subject } from '../check.ts';
import { sentSpecimens } from './_sent.ts';

function leftBehind(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  const all = sentSpecimens(subject);
  if (all.length < 2) return found;
  const sent: Leaf<IsoDate>[] = [];
  for (const { specimen } of all) if (specimen.sent?.value !== undefined) sent.push(specimen.sent);
  const [first] = sent;
  if (first === undefined || sent.length === all.length) return found;
  const latest = sent.reduce<IsoDate>((day, { value = '' }) => (value > day ? value : day), '');
  // On the day itself the other may still go out.
  const over = subject.today !== undefined && subject.today > latest;
  for (const { specimen } of all) {
    if (specimen.results !== undefined || !isAbsent(subject, specimen, 'sent')) continue;
    found.push({
      at: specimen.head,
      severity: over ? 'warning' : 'information',
      args: { sent: sent.length, count: all.length },
      related: [{ start: first.start, end: first.end, form: 'sent', args: {} }],
    });
  }
  return found;
}

export const check: Check = {
  code: 'specimen/left-behind',
  severity: 'warning',
  title: 'Fewer specimens sent than taken',
  why: 'Specimens are lost on the way out more often than in the laboratory. What was sent is counted against what was taken; where none has a date yet, nothing is said.',
  sources: [
    { source: 'insurer-tips', mark: 'Q' },
    { source: 'closed-loop', mark: 'Q' },
  ],
  messages: {
    main: '{sent} of {count} specimens have a date on which they were sent, and this one has none. Check whether it is still in the office.',
    sent: 'sent',
  },
  find: leftBehind,
};

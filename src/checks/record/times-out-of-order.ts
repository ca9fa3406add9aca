import type { Check } from '../check.ts';
import type { Note } from '../../note/generated/types.ts';
import { type Clock, minutesOf, minutesBefore, injectionBefore } from './_time-out.ts';
import { format } from '../sources.ts';

/** What may lie this long before the time of the visit, which some write when they begin to type, in minutes. */
const grace = 30;

/** The time-out, or the first injection, long before the visit began. */
function beforeVisit(note: Note): Clock | undefined {
  const visit = note.visit?.value?.minutes;
  if (visit === undefined) return undefined;
  const timeOut = minutesOf(note.timeOut);
  if (timeOut !== undefined && minutesBefore(timeOut, visit) > grace) return note.timeOut;
  const first = injectionBefore(note, visit);
  const at = minutesOf(first);
  // An injection before the time-out is a finding of its own.
  if (at === undefined || (timeOut !== undefined && minutesBefore(at, timeOut) > 0)) return undefined;
  return minutesBefore(at, visit) > grace ? first : undefined;
}

export const check: Check = {
  code: 'record/times-out-of-order',
  severity: 'warning',
  title: 'A clock time long before the visit began',
  why: 'A time that lies before the visit is a slip of an hour, or belongs to another day or patient. Half an hour is allowed, since some write the time at which they begin to type.',
  sources: [format],
  messages: {
    main: '{time} lies before the visit began at {visit}. Check both clock times.',
    visit: 'the visit',
  },
  find({ note }) {
    const early = beforeVisit(note);
    if (early === undefined || note.visit === undefined) return [];
    const { start, end, text } = note.visit;
    const args = { time: early.text, visit: text.split(/[ T]/).at(-1) ?? text };
    return [{ at: early, args, related: [{ start, end, form: 'visit', args: {} }] }];
  },
};

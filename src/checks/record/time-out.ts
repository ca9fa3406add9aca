import type { Leaf } from '../../note/tree/leaf.ts';
import type { Injection, Note } from '../../note/generated/types.ts';
import type { Occasion } from '../../note/values/values.ts';
import type { Check } from '../check.ts';

type Clock = Leaf<Occasion>;

const minutesOf = (clock: Clock | undefined): number | undefined => clock?.value?.minutes;

/** A cream goes on long before the patient enters the room. */
const isCream = ({ keys }: Injection): boolean => keys.has('amount') || keys.has('on');

const day = 24 * 60;
/** Clock times that lie closer than this across midnight belong to one visit, in minutes. */
const night = 6 * 60;

/** How many minutes one clock time lies before another; midnight may lie between two that are near each other. */
function minutesBefore(at: number, other: number): number {
  const before = other - at;
  return Math.abs(before) > day - night ? before - Math.sign(before) * day : before;
}

/** The first injection before a time of the day. */
function injectionBefore(note: Note, minutes: number): Clock | undefined {
  let first: Clock | undefined;
  let longest = 0;
  for (const { anesthetic = [] } of [note, ...(note.procedures ?? [])])
    for (const injection of anesthetic) {
      const at = minutesOf(injection.time);
      const before = at === undefined ? 0 : minutesBefore(at, minutes);
      if (before <= longest || isCream(injection)) continue;
      first = injection.time;
      longest = before;
    }
  return first;
}

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

export const checks: readonly Check[] = [
  {
    code: 'record/times-out-of-order',
    severity: 'warning',
    title: 'A clock time long before the visit began',
    why: 'A time that lies before the visit is a slip of an hour, or belongs to another day or patient. Half an hour is allowed, since some write the time at which they begin to type.',
    sources: [{ source: 'format', mark: 'format' }],
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
  },
  {
    code: 'record/time-out-late',
    severity: 'warning',
    title: 'Time-out after the first injection',
    why: 'The time-out is there to stop the wrong site before the needle, not after it.',
    sources: [{ source: 'universal-protocol', mark: 'Q' }],
    messages: {
      main: 'The time-out is recorded at {timeOut}, after the first injection at {injection}. Check both clock times.',
      injection: 'the first injection',
    },
    find({ note }) {
      const minutes = minutesOf(note.timeOut);
      if (note.timeOut === undefined || minutes === undefined) return [];
      const first = injectionBefore(note, minutes);
      if (first === undefined) return [];
      const { start, end } = first;
      const args = { timeOut: note.timeOut.text, injection: first.text };
      return [{ at: note.timeOut, args, related: [{ start, end, form: 'injection', args: {} }] }];
    },
  },
  {
    code: 'record/time-out-not-held',
    severity: 'warning',
    title: 'No time-out was held',
    why: 'The pause before the first cut, in which patient, site and procedure are said aloud, catches the wrong site and the wrong patient.',
    sources: [{ source: 'universal-protocol', mark: 'Q' }],
    messages: {
      main: 'The note says that no time-out was held. If there was a reason, accept this finding and say it.',
    },
    find: ({ note: { timeOut } }) => (timeOut?.value?.done === false ? [{ at: timeOut }] : []),
  },
];

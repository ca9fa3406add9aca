import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import type { Note, Procedure } from '../../note/generated/types.ts';
import { type Clock, isCream, minutesOf, minutesBefore, injectionBefore } from './_time-out.ts';
import { format } from '../sources.ts';

/** What may be this long before the time of the visit, which some write when they begin to type, in minutes. */
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

/** The first injection of a procedure, where the note gives the time of each that may have numbed it. */
function firstInjection({ anesthetic = [] }: Procedure): Clock | undefined {
  const times = anesthetic.filter((one) => !isCream(one)).map(({ time }) => time);
  const known = times.filter((time) => time !== undefined && minutesOf(time) !== undefined) as Clock[];
  if (known.length < times.length) return undefined;
  return known.sort((a, b) => minutesOf(a)! - minutesOf(b)!)[0];
}

/** Tissue that was taken before the first injection of its own procedure. */
function beforeNumb({ anesthetic, procedures = [] }: Note): readonly Report[] {
  if (anesthetic !== undefined) return [];
  return procedures.flatMap((procedure) => {
    const first = firstInjection(procedure);
    const numb = minutesOf(first);
    if (first === undefined || numb === undefined) return [];
    const { start, end, text: injection } = first;
    const related = [{ start, end, form: 'injection', args: {} }];
    return (procedure.specimen ?? []).flatMap(({ collected }) => {
      const taken = minutesOf(collected);
      if (collected === undefined || taken === undefined || minutesBefore(taken, numb) <= 0) return [];
      return [{ at: collected, form: 'collected', args: { time: collected.text, injection }, related }];
    });
  });
}

/** Tissue that was taken long before the visit began. */
const collectedBefore = (note: Note, visit: number): readonly Clock[] =>
  (note.procedures ?? [])
    .flatMap(({ specimen = [] }) => specimen.flatMap(({ collected }) => collected ?? []))
    .filter((clock) => minutesBefore(minutesOf(clock) ?? visit, visit) > grace);

export const check: Check = {
  code: 'record/times-out-of-order',
  severity: 'warning',
  title: 'A clock time long before the visit began',
  why: 'A time before the visit is a slip of an hour, or belongs to another day or patient. Half an hour is allowed, since some write the time at which they begin to type.',
  sources: [format],
  messages: {
    main: '{time} is before the visit began at {visit}. Check both clock times.',
    collected:
      'The tissue is said to have been taken at {time}, before the injection at {injection}. Check both clock times.',
    visit: 'the visit',
    injection: 'the injection',
  },
  find({ note }) {
    const found: Report[] = [...beforeNumb(note)];
    const { visit } = note;
    if (visit?.value?.minutes === undefined) return found;
    const { start, end, text } = visit;
    const early = beforeVisit(note);
    for (const clock of [
      ...(early === undefined ? [] : [early]),
      ...collectedBefore(note, visit.value.minutes),
    ]) {
      if (found.some(({ at }) => at === clock)) continue;
      const args = { time: clock.text, visit: text.split(/[ T]/).at(-1) ?? text };
      found.push({ at: clock, args, related: [{ start, end, form: 'visit', args: {} }] });
    }
    return found;
  },
};

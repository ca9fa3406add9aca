import type { Report } from '../../note/tree/finding.ts';
import { daysBetween } from '../../note/values/days.ts';
import type { Check, Subject } from '../check.ts';
import { daysOf } from './_days.ts';
import { sourcesDiffer, doesNotUnlock } from './_epinephrine.ts';

/** Buffered anesthetic kept too long, where nothing else is said about the day on which it was mixed. */
function bufferedOld(subject: Subject): readonly Report[] {
  const { dose, note, tables } = subject;
  const { days: most } = tables.epinephrine.bufferedDays;
  const found: Report[] = [];
  for (const day of daysOf(dose)) {
    const on = day.day ?? note.visit?.value?.date;
    for (const { mixedOn } of day.injections) {
      if (mixedOn?.value === undefined || on === undefined) continue;
      const days = daysBetween(mixedOn.value, on);
      if (days > most) found.push({ at: mixedOn, args: { days, most } });
    }
  }
  const told = found.length === 0 ? [] : doesNotUnlock(subject);
  return found.filter(({ at }) => !told.some((one) => one.at.start === at.start));
}

export const check: Check = {
  code: 'dose/buffered-old',
  severity: 'information',
  title: 'Buffered anesthetic kept too long',
  why: 'A buffered solution loses strength over time. A study found more than 90% of both drugs left after two weeks in the refrigerator, and 82% of the epinephrine after four; at room temperature it was nearly gone.',
  sources: [{ source: 'buffered-stability', mark: 'Q' }],
  messages: {
    main: 'This was buffered {days} days before it was used; a study found it good for {most} days in the refrigerator. Mix it fresh, and discard the rest.',
  },
  sourcesDiffer,
  find: bufferedOld,
};

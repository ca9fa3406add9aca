import type { Report } from '../../note/tree/finding.ts';
import { daysBetween } from '../../note/values/days.ts';
import type { Check, Subject } from '../check.ts';
import { daysOf } from './_days.ts';
import { sourcesDiffer, doesNotUnlock } from './_epinephrine.ts';

/** Buffered stock past its days, where nothing else is said about the day on which it was mixed. */
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
  title: 'Buffered stock past its days',
  why: 'A buffered solution loses what is in it as it stands. A study found more than 90% of both drugs left after two weeks in the cold, and 82% of the epinephrine after four; at room temperature it was nearly gone.',
  sources: [{ source: 'buffered-stability', mark: 'Q' }],
  messages: {
    main: 'This was buffered {days} days before it was used; a study held it good for {most} days in the cold. Mix it fresh, and set the rest aside.',
  },
  sourcesDiffer,
  find: bufferedOld,
};

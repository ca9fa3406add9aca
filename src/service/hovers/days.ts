import { daysBetween, dayNumber, weekdayOf } from '../../note/days.ts';
import type { IsoDate } from '../../note/values.ts';
import type { Section } from './section.ts';

const weekdays = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;

/** The name of a date's weekday. */
export const weekdayName = (date: IsoDate): string => weekdays[weekdayOf(dayNumber(date))]!;

const days = (count: number): string => `${count} day${count === 1 ? '' : 's'}`;

/** Weekday, and how far a date is from the visit. */
export function daySection(date: IsoDate, visit: IsoDate | undefined): Section {
  const apart = visit === undefined ? undefined : daysBetween(visit, date);
  const since =
    apart === undefined || apart === 0
      ? []
      : [{ text: apart > 0 ? `${days(apart)} after the visit` : `${days(-apart)} before the visit` }];
  return { title: `${weekdayName(date)}, ${date}`, rows: since };
}

import { daysBetween } from '../../note/values/days.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { weekdayName } from '../analysis/days.ts';
import type { Section } from './section.ts';

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

import type { IsoDate } from '../note/values/values.ts';
import type { ClosedDays } from '../practice/closed-days.ts';
import { dateOf, dayNumber, weekdayOf } from '../note/values/days.ts';

/**
 * Whether the practice is closed on that date. A practice that names all seven weekdays has no working days to count
 * with; then every weekday counts, and only its dates are closed.
 */
export const isClosed = (date: IsoDate, closed: ClosedDays): boolean => isClosedOn(dayNumber(date), closed);

const isClosedOn = (day: number, { weekdays, dates }: ClosedDays): boolean =>
  (weekdays.size < 7 && weekdays.has(weekdayOf(day))) || (dates.size > 0 && dates.has(dateOf(day)));

/** The date itself where the practice works, otherwise the next one on which it does. */
export function nextOpenDay(date: IsoDate, closed: ClosedDays): IsoDate {
  let day = dayNumber(date);
  while (isClosedOn(day, closed)) day += 1;
  return dateOf(day);
}

/**
 * The `count`th working day after a date, which itself is not counted. With 0 the date itself, closed or not.
 * @throws RangeError where the count is negative or not whole
 */
export function addWorkingDays(date: IsoDate, count: number, closed: ClosedDays): IsoDate {
  if (!Number.isInteger(count) || count < 0)
    throw new RangeError('working days are counted forward in whole days');
  let day = dayNumber(date);
  for (let left = count; left > 0;) {
    day += 1;
    if (!isClosedOn(day, closed)) left -= 1;
  }
  return dateOf(day);
}

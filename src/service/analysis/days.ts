import { dayNumber, weekdayOf } from '../../note/values/days.ts';
import type { IsoDate } from '../../note/values/values.ts';

const weekdays = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;

/** The name of a date's weekday. */
export const weekdayName = (date: IsoDate): string => weekdays[weekdayOf(dayNumber(date))]!;

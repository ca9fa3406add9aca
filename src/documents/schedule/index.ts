import type { IsoDate } from '../../note/values/values.ts';
import { safeJson } from '../safe-json.ts';
import { calendarOf } from '../calendar/calendar.ts';
import type { Format } from '../format.ts';
import type { NotRead } from '../not-read.ts';
import { calendarItems, scheduleData, scheduleText, type NoteSchedule } from './schedule.ts';

export { calendarItems, scheduleData, scheduledOf, type NoteSchedule } from './schedule.ts';

export type ScheduleFormat = 'text' | 'json' | 'ics';

/** When and for whom a schedule is written. */
export interface Written {
  readonly today: IsoDate;
  readonly now: Date;
  /** The name of the practice. */
  readonly name: string;
  /** Text of the calendar that this one replaces. */
  readonly replaces?: string | undefined;
  /** Notes that could not be looked at; none where nothing is said. */
  readonly notRead?: readonly NotRead[];
}

/** The forms of a schedule, the usual one first; a calendar without an entry is an empty text. */
export const scheduleFormats: Readonly<
  Record<ScheduleFormat, Format<[schedules: readonly NoteSchedule[], written: Written]>>
> = {
  text: {
    write: (schedules, { today, notRead }) => scheduleText(schedules, today, notRead),
    ending: 'txt',
    title: 'Text',
  },
  json: {
    write: (schedules, { today, notRead }) =>
      `${safeJson({ wheal: 1, asOf: today, ...scheduleData(schedules, notRead) }, 2)}\n`,
    ending: 'json',
    title: 'JSON',
  },
  ics: {
    write: (schedules, { now, name, replaces }) =>
      calendarOf(calendarItems(schedules), { now, name, replaces }),
    ending: 'ics',
    title: 'Calendar',
  },
};

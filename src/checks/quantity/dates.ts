import type { Check } from '../check.ts';
import { respell } from './_respell.ts';
import { format } from '../sources.ts';

type Row = Pick<Check, 'code' | 'title' | 'why' | 'messages' | 'alternatives' | 'milder'>;

/** What is wrong with a date or a clock time as it was typed. */
const rows: readonly Row[] = [
  {
    code: 'quantity/no-such-date',
    title: 'A date that is not in the calendar',
    why: 'Ages, suture windows and overdue results are counted from dates.',
    messages: {
      main: '{typed} is not in the calendar: that month has {days} days. Check the day and the month.',
      month: '{typed} is not in the calendar: there are twelve months. Write year, month, day.',
    },
    alternatives: { readAs: ['other-date'] },
  },
  {
    code: 'quantity/date-form',
    title: 'A date in a form that can be misread',
    why: '03/02/2026 is the 2nd of March to some and the 3rd of February to others.',
    milder: { sent: 'warning' },
    messages: {
      sent: '“{typed}” says that it was sent, and not on which day. Write the day, such as 2026-03-02.',
      main: 'Write the date as {first}: year, month, day.',
      ambiguous: '{typed} can mean {first} or {second}. Write the one that was meant, as year, month, day.',
      'no-day':
        '{typed} names no day. Write year, month, day, such as 2026-03-02, or `??` until it is known.',
      'short-year': '{typed} leaves open which part is the year. Write year, month, day, such as 2026-03-02.',
    },
  },
  {
    code: 'quantity/no-such-time',
    title: 'A time that is not on the clock',
    why: 'The order of what was done, and how long a cream was on, are judged by clock times.',
    messages: {
      words:
        '“{typed}” after the date is not understood, so the date is not used. Write the date alone, and the rest under keys of its own, such as `by` and `how`.',
      main: '“{typed}” is not a clock time. Write local hours and minutes from 0:00 to 23:59, such as 10:05.',
    },
  },
];

export const checks: readonly Check[] = rows.map((row) => ({
  ...row,
  severity: 'error',
  sources: [format],
  fix: respell,
}));

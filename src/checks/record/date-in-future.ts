import type { Check } from '../check.ts';
import { datesOf, argsOf } from './_dates.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'record/date-in-future',
  severity: 'warning',
  title: 'A date that is still to come',
  why: 'A note records what has happened. A date in the future is most often a slip in the year or the month, and hides what is overdue.',
  sources: [format],
  messages: {
    visit: 'The visit is dated {date}, and today is {other}. Check the date.',
    out: 'The stitches are said to have come out on {date}, and today is {other}. Check the date.',
    sent: 'The specimen is said to have been sent on {date}, and today is {other}. Check the date.',
    received: 'The result is said to have come on {date}, and today is {other}. Check the date.',
    told: 'The patient is said to have been told on {date}, and today is {other}. Check the date.',
    reviewed: 'The result is said to have been reviewed on {date}, and today is {other}. Check the date.',
    done: 'The next step is said to have been done on {date}, and today is {other}. If it is only planned, write it under `next`.',
    tried:
      'Somebody is said to have tried to tell the patient on {date}, and today is {other}. Check the date.',
    event:
      'This event is dated {date}, and today is {other}. Check the date; an event is written once it has happened.',
    signed: 'The note is said to have been signed on {date}, and today is {other}. Check the date.',
    addendum: 'This addition is dated {date}, and today is {other}. Check the date.',
  },
  alternatives: { readAs: ['other-date'] },
  find(subject) {
    const { today } = subject;
    if (today === undefined) return [];
    const ahead = datesOf(subject).filter(({ date }) => date > today);
    // Where the visit itself is in the future, all that follows does too.
    const shown = ahead[0]?.form === 'visit' ? ahead.slice(0, 1) : ahead;
    return shown.map((one) => ({ at: one.leaf, form: one.form, args: argsOf(one, today) }));
  },
};

import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import { datesOf, argsOf } from './_dates.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'record/dates-out-of-order',
  severity: 'error',
  title: 'Something is dated before what it follows from',
  why: 'A specimen cannot be sent before the visit, nor a patient told before the result came. Due dates and follow-up are counted from these dates.',
  sources: [format, { source: 'closed-loop', mark: 'Q' }],
  messages: {
    collected: 'The tissue is said to have been taken on {date}, before {other}. Check both dates.',
    sent: 'The specimen is said to have been sent on {date}, before {other}. Check both dates.',
    received: 'The result is said to have come on {date}, before {other}. Check both dates.',
    told: 'The patient is said to have been told on {date}, before {other}. Check both dates.',
    reviewed: 'The result is said to have been reviewed on {date}, before {other}. Check both dates.',
    done: 'The next step is said to have been done on {date}, before {other}. Check both dates.',
    tried: 'Somebody is said to have tried to tell the patient on {date}, before {other}. Check both dates.',
    event: 'This event is dated {date}, before the visit on {other}. Check both dates.',
    signed: 'The note is said to have been signed on {date}, before the visit on {other}. Check both dates.',
    addendum: 'This addition is dated {date}, before the visit on {other}. Check both dates.',
    'before-visit': 'the visit',
    'before-collected': 'when the tissue was taken',
    'before-sent': 'when the specimen was sent',
    'before-received': 'when the result came',
  },
  alternatives: { readAs: ['other-date'] },
  find(subject) {
    const found: Report[] = [];
    for (const one of datesOf(subject)) {
      const { leaf, after, form, date } = one;
      if (after === undefined || date >= after.date) continue;
      const { start, end } = after.leaf;
      const related = [{ start, end, form: `before-${after.form}`, args: {} }];
      found.push({ at: leaf, form, args: argsOf(one, after.date), related });
    }
    return found;
  },
};

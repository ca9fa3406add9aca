import type { Check } from '../check.ts';
import { lateOf, lateReport } from './_plan.ts';
import { loop } from './_results.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'follow-up/step-not-done',
  severity: 'warning',
  title: 'A next step with no record that it was done',
  why: 'Of patients who needed an excision some never came back. A step is closed when the note says that it was taken.',
  sources: [loop, { source: 'lost-to-follow-up', mark: 'Q' }, format],
  messages: {
    main: 'The note does not say that this was done: {what}. It was due by {to}, {late} ago. Write `done` with the day, or plan it again under `next` with a date.',
  },
  find: (subject) =>
    lateOf(subject, 'next step')
      .filter(({ item }) => !item.unplanned)
      .map((late) => lateReport(late)),
};

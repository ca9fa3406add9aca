import type { Check } from '../check.ts';
import { lateOf, lateReport } from './_plan.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'follow-up/event-without-outcome',
  severity: 'warning',
  title: 'Bleeding, an infection or another event without an outcome',
  why: 'What was reported and not followed up is where a small complication becomes a large one.',
  sources: [format],
  messages: {
    main: 'The note does not say how this ended: {what}. Ask the patient, and write `outcome`; or add the next event with its outcome.',
  },
  find: (subject) => lateOf(subject, 'event outcome').map((late) => lateReport(late)),
};

import type { Check } from '../check.ts';
import { lateOf, lateReport } from './_plan.ts';
import { sourcesDiffer, loop, far } from './_results.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'follow-up/attempts-only',
  severity: 'error',
  milder: { main: 'warning' },
  sourcesDiffer,
  title: 'Attempts to reach the patient, none successful',
  why: 'A voicemail is no proof that the patient heard it. Where the telephone fails, a letter with proof of delivery or the primary care clinician may work.',
  sources: [loop, { source: 'result-follow-up', mark: 'Q' }, format],
  messages: {
    main: 'The patient has not been told the result of {name}: {what}. That was due by {to}. Try another way, and write when the patient was told.',
    urgent:
      'The patient has not been told the result of {name}, which cannot wait: {what}. That was due by {to}. Try another way today.',
  },
  find: (subject) =>
    lateOf(subject, 'telling the patient')
      .filter(({ item }) => item.what !== undefined)
      .map((late) => lateReport(late, { form: late.item.urgent || late.days >= far ? 'urgent' : 'main' })),
};

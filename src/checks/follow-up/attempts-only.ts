import type { Check } from '../check.ts';
import { lateOf, lateReport } from './_plan.ts';
import { sourcesDiffer, loop, far } from './_results.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'follow-up/attempts-only',
  severity: 'error',
  milder: { main: 'warning' },
  sourcesDiffer,
  title: 'The patient was tried, and not reached',
  why: 'A voicemail tells nobody for sure. Where the telephone fails, a letter with proof of delivery or the family doctor may not.',
  sources: [loop, { source: 'result-follow-up', mark: 'Q' }, format],
  messages: {
    main: 'The patient does not know the result of {name}: {what}. It was to be told by {to}. Try another way, and write when the patient was told.',
    urgent:
      'The patient does not know the result of {name}, which cannot wait: {what}. It was to be told by {to}. Try another way today.',
  },
  find: (subject) =>
    lateOf(subject, 'telling the patient')
      .filter(({ item }) => item.what !== undefined)
      .map((late) => lateReport(late, { form: late.item.urgent || late.days >= far ? 'urgent' : 'main' })),
};

import type { Check } from '../check.ts';
import { lateOf, lateReport } from './_plan.ts';
import { sourcesDiffer, loop, far } from './_results.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'follow-up/not-told',
  severity: 'error',
  milder: { main: 'warning' },
  sourcesDiffer,
  title: 'A result that the patient has not been told',
  why: 'No news is not good news to a patient who waits. A cancer that the patient does not know of keeps growing; after four weeks any result that was not told is an error.',
  sources: [loop, { source: 'result-follow-up', mark: 'Q' }, format],
  messages: {
    main: 'The result of {name} is in, and the note does not say that the patient was told; that was due by {to}. Call, and write `told` with day, name and how.',
    urgent:
      'The result of {name} cannot wait, and the note does not say that the patient was told; that was due by {to}. Call today, and write `told` with day, name and how.',
    far: 'The patient was to hear the result of {name} by {to}, {late} ago, and the note does not say so. Call today, and write `told` with day, name and how.',
  },
  find: (subject) =>
    lateOf(subject, 'telling the patient')
      .filter(({ item }) => item.what === undefined)
      .map((late) =>
        lateReport(late, { form: late.item.urgent ? 'urgent' : late.days >= far ? 'far' : 'main' }),
      ),
};

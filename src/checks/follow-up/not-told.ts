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
  why: 'No news is not good news to a patient who waits. A cancer that nobody told grows on; from four weeks on any untold result is an error.',
  sources: [loop, { source: 'result-follow-up', mark: 'Q' }, format],
  messages: {
    main: 'The result of {name} is there, and the note does not say that the patient was told; that was due by {to}. Call, and write `told` with day, name and way.',
    urgent:
      'The result of {name} cannot wait, and the note does not say that the patient was told; that was due by {to}. Call today, and write `told` with day, name and way.',
    far: 'The result of {name} has not been told for {late} past {to}. Call today, and write `told` with day, name and way.',
  },
  find: (subject) =>
    lateOf(subject, 'telling the patient')
      .filter(({ item }) => item.what === undefined)
      .map((late) =>
        lateReport(late, { form: late.item.urgent ? 'urgent' : late.days >= far ? 'far' : 'main' }),
      ),
};

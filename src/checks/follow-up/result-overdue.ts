import type { Check } from '../check.ts';
import { lateOf, lateReport, sameSpecimen, type Late } from './_plan.ts';
import { loop, far } from './_results.ts';
import { format } from '../sources.ts';

/** Of the results that one container still owes the one that is late by most days: they are asked for in one call. */
const latestOfEach = (late: readonly Late[]): readonly Late[] =>
  late.filter(
    (one, at) =>
      !late.some(
        (other, place) =>
          sameSpecimen(one.item, other.item) &&
          (other.days > one.days || (other.days === one.days && place < at)),
      ),
  );

export const check: Check = {
  code: 'follow-up/result-overdue',
  severity: 'error',
  milder: { main: 'warning' },
  sourcesDiffer: {
    how: 'Leaflets ask patients to call after 10 working days, a practice calls after 14 days, laboratories promise 1 to 3 working days. Ten working days are followed.',
    settings: ['overdue.result', 'overdue.fungal-culture', 'overdue.mycobacterial-culture'],
  },
  title: 'A result that is overdue',
  why: 'Nobody misses a result that never comes unless somebody tracks it. Four weeks after its due date it is an error.',
  sources: [
    loop,
    { source: 'result-follow-up', mark: 'Q' },
    { source: 'result-leaflets', mark: 'Q' },
    format,
  ],
  messages: {
    main: 'No result of {name} is in the note; it was due by {to}, {late} ago. Call the laboratory, and write what came under `results`.',
    far: 'Still no result of {name}: it was due by {to}, {late} ago. The specimen may be lost. Call the laboratory and the patient today.',
  },
  find(subject) {
    const unsent = lateOf(subject, 'specimen to send');
    return latestOfEach(lateOf(subject, 'result'))
      .filter(({ item }) => !unsent.some((one) => sameSpecimen(one.item, item)))
      .map((late) => lateReport(late, { form: late.days >= far ? 'far' : 'main' }));
  },
};

import type { Report } from '../../note/tree/finding.ts';
import { asksOf } from '../../followup/report.ts';
import { saysNothing } from '../../followup/loops.ts';
import type { Result } from '../../note/generated/types.ts';
import { within } from '../../note/tree/tree.ts';
import type { Check, Subject } from '../check.ts';
import { lateOf, lateReport } from './_plan.ts';
import { loop } from './_results.ts';
import { format } from '../sources.ts';

/** Of a result that asks for a step something follows: an excision, a new sample, at least an examination. */
function nothingAfter({ diagnosis, next }: Result, { tables }: Subject): Report | undefined {
  if (diagnosis?.value === undefined || next?.value === undefined || !saysNothing(next.value))
    return undefined;
  const ask = asksOf(diagnosis.value, tables)[0];
  if (ask === undefined) return undefined;
  const related = [{ ...within(diagnosis.node, ask.from, ask.to), form: 'diagnosis', args: {} }];
  return { at: next, form: 'nothing', args: { name: ask.name }, related };
}

function nothingPlanned(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const { specimen } of subject.note.procedures ?? [])
    for (const { results } of specimen ?? [])
      for (const result of results ?? []) {
        const report = nothingAfter(result, subject);
        if (report !== undefined) found.push(report);
      }
  return found;
}

export const check: Check = {
  code: 'follow-up/no-plan',
  severity: 'warning',
  title: 'A diagnosis that needs a plan, and none in the note',
  why: 'The patient knows, and everybody thinks that somebody else has made the appointment.',
  sources: [loop, { source: 'insurer-tips', mark: 'Q' }, format],
  messages: {
    main: 'This diagnosis needs a plan, and the note has none. Write the next step under `next`.',
    nothing:
      'The report says {name}, and the note says that nothing is needed. If that is wrong, write the next step; if it was decided, accept this with the reason.',
    diagnosis: 'what asks for a step',
  },
  find: (subject) => [
    ...lateOf(subject, 'next step')
      .filter(({ item }) => item.unplanned)
      .map((late) => lateReport(late)),
    ...nothingPlanned(subject),
  ],
};

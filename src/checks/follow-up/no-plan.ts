import type { Report } from '../../note/tree/finding.ts';
import { saysNothing } from '../../followup/results.ts';
import type { Result } from '../../note/generated/types.ts';
import { phrasesOf } from '../../note/words/phrases.ts';
import { within } from '../../note/tree/tree.ts';
import type { Check, Subject } from '../check.ts';
import { lateOf, lateReport } from './_plan.ts';
import { loop } from './_results.ts';
import { format } from '../sources.ts';

/** Of every melanoma something follows: an excision, or at least an examination of the skin. */
function afterMelanoma({ diagnosis, next }: Result, { tables }: Subject): Report | undefined {
  if (diagnosis?.value === undefined || next?.value === undefined || !saysNothing(next.value))
    return undefined;
  const mention = phrasesOf(tables.followUp.findings)
    .mentionsIn(diagnosis.value)
    .find(({ row, standing }) => row.name === 'melanoma' && standing === 'asserted');
  if (mention === undefined) return undefined;
  const related = [{ ...within(diagnosis.node, mention.from, mention.to), form: 'diagnosis', args: {} }];
  return { at: next, form: 'nothing', args: { name: mention.row.name }, related };
}

function nothingAfterMelanoma(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const { specimen } of subject.note.procedures ?? [])
    for (const { results } of specimen ?? [])
      for (const result of results ?? []) {
        const report = afterMelanoma(result, subject);
        if (report !== undefined) found.push(report);
      }
  return found;
}

export const check: Check = {
  code: 'follow-up/no-plan',
  severity: 'warning',
  title: 'A diagnosis that asks for a plan, and none in the note',
  why: 'The patient knows, and everybody thinks that somebody else has made the appointment.',
  sources: [loop, { source: 'insurer-tips', mark: 'Q' }, format],
  messages: {
    main: 'This diagnosis asks for a plan, and the note has none. Write what happens under `next`, or `none needed`.',
    nothing:
      'The diagnosis is {name}, and the note says that nothing is to be done. If that is not so, write what happens; if it was decided, accept this with the reason.',
    diagnosis: 'the diagnosis',
  },
  find: (subject) => [
    ...lateOf(subject, 'next step')
      .filter(({ item }) => item.unplanned)
      .map((late) => lateReport(late)),
    ...nothingAfterMelanoma(subject),
  ],
};

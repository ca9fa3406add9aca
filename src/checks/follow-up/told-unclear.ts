import type { Report } from '../../note/tree/finding.ts';
import type { Check, Subject } from '../check.ts';
import { loopsOf } from '../../followup/loops.ts';
import { format } from '../sources.ts';
import { loop } from './_results.ts';

/** What is said of telling and leaves open whether the patient heard it, where the result asks for a step. */
function unsureOf({ note, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const { specimen } of note.procedures ?? [])
    for (const one of specimen ?? [])
      for (const { told, unsure } of loopsOf(one, tables, note))
        for (const { how } of told === undefined ? unsure : [])
          if (how?.value !== undefined) found.push({ at: how, args: { how: how.value } });
  return found;
}

export const check: Check = {
  code: 'follow-up/told-unclear',
  severity: 'warning',
  title: 'Words that do not say that the patient heard the result',
  why: 'A letter, a message or a copy may stay unread. For a result that needs nothing that is enough; a result that needs a step is open until the patient is known to have heard it.',
  sources: [loop, { source: 'result-follow-up', mark: 'Q' }, format],
  messages: {
    main: '`{how}` does not say that the patient heard this result, and it needs a step. If the patient heard it, write how: telephone, visit, message read. If not, write it under `attempts`, and call.',
  },
  find: unsureOf,
};

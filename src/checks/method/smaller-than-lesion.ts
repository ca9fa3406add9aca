import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import { rowsIn } from '../words.ts';
import { surelyMm } from './_lesion-size.ts';
import { format } from '../sources.ts';

/** What may be taken out through a smaller opening, or was meant to be taken in part. */
const inPart =
  /\b(?:cysts?|lipomas?|subcutaneous|pilomatri\w+|abscess|part|partial|partially|portion|central|edge|debulk\w*|incisional|sample|representative|staged|serial)\b/i;

/** Whether the whole of the lesion was to be taken out, as far as the words say. */
const isWhole = ({ lesion, method, question, remarks = [] }: Procedure, { methods }: Tables): boolean =>
  rowsIn(methods, method)[0]?.name === 'excisional' &&
  ![lesion, method, question, ...remarks].some((leaf) => inPart.test(leaf?.text ?? ''));

function smaller(procedure: Procedure, tables: Tables): Report | undefined {
  const { size, lesion } = procedure;
  if (size === undefined || lesion === undefined || !isWhole(procedure, tables)) return undefined;
  const taken = Math.max(0, ...(size.value?.mm ?? []));
  const wide = surelyMm(procedure);
  if (wide === undefined || taken === 0 || taken >= wide) return undefined;
  const related = [{ start: lesion.start, end: lesion.end, form: 'lesion', args: {} }];
  return { at: size, args: { size: size.text, lesion: wide }, related };
}

export const check: Check = {
  code: 'method/smaller-than-lesion',
  severity: 'warning',
  title: 'An excision smaller than its lesion',
  why: 'An excision takes the whole lesion with some skin around it. A smaller size is that of the lesion, a slip, or a part of it, and then it is an incisional biopsy.',
  sources: [{ source: 'biopsy-guide-afp', mark: 'Q' }, format],
  messages: {
    main: 'The excision is {size}, and the lesion {lesion} mm. Check both; if only a part was taken, the method is incisional.',
    lesion: 'the lesion',
  },
  alternatives: { readAs: [] },
  find: ({ note, tables }) =>
    (note.procedures ?? [])
      .map((procedure) => smaller(procedure, tables))
      .filter((report) => report !== undefined),
};

import type { Report } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Procedure } from '../../note/generated/types.ts';
import { readOrientation } from '../../note/words/orientation.ts';
import { phrasesOf } from '../../note/words/phrases.ts';
import { within, type Range } from '../../note/tree/tree.ts';
import { isAbsent } from '../absent.ts';
import type { Check, Subject } from '../check.ts';
import { methodName } from '../method/_procedure.ts';
import { format } from '../sources.ts';
import { sentSpecimens } from './_sent.ts';

/** "6 mm" is no malignant melanoma. */
const isMillimeters = (text: string, from: number, to: number): boolean =>
  text.slice(from, to) === 'mm' || (to - from === 2 && /\d\s*$/.test(text.slice(0, from)));

/** Where the question or the lesion's description suspects or names a malignancy; the first counts. */
function malignancyIn({ question, lesion }: Procedure, { tables }: Subject): Range | undefined {
  const phrases = phrasesOf(tables.followUp.findings);
  for (const leaf of [question, lesion]) {
    const text = leaf?.value;
    if (leaf === undefined || text === undefined) continue;
    const mention = phrases
      .mentionsIn(text)
      .find(
        ({ row, standing, from, to }) =>
          row.urgent && (standing === 'asserted' || standing === 'asked') && !isMillimeters(text, from, to),
      );
    if (mention !== undefined) return within(leaf.node, mention.from, mention.to);
  }
  return undefined;
}

/** Whether another text of the procedure says how the tissue is turned, or that it is not. */
const saysElsewhere = ({ remarks = [], lesion, question, instrument }: Procedure): boolean =>
  [...remarks, lesion, question, instrument].some((leaf) => {
    const text = leaf?.value;
    if (text === undefined) return false;
    const { marks } = readOrientation(text);
    return (
      marks.some(({ kind, places }) => kind !== undefined && places.length > 0) || /\borient/i.test(text)
    );
  });

/** A text that names a mark, and no place of it. */
function isNowhere({ value }: Leaf<string>): boolean {
  if (value === undefined) return false;
  const { marks, unoriented } = readOrientation(value);
  const named = marks.length > 0 || /\borient|\bmarked\b/i.test(value);
  return named &&
    unoriented === undefined &&
    !/\b(?:diagram|map|see|photo|toward|tip|pole|edge|end)\b|\d/i.test(value)
    ? marks.every(({ places }) => places.length === 0)
    : false;
}

export const check: Check = {
  code: 'specimen/orientation-missing',
  misses: ({ form }) => (form === 'main' ? 'orientation' : undefined),
  severity: 'information',
  title: 'No orientation of tissue with a suspected malignancy',
  why: 'Where a margin is involved, a mark at a known place of the tissue says where to cut again. It is reported only for an excision whose question or lesion names a malignancy; small excisions with little suspicion go without one, and `not oriented` is enough.',
  sources: [{ source: 'orientation-note', mark: 'Q' }, { source: 'orientation-guide', mark: 'Q' }, format],
  messages: {
    main: 'A malignancy is suspected, and the note does not say how the tissue is oriented. Write `orientation`: the mark and its margin or hour, or `not oriented`.',
    nowhere:
      'The tissue is marked, and the note does not say where. Write the margin or the hour, such as `suture at 12 o’clock (superior)`.',
    named: 'the malignancy',
  },
  find(subject) {
    const found: Report[] = [];
    const asked = new Set<Procedure>();
    for (const { procedure, specimen } of sentSpecimens(subject)) {
      const { orientation } = specimen;
      if (orientation !== undefined) {
        asked.add(procedure);
        if (isNowhere(orientation)) found.push({ at: orientation, form: 'nowhere' });
      } else if (!asked.has(procedure)) {
        asked.add(procedure);
        const report = missing(procedure, specimen, subject);
        if (report !== undefined) found.push(report);
      }
    }
    return found;
  },
};

function missing(
  procedure: Procedure,
  specimen: NonNullable<Procedure['specimen']>[number],
  subject: Subject,
): Report | undefined {
  if (methodName(procedure, subject) !== 'excisional' || !isAbsent(subject, specimen, 'orientation'))
    return undefined;
  if (procedure.specimen?.some(({ keys }) => keys.has('orientation')) === true) return undefined;
  const malignancy = malignancyIn(procedure, subject);
  if (malignancy === undefined || saysElsewhere(procedure)) return undefined;
  return { at: specimen.head, related: [{ ...malignancy, form: 'named', args: {} }] };
}

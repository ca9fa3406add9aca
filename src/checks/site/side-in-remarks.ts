import type { Report } from '../../note/tree/finding.ts';
import type { Check, Subject } from '../check.ts';
import { otherSideIn } from './_other-side.ts';
import { located, ofLocated, placeOf, records, type Located } from './_side.ts';
import { format } from '../sources.ts';

/** What was there before, or is to be done another day. */
const anotherTime =
  /\b(?:(?:19|20)\d\d|ago|last (?:year|month|week|visit|time)|past|earlier|formerly|remote|old|healed|will|plans?|planned|next|later|recheck|monitor|observe|watch|deferred|declined|postponed|scheduled|return)\b/i;
/** What is known already is not what is being sampled. */
const known =
  /\bs\/p\b|\bstatus post\b|\b(?:BCC|SCC|carcinoma|cancer|melanoma)\b[^.;]*\b(?:excised|removed|treated|mohs|cured|resected)\b|\b(?:excised|removed|treated|mohs|cured|resected)\b[^.;]*\b(?:BCC|SCC|carcinoma|cancer|melanoma)\b/i;
/** What says that the other side is another place, or is as it should be. */
const anotherPlace =
  /\b(?:cryo\w*|liquid nitrogen|LN2|AKs?|normal|clear|stable|benign|unaffected|uninvolved|spared|separate|different|not (?:biopsied|sampled|treated|involved)|no lesions?)\b/i;

const isOther = (sentence: string): boolean =>
  anotherTime.test(sentence) || known.test(sentence) || anotherPlace.test(sentence);

/** Whether another procedure of the visit is at the same place of the other side. */
const isSampledThere = (one: Located, subject: Subject): boolean =>
  located(subject).some(
    ({ reading }) => reading.base === one.reading.base && reading.side !== one.reading.side,
  );

function inRemarks(one: Located, subject: Subject): readonly Report[] {
  const { remarks = [], complications } = one.procedure;
  const found: Report[] = [];
  for (const leaf of [...remarks, ...(subject.note.remarks ?? []), complications]) {
    const other = otherSideIn(leaf, one, isOther);
    const [word] = one.reading.sides;
    if (other === undefined || word === undefined || isSampledThere(one, subject)) continue;
    const { at, first, second } = other;
    const related = [{ ...placeOf(one.site, word), form: 'first', args: { side: first } }];
    found.push({ at, args: { first, second }, related });
  }
  return found;
}

export const check: Check = {
  code: 'site/side-in-remarks',
  severity: 'warning',
  title: 'Remarks name the same place on the other side',
  why: 'One of the two sides is wrong, and nobody can tell later which. What the remarks say about an earlier lesion or another day is not reported.',
  sources: [records, format],
  messages: {
    main: 'The site is on the {first}, and this names the same place on the {second}. If another lesion is meant, say so; if not, ask which side it is.',
    first: 'the side of the site: {side}',
  },
  find: ofLocated(inRemarks),
};

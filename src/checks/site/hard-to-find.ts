import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { SiteReading } from '../../note/words/site.ts';
import type { Check, Subject } from '../check.ts';
import { identification } from './_side.ts';
import { rowsIn } from '../words.ts';

/** Whether the record has what finds the place again: a photograph, landmarks, or another procedure that has them. */
const findable = ({ photo, landmarks, keys }: Procedure): boolean =>
  photo?.value === true || photo?.pending === true || landmarks !== undefined || keys.has('same-as');

/** Whether the words of the site find the place by themselves. */
const precise = ({ base, landmarks }: SiteReading): boolean => base.small || landmarks;

function lost({ note, siteOf, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const procedure of note.procedures ?? []) {
    const reading = siteOf(procedure);
    const { site, method } = procedure;
    if (site === undefined || reading === undefined || precise(reading) || findable(procedure)) continue;
    if (rowsIn(tables.methods, method)[0]?.takesTissue === false) continue;
    found.push({ at: site, form: reading.vague ? 'vague' : 'main', args: { site: reading.base.name } });
  }
  return found;
}

export const check: Check = {
  code: 'site/hard-to-find',
  severity: 'information',
  title: 'Neither landmarks nor a photograph',
  why: 'Weeks later a small wound has healed, and patients and clinicians point at the wrong place. A photograph or distances to two landmarks prevent it.',
  sources: [identification, { source: 'site-best-practices', mark: 'Q' }],
  messages: {
    main: 'The note has neither `landmarks` nor a `photo`, so the place on the {site} is hard to find again. Write distances to two fixed points, or take a photograph.',
    vague:
      '"{site}" alone does not find the place again, and the note has neither `landmarks` nor a `photo`. Name the part, and write distances to two fixed points.',
  },
  find: lost,
};

import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { SiteReading } from '../../note/words/site.ts';
import type { Check, Subject } from '../check.ts';
import { identification } from './_side.ts';

/** What tells two sites apart in words, without regard to their order; landmarks count as they are written. */
const keyOf = ({ base, side, qualifiers, landmarks }: SiteReading, text: string): string =>
  landmarks ? text.toLowerCase() : [base.name, side ?? '', ...[...qualifiers].sort()].join('|');

/** Whether something else than the site tells two procedures at one site apart. */
function toldApart(one: Procedure, two: Procedure): boolean {
  const [first, second] = [one.landmarks?.value, two.landmarks?.value];
  const places = first !== undefined && second !== undefined && first !== second;
  return places || one.relation?.value !== two.relation?.value;
}

function repeated({ note, siteOf }: Subject): readonly Report[] {
  const found: Report[] = [];
  const seen = new Map<string, Procedure>();
  for (const procedure of note.procedures ?? []) {
    const reading = siteOf(procedure);
    const { site } = procedure;
    if (site === undefined || reading === undefined || procedure.keys.has('same-as')) continue;
    const key = keyOf(reading, site.text);
    const before = seen.get(key);
    if (before?.site === undefined) seen.set(key, procedure);
    else if (!toldApart(before, procedure))
      found.push({
        at: site,
        args: { site: site.text },
        related: [{ start: before.site.start, end: before.site.end, form: 'first', args: {} }],
      });
  }
  return found;
}

export const check: Check = {
  code: 'site/repeated',
  severity: 'information',
  title: 'Two procedures at the same site, with nothing that tells them apart',
  why: 'When several places were sampled the wrong one is more often taken for the right one later.',
  sources: [identification],
  messages: {
    main: 'Another procedure of this visit has the site "{site}" too. If it is the same lesion, write `same-as` with the label of its specimen; if not, add landmarks that tell the two apart.',
    first: 'the same site',
  },
  find: repeated,
};

import type { Procedure } from '../../note/generated/types.ts';
import type { SiteReading } from '../../note/words/site.ts';
import type { Sourced } from '../../reference/types.ts';
import type { Check, Report, Subject } from '../check.ts';

const identification: Sourced = { source: 'site-identification', mark: 'Q' };

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
    if (tables.methods.find(method?.value ?? '')?.takesTissue === false) continue;
    found.push({ at: site, form: reading.vague ? 'vague' : 'main', args: { site: reading.base.name } });
  }
  return found;
}

export const checks: readonly Check[] = [
  {
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
  },
  {
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
  },
];

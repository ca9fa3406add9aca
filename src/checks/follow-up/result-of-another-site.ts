import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { readSite, type SiteReading } from '../../note/words/site.ts';
import { within } from '../../note/tree/tree.ts';
import type { SiteRegion } from '../../reference/sites.ts';
import type { Check, Subject } from '../check.ts';
import { format } from '../sources.ts';

type Area = 'head' | 'trunk' | 'arm' | 'leg';

/** Parts of the body that nobody takes for each other; what lies between two belongs to both. */
const areas: ReadonlyMap<SiteRegion, readonly Area[]> = new Map<SiteRegion, readonly Area[]>([
  ['scalp', ['head']],
  ['face', ['head']],
  ['eye', ['head']],
  ['nose', ['head']],
  ['ear', ['head']],
  ['mouth', ['head']],
  ['neck', ['head', 'trunk']],
  ['chest', ['trunk']],
  ['breast', ['trunk']],
  ['abdomen', ['trunk']],
  ['back', ['trunk']],
  ['axilla', ['trunk', 'arm']],
  ['shoulder', ['trunk', 'arm']],
  ['arm', ['arm']],
  ['hand', ['arm']],
  ['groin', ['trunk', 'leg']],
  ['genital', ['trunk', 'leg']],
  ['buttock', ['trunk', 'leg']],
  ['leg', ['leg']],
  ['foot', ['leg']],
]);

const side = /\b(?:left|right)\b/i;

/** Words under which a report may well name another place. */
const aside =
  /\b(?:history|hx|prior|previous|previously|compare|compared|similar|see|also|another|other|recommend)\b/i;

/** Whether two places can't be one: left and right, or parts of the body far from each other. */
function differ(one: SiteReading, other: SiteReading): boolean {
  const sides = [one.side, other.side];
  if (sides.includes('left') && sides.includes('right')) return true;
  const [a, b] = [areas.get(one.base.region), areas.get(other.base.region)];
  return a !== undefined && b !== undefined && !a.some((area) => b.includes(area));
}

/** The first place with a side that a report names and that is not the site of its specimen. */
function elsewhere(
  diagnosis: Leaf<string> | undefined,
  site: SiteReading,
  { tables }: Subject,
): { readonly from: number; readonly to: number; readonly words: string } | undefined {
  for (const { 0: typed, index } of (diagnosis?.value ?? '').matchAll(/[^,:;.()]+/g)) {
    if (!side.test(typed)) continue;
    if (aside.test(typed)) return undefined;
    const words = typed.trim();
    const reading = readSite(words, tables.sites);
    if (reading === undefined || !differ(reading, site)) continue;
    const from = index + typed.indexOf(words);
    return { from, to: from + words.length, words };
  }
  return undefined;
}

function reportsOf(procedure: Procedure, subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const { results = [] } of procedure.specimen ?? [])
    for (const { diagnosis } of results) {
      if (diagnosis?.value === undefined || !side.test(diagnosis.value)) continue;
      const site = subject.siteOf(procedure);
      const other = site && elsewhere(diagnosis, site, subject);
      if (other === undefined) continue;
      const { start, end, text } = procedure.site!;
      found.push({
        at: within(diagnosis.node, other.from, other.to),
        args: { found: other.words, site: text },
        related: [{ start, end, form: 'site', args: {} }],
      });
    }
  return found;
}

export const check: Check = {
  code: 'follow-up/result-of-another-site',
  severity: 'warning',
  title: 'A result that names another site than its specimen',
  why: 'A report that was filed under the wrong specimen, or a container with the wrong label, sends the surgeon to the wrong place and leaves a tumor where it is.',
  sources: [{ source: 'insurer-tips', mark: 'Q' }, { source: 'laterality-records', mark: 'Q' }, format],
  messages: {
    main: 'The result tells of “{found}”, and this specimen was taken from “{site}”. Compare report, request and label before anybody acts on it.',
    site: 'where the specimen was taken',
  },
  find: (subject) => (subject.note.procedures ?? []).flatMap((procedure) => reportsOf(procedure, subject)),
};

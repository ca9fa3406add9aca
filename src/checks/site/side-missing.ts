import type { Report } from '../../note/tree/finding.ts';
import { nearestSite } from '../../note/words/site-nearest.ts';
import type { SiteRegion } from '../../reference/sites.ts';
import type { Check, Subject } from '../check.ts';
import { mended, mendWords } from './_mend.ts';
import { records, type Located, ofLocated } from './_side.ts';

/** Regions where the middle is an answer too. */
const middled: ReadonlySet<SiteRegion> = new Set(['chest', 'abdomen', 'back']);

function missing(
  { site, reading: { base, side, contradiction } }: Located,
  { tables }: Subject,
): readonly Report[] {
  if (base.side !== 'needed' || side !== undefined || contradiction !== undefined) return [];
  const near = nearestSite(site.text, tables.sites);
  const data = near?.reading.side === undefined ? undefined : mended(site, near);
  const form = middled.has(base.region) ? 'middle' : 'main';
  return [{ at: site, form, args: { site: base.name }, ...(data === undefined ? {} : { data }) }];
}

export const check: Check = {
  code: 'site/side-missing',
  severity: 'warning',
  title: 'Left or right not said',
  why: 'Without the side the next visit, the laboratory and the surgeon cannot tell which of two places was meant. Wrong-site surgery begins with such a note.',
  sources: [{ source: 'site-best-practices', mark: 'Q' }, records],
  messages: {
    main: 'The side is missing. Write whether it is the left or the right {site}.',
    middle: 'The side is missing. Write whether it is the left or the right {site}, or its midline.',
  },
  find: ofLocated(missing),
  fix: mendWords,
};

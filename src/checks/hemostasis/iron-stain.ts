import type { Report } from '../../note/tree/finding.ts';
import type { SiteRegion } from '../../reference/sites.ts';
import type { Check } from '../check.ts';
import { rowsIn } from '../words.ts';
import { siteIn } from './_procedure.ts';

const shown: ReadonlySet<SiteRegion> = new Set(['face', 'eye', 'nose', 'ear', 'mouth', 'neck']);

export const check: Check = {
  code: 'hemostasis/iron-stain',
  severity: 'information',
  title: 'An iron salt where a stain shows',
  why: 'Iron salts stain for up to three months and have left tattoos, which in a scar can also confuse the next biopsy.',
  sources: [
    { source: 'tattoo-2013', mark: 'Q' },
    { source: 'hemostatics-trial-2020', mark: 'Q' },
  ],
  messages: {
    main: '`{word}` can stain the skin for months, and this is {site}. Aluminum chloride does not.',
    site: 'the site',
  },
  alternatives: { readAs: [] },
  find(subject) {
    const found: Report[] = [];
    for (const procedure of subject.note.procedures ?? []) {
      const base = subject.siteOf(procedure)?.base;
      if (base === undefined || !shown.has(base.region)) continue;
      for (const leaf of procedure.hemostasis ?? []) {
        const rests = rowsIn(subject.tables.hemostasis, leaf).find(({ stains }) => stains === true);
        if (rests === undefined) continue;
        const args = { word: leaf.text, site: base.name };
        found.push({ at: leaf, args, related: siteIn(procedure), rests });
      }
    }
    return found;
  },
};

import type { Report } from '../../note/tree/finding.ts';
import { nearestSite } from '../../note/words/site-nearest.ts';
import type { Check } from '../check.ts';
import { mended, mendWords } from './_mend.ts';
import { format } from '../sources.ts';

const longestShown = 60;

const short = (text: string): string =>
  text.length > longestShown ? `${text.slice(0, longestShown).trimEnd()} …` : text;

export const check: Check = {
  code: 'site/unknown',
  severity: 'warning',
  title: 'No body site that Wheal knows',
  why: 'What depends on the site is then not judged: the side, the window for the stitches, what is under the skin, which dressing stays on.',
  sources: [format],
  messages: {
    main: 'No known body site is named in "{site}", so nothing that depends on the site is checked. Name it in plain anatomical words, or add it to the words of the practice file.',
    nearest:
      'No known body site is named in "{site}", so nothing that depends on the site is checked. The nearest is "{nearest}".',
  },
  find({ note, siteOf, tables }) {
    const found: Report[] = [];
    for (const procedure of note.procedures ?? []) {
      const { site } = procedure;
      if (site?.value === undefined || siteOf(procedure) !== undefined) continue;
      const near = nearestSite(site.value, tables.sites);
      if (near === undefined) found.push({ at: site, args: { site: short(site.value) } });
      else
        found.push({
          at: site,
          form: 'nearest',
          args: { site: short(site.value), nearest: near.text },
          data: mended(site, near),
        });
    }
    return found;
  },
  fix: mendWords,
};

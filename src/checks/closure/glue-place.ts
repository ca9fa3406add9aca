import type { Report } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Tables } from '../../practice/tables.ts';
import type { SiteRow } from '../../reference/sites.ts';
import type { Check, Subject } from '../check.ts';
import { rowsIn } from '../words.ts';

const isGlue = (how: Leaf<string> | undefined, tables: Tables): boolean =>
  rowsIn(tables.closures, how).some(({ name }) => name === 'tissue glue');

/** What glue at a site is reported as; undefined where it may hold. */
function formAt({ mucosa, region, group }: SiteRow): Pick<Report, 'form' | 'severity'> | undefined {
  if (mucosa) return { form: 'main' };
  if (region === 'eye') return { form: 'eye' };
  return group === 'joint extensor' ? { form: 'tension', severity: 'information' } : undefined;
}

function glued(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const procedure of subject.note.procedures ?? [])
    for (const how of [...(procedure.closure ?? []).map((one) => one.how), ...(procedure.dressing ?? [])]) {
      if (how === undefined || !isGlue(how, subject.tables)) continue;
      const base = subject.siteOf(procedure)?.base;
      const form = base === undefined ? undefined : formAt(base);
      if (base !== undefined && form !== undefined)
        found.push({ at: how, ...form, args: { site: base.name } });
    }
  return found;
}

export const check: Check = {
  code: 'closure/glue-place',
  severity: 'warning',
  title: 'Tissue glue where it should not be used',
  why: 'Tissue glue is not for mucosa, nor for skin near the eye, where it runs between the lids; and it gives way where the skin pulls, as over knuckles, elbows and knees.',
  sources: [{ source: 'tissue-glue-reference', mark: 'Q' }],
  messages: {
    main: 'Tissue glue on mucosa ({site}): it is not meant for that. Check site and closure.',
    eye: 'Tissue glue at the {site}: it is not meant for skin near the eye, where it can glue the lids. Check site and closure.',
    tension:
      'Tissue glue over the {site}, where the skin pulls: it may give way. Stitches are stronger there.',
  },
  alternatives: { readAs: [] },
  find: glued,
};

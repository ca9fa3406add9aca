import type { Check, Report, Subject } from '../check.ts';
import { rowsIn } from '../words.ts';

function glued(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  const { note, tables } = subject;
  for (const procedure of note.procedures ?? [])
    for (const { how } of procedure.closure ?? []) {
      if (how === undefined || !rowsIn(tables.closures, how).some(({ name }) => name === 'tissue glue'))
        continue;
      const base = subject.siteOf(procedure)?.base;
      if (base?.mucosa === true) found.push({ at: how, args: { site: base.name } });
      else if (base?.group === 'joint extensor')
        found.push({ at: how, form: 'tension', severity: 'information', args: { site: base.name } });
    }
  return found;
}

export const check: Check = {
  code: 'closure/glue-place',
  severity: 'warning',
  title: 'Tissue glue where it is not meant to be',
  why: 'Tissue glue is not for mucosa, and gives way where the skin pulls, as over knuckles, elbows and knees.',
  sources: [{ source: 'tissue-glue-reference', mark: 'Q' }],
  messages: {
    main: 'Tissue glue on mucosa ({site}): it is not meant for that. Check site and closure.',
    tension: 'Tissue glue over the {site}, where the skin pulls: it may give way. Stitches hold there.',
  },
  alternatives: { readAs: [] },
  find: glued,
};

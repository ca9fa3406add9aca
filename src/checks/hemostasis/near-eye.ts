import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { SiteRow } from '../../reference/sites.ts';
import type { Check, Subject } from '../check.ts';
import { rowsIn } from '../words.ts';
import { siteIn } from './_procedure.ts';

function nearSense(procedure: Procedure, base: SiteRow, { tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  const related = siteIn(procedure);
  const site = base.name;
  for (const leaf of base.nearEye ? (procedure.hemostasis ?? []) : []) {
    const rests = rowsIn(tables.hemostasis, leaf).find(({ stops }) => stops === 'chemical');
    if (rests !== undefined)
      found.push({ at: leaf, form: 'chemical', args: { word: leaf.text, site }, related, rests });
  }
  const form = base.nearEye ? 'eye' : 'ear';
  const place = base.nearEye ? 'eye' : 'ear canal';
  for (const leaf of procedure.preparation ?? []) {
    const rests = rowsIn(tables.preparations, leaf).find(({ keptFrom }) => keptFrom?.includes(place));
    if (rests !== undefined) found.push({ at: leaf, form, args: { word: leaf.text, site }, related, rests });
  }
  return found;
}

export const check: Check = {
  code: 'hemostasis/near-eye',
  severity: 'warning',
  title: 'A chemical where it can reach the eye or the ear',
  why: 'Chemical hemostatics burn the cornea; near the lids a barely moist applicator or heat is used. Chlorhexidine harms the cornea and, through the ear canal, the inner ear.',
  sources: [
    { source: 'procedure-text-hemostasis', mark: 'Q' },
    { source: 'chlorhexidine-label', mark: 'Q' },
  ],
  messages: {
    chemical:
      '`{word}` near the eye ({site}): a drop in the eye burns it. Use pressure or heat cautery, or a barely moist applicator with the eye covered.',
    eye: '`{word}` near the eye ({site}): its label keeps it out of the eyes. Use povidone-iodine that is made for the eye, or saline.',
    ear: '`{word}` in the ear canal ({site}): its label keeps it out of the ears. Use another preparation.',
    site: 'the site',
  },
  alternatives: { readAs: [] },
  find(subject) {
    return (subject.note.procedures ?? []).flatMap((procedure) => {
      const base = subject.siteOf(procedure)?.base;
      return base?.nearEye === true || base?.earCanal === true ? nearSense(procedure, base, subject) : [];
    });
  },
};

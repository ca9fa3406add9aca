import type { Report } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { KeptFrom, PreparationRow } from '../../reference/preparations.ts';
import type { Check, Subject } from '../check.ts';
import { mentions } from '../method/_procedure.ts';
import { rowsIn } from '../words.ts';

/** Words by which what is meant is the rinse, which is made for the mouth. */
const rinse = /\b(?:0?\.12|rinse|mouth\s?wash|oral)\b/i;

/** Whether a procedure is at such a place. Eye and ear canal have a check of their own. */
const isAt: Readonly<Partial<Record<KeptFrom, (procedure: Procedure, subject: Subject) => boolean>>> = {
  genital: (procedure, { siteOf }) => siteOf(procedure)?.base.region === 'genital',
  mouth(procedure, { siteOf }) {
    const base = siteOf(procedure)?.base;
    return base?.region === 'mouth' && base.mucosa;
  },
  wound: (procedure, subject) => mentions(procedure, subject).some(({ row }) => row.says === 'open'),
};

const places = ['genital', 'mouth', 'wound'] as const;

/** What the label of the substance alone says, whatever it is dissolved in. */
const substance = { source: 'chlorhexidine-label', mark: 'Q' } as const;

/** Where the label does not want it, and the procedure is; undefined where it may be. */
function placeOf(
  row: PreparationRow,
  at: Leaf<string>,
  procedure: Procedure,
  subject: Subject,
): (typeof places)[number] | undefined {
  const place = places.find((one) => row.keptFrom?.includes(one) && isAt[one]?.(procedure, subject));
  return place === 'mouth' && rinse.test(at.text) ? undefined : place;
}

const isTooYoung = ({ careBelowMonths = 0 }: PreparationRow, { dose }: Subject): boolean =>
  (dose.facts.months ?? Infinity) < careBelowMonths;

function judged(
  row: PreparationRow,
  at: Leaf<string>,
  procedure: Procedure,
  subject: Subject,
): readonly Report[] {
  const place = placeOf(row, at, procedure, subject);
  const site = subject.siteOf(procedure)?.base.name ?? procedure.site?.text ?? 'the site';
  const args = { word: at.text, site, months: row.careBelowMonths ?? 0 };
  return [
    ...(place === undefined ? [] : [{ at, form: place, args, rests: place === 'genital' ? substance : row }]),
    ...(isTooYoung(row, subject) ? [{ at, form: 'young', args, rests: row }] : []),
  ];
}

function find(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const procedure of subject.note.procedures ?? [])
    for (const leaf of procedure.preparation ?? [])
      for (const row of rowsIn(subject.tables.preparations, leaf))
        if (row.keptFrom !== undefined) found.push(...judged(row, leaf, procedure, subject));
  return found;
}

export const check: Check = {
  code: 'site/preparation-place',
  severity: 'warning',
  title: 'Chlorhexidine where its label does not want it, or on a newborn',
  why: 'Labels of chlorhexidine keep it off genital skin, out of the mouth and off open wounds, and ask for care under 2 months, since it may burn the skin there. It is never to reach the meninges, which no biopsy of skin does. Of an ulcerated lesion it is information, since the skin around it is what is prepared.',
  sources: [substance, { source: 'chlorhexidine-alcohol-label', mark: 'Q' }],
  messages: {
    genital:
      '`{word}` on genital skin ({site}): its label keeps it off. Use povidone-iodine, or saline; if it is on, rinse.',
    mouth:
      '`{word}` in the mouth ({site}): its label keeps it out. If it was the oral rinse, write that; else use another.',
    wound:
      '`{word}` at {site}, and the lesion is open: its label keeps it off open wounds. Keep it to the skin around.',
    young:
      '`{word}` under {months} months: its label asks for care, since it may burn the skin. Consider another.',
  },
  milder: { mouth: 'information', wound: 'information' },
  alternatives: { readAs: [] },
  find,
};

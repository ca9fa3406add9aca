import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check, Subject } from '../check.ts';
import { thinnerNames } from '../lookups.ts';
import { patientTexts } from '../patient-texts.ts';
import { rowsIn } from '../words.ts';

interface Thinner {
  readonly name: string;
  readonly start: number;
  readonly end: number;
}

function thinnerOf(subject: Subject): Thinner | undefined {
  const [found] = patientTexts(subject).told(thinnerNames(subject.tables));
  return found === undefined ? undefined : { name: found.row.name, ...found.at };
}

const holding: ReadonlySet<string | undefined> = new Set(['pressure', 'stitch', 'material']);

/** Whether nothing that is recorded presses on the wound or closes it. What is not recorded has its own finding. */
function isUnheld({ method, hemostasis, dressing, closure }: Procedure, tables: Tables): boolean {
  if (hemostasis === undefined || dressing === undefined) return false;
  if (rowsIn(tables.methods, method)[0]?.takesTissue !== true) return false;
  const held = hemostasis.some(
    (leaf) => leaf.pending || rowsIn(tables.hemostasis, leaf).some(({ stops }) => holding.has(stops)),
  );
  if (held || (closure ?? []).some(isClosedBy(tables))) return false;
  return dressing.every((leaf) => {
    const rows = rowsIn(tables.dressings, leaf);
    return rows.length > 0 && rows.every(({ name, ointment }) => name === 'none' || ointment === true);
  });
}

const isClosedBy =
  ({ closures }: Tables) =>
  ({ how, material }: NonNullable<Procedure['closure']>[number]): boolean => {
    const row = closures.find(how?.value ?? '');
    return (
      material !== undefined || (row !== undefined && row.name !== 'none' && row.name !== 'second intention')
    );
  };

function unheld(subject: Subject): readonly Report[] {
  const { note, tables } = subject;
  const found: Report[] = [];
  const open = (note.procedures ?? []).filter((procedure) => isUnheld(procedure, tables));
  const thinner = open.length === 0 ? undefined : thinnerOf(subject);
  if (thinner === undefined) return found;
  const { name, start, end } = thinner;
  for (const { hemostasis: [at] = [] } of open)
    if (at !== undefined)
      found.push({ at, args: { name }, related: [{ start, end, form: 'medicine', args: { name } }] });
  return found;
}

export const check: Check = {
  code: 'hemostasis/thinner-unheld',
  severity: 'information',
  title: 'A blood thinner, and neither pressure nor a dressing',
  why: 'Blood thinners go on for small skin procedures, since a clot is worse than a bleeding wound; then pressure or a dressing protects for the first hours. That is common practice; the sources read here only say that the medicine goes on.',
  sources: [
    { source: 'common', mark: 'common' },
    { source: 'accp-minor-skin', mark: 'Q2' },
  ],
  messages: {
    main: 'The patient takes {name}, and the note has neither pressure nor a stitch nor a dressing. If there was one, write it; if not, consider a pressure dressing.',
    medicine: '{name} is taken',
  },
  sourcesDiffer: {
    how: 'Some guidance continues newer blood thinners for small procedures, a German guideline leaves out the last dose before. That they go on is followed; nothing is said against it.',
    settings: ['severities'],
  },
  find: unheld,
};

import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import { stitchesOf } from '../../followup/sutures.ts';
import type { Tables } from '../../practice/tables.ts';
import { bounded } from '../bounded.ts';
import type { Check, Subject } from '../check.ts';
import { thinnerNames } from '../lookups.ts';
import { patientTexts } from '../patient-texts.ts';
import { punchOf } from '../punch.ts';
import { rowsIn } from '../words.ts';

/** From this size on a punch is more than most leave open: above the 4 mm of the trial on closure. */
const openFrom = 5;

const leftOpen: ReadonlySet<string> = new Set(['none', 'second intention']);

/** Whether a wound through the skin was left open, and nothing but pressure stopped it. */
function isHeldByPressure(procedure: Procedure, tables: Tables): boolean {
  const { hemostasis = [], closure = [], dressing = [] } = procedure;
  const punch = punchOf(procedure, tables);
  if (punch === undefined || punch.mm < openFrom || hemostasis.length === 0) return false;
  const open = closure.every(({ how, material }) => {
    const rows = rowsIn(tables.closures, how);
    return material === undefined && rows.every(({ name }) => leftOpen.has(name));
  });
  const pressed = hemostasis.every((leaf) => {
    const rows = rowsIn(tables.hemostasis, leaf);
    return rows.length > 0 && rows.every(({ stops }) => stops === 'pressure' || stops === 'none');
  });
  const bound = [...dressing, ...hemostasis].some(({ value = '' }) =>
    /pressure (?:dressing|bandage)|compress/i.test(value),
  );
  return open && pressed && !bound && stitchesOf(procedure, tables) === 'none';
}

function find(subject: Subject): readonly Report[] {
  const { note, tables } = subject;
  const wounds = (note.procedures ?? []).filter((procedure) => isHeldByPressure(procedure, tables));
  if (wounds.length === 0) return [];
  const told = patientTexts(subject)
    .told(thinnerNames(tables))
    .filter(({ row, why }) => row.bleeding !== undefined && why !== 'in the past')
    .sort(
      (one, other) => Number(other.row.bleeding?.mark === 'Q') - Number(one.row.bleeding?.mark === 'Q'),
    )[0];
  if (told === undefined) return [];
  const { row, at, why } = told;
  return wounds.flatMap(({ hemostasis: [first] = [] }) =>
    first === undefined
      ? []
      : [
          {
            at: first,
            severity: bounded(why === 'not sure' ? 'information' : 'warning', row.bleeding?.mark ?? 'M'),
            args: { name: row.name },
            related: [{ ...at, form: 'medicine', args: { name: row.name } }],
          },
        ],
  );
}

export const check: Check = {
  code: 'hemostasis/thinner-open-wound',
  severity: 'warning',
  title: 'A larger punch left open with pressure alone, on a blood thinner',
  why: 'Blood thinners go on for small skin procedures. With warfarin a study found bleeding in 2.5% instead of 0.7%, most of it later and at home. A punch of 5 mm or more that has neither a stitch nor anything but pressure is reported, unless there is a hemostatic or a pressure dressing. Aspirin was no risk of its own, and antiplatelets are information.',
  sources: [
    { source: 'warfarin-skin-surgery-2007', mark: 'Q' },
    { source: 'pressure-dressing-page', mark: 'Q2' },
    { source: 'common', mark: 'common' },
  ],
  messages: {
    main: 'The patient takes {name}, and a wound of this size was left open with pressure alone. Consider a stitch, a hemostatic or a pressure dressing; if there was one, write it. With warfarin, write the last INR.',
    medicine: '{name} is taken',
  },
  find,
};

import type { Report } from '../../note/tree/finding.ts';
import { isWithoutHelp } from '../../followup/home-care.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check, Subject } from '../check.ts';
import { rowsIn } from '../words.ts';
import { common } from './_place.ts';

/** A wound where the patient can't reach it, and nobody at home who could: told once, at what says that nobody helps. */
function outOfReach(subject: Subject): readonly Report[] {
  const { note, tables, siteOf } = subject;
  const helper = note.aftercare?.helper;
  if (helper === undefined || !isWithoutHelp(note, tables)) return [];
  const far = (note.procedures ?? []).filter(
    (procedure) => leavesWound(procedure, tables) && siteOf(procedure)?.base.outOfReach === true,
  );
  const first = far[0]?.site;
  if (first === undefined) return [];
  const related = far.flatMap(({ site }) =>
    site === undefined ? [] : [{ start: site.start, end: site.end, form: 'wound', args: {} }],
  );
  return [{ at: helper, args: { site: first.text }, related }];
}

/** Whether there is something to care for: tissue was taken, or the wound is covered. */
const leavesWound = ({ method, dressing = [] }: Procedure, tables: Tables): boolean =>
  rowsIn(tables.methods, method)[0]?.takesTissue ??
  dressing.some((leaf) => {
    const rows = rowsIn(tables.dressings, leaf);
    return rows.length === 0 || rows.some(({ name }) => name !== 'none');
  });

export const check: Check = {
  code: 'dressing/out-of-reach',
  severity: 'information',
  title: 'A wound out of reach, and nobody to help',
  why: 'On the back, the buttock or the foot many patients can neither see nor reach a wound. It is reported only where the note says that nobody helps (`helper` under `aftercare`); the handout then asks the patient to arrange it.',
  sources: [common],
  messages: {
    main: 'Nobody helps at home, and {site} may be out of reach of the patient. Arrange who changes the dressing: a visiting nurse, a visit here, or a dressing that can stay.',
    wound: 'the wound',
  },
  find: outOfReach,
};

import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import { rowsIn } from '../words.ts';
import { format } from '../sources.ts';

/** Whether the closure says in words that nothing was sewn, and no stitch stopped the bleeding. */
function isUnsewn({ closure = [], hemostasis = [] }: Procedure, tables: Tables): boolean {
  const unsewn = closure.every(({ how, material, technique, count }) => {
    const rows = rowsIn(tables.closures, how);
    const otherwise = material ?? technique ?? count;
    return rows.length > 0 && rows.every(({ stitched }) => !stitched) && otherwise === undefined;
  });
  return (
    closure.length > 0 &&
    unsewn &&
    !hemostasis.some((leaf) => rowsIn(tables.hemostasis, leaf).some(({ name }) => name === 'suture'))
  );
}

/** A day for stitches, past or planned. */
function dayOf({ suturesDue, suturesOut }: Procedure): Pick<Report, 'at' | 'form'> | undefined {
  const out = suturesOut?.find(({ on }) => on?.value !== undefined)?.on;
  if (out !== undefined) return { at: out, form: 'out' };
  return suturesDue?.value === undefined ? undefined : { at: suturesDue, form: 'main' };
}

/** A day for stitches of a wound that has none. */
function needless(procedure: Procedure, tables: Tables): Report | undefined {
  const day = dayOf(procedure);
  const how = procedure.closure?.[0]?.how;
  if (day === undefined || how === undefined || !isUnsewn(procedure, tables)) return undefined;
  const related = [{ start: how.start, end: how.end, form: 'closure', args: {} }];
  return { ...day, args: { how: how.text }, related };
}

export const check: Check = {
  code: 'closure/removal-without-stitches',
  severity: 'warning',
  title: 'No stitches, and a date for removing them',
  why: 'Stitches that the closure does not name get missed, and a patient comes in for stitches that do not exist.',
  sources: [format],
  messages: {
    main: 'Stitches are due here, and the closure says "{how}". Write the suture under `closure`, or remove the date if there are no stitches.',
    out: 'Stitches were removed here, and the closure says "{how}". Check which of the two is right.',
    closure: 'the closure',
  },
  alternatives: { readAs: [] },
  find: ({ note, tables }) =>
    (note.procedures ?? [])
      .map((procedure) => needless(procedure, tables))
      .filter((report) => report !== undefined),
};

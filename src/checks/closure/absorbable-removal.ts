import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check } from '../check.ts';
import { rowsIn } from '../words.ts';

/** A day for taking out stitches where every one of them is absorbed. */
function needless(procedure: Procedure, tables: Tables): Report | undefined {
  const { closure = [], suturesDue } = procedure;
  if (suturesDue?.value === undefined) return undefined;
  const rows = closure.map((one) => rowsIn(tables.materials, one.material)[0]);
  const absorbed = rows.length > 0 && rows.every((row) => row?.absorbable === true);
  return absorbed
    ? { at: suturesDue, args: { material: rows.map((row) => row?.name).join(', ') } }
    : undefined;
}

export const check: Check = {
  code: 'closure/absorbable-removal',
  severity: 'information',
  title: 'A removal date for absorbable stitches',
  why: 'Absorbable stitches need no removal, so either the material or the date may be a slip.',
  sources: [{ source: 'suture-chart', mark: 'Q' }],
  messages: {
    main: '{material} is absorbable and does not need to be removed. Check the material, or remove the date.',
  },
  find: ({ note, tables }) =>
    (note.procedures ?? [])
      .map((procedure) => needless(procedure, tables))
      .filter((report) => report !== undefined),
};

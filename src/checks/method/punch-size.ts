import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check } from '../check.ts';
import { rowsIn } from '../words.ts';
import { disproportionOf } from './_proportion.ts';

/** Diameters in mm that punches are made in. */
const made: readonly number[] = [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 10, 12];

function sizeReport(procedure: Procedure, tables: Tables): Report | undefined {
  const { size, method } = procedure;
  const [mm, second] = size?.value?.mm ?? [];
  if (size === undefined || mm === undefined) return undefined;
  if (rowsIn(tables.methods, method)[0]?.diameter !== true) return undefined;
  if (second !== undefined && second !== mm) return { at: size, form: 'two', args: { size: size.text } };
  // A size out of all proportion has a finding of its own.
  return made.includes(mm) || disproportionOf(procedure, tables) !== undefined
    ? undefined
    : { at: size, args: { size: size.text } };
}

export const check: Check = {
  code: 'method/punch-size',
  severity: 'information',
  title: 'A punch of a size that is not made',
  why: 'Punches come in sizes from 1 to 12 mm; another number is more likely the size of the lesion or a slip.',
  sources: [{ source: 'common', mark: 'common' }],
  messages: {
    main: 'A punch of {size} is not a size that is made. Write its diameter: 3 mm, 4 mm, 6 mm.',
    two: 'A punch has one diameter, and {size} gives two. If this is the lesion, write it under `lesion`.',
  },
  alternatives: { readAs: ['tenth'] },
  find: ({ note, tables }) =>
    (note.procedures ?? [])
      .map((procedure) => sizeReport(procedure, tables))
      .filter((report) => report !== undefined),
};

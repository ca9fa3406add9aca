import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check, Report } from '../check.ts';
import { isPunchUsed } from '../punch.ts';
import { rowsIn } from '../words.ts';

/** Diameters in mm that punches are made in. */
const made: readonly number[] = [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 10, 12];

const upper: ReadonlySet<string> = new Set(['epidermis', 'papillary dermis']);

function depthReport({ depth, method }: Procedure, tables: Tables): Report | undefined {
  const [row] = rowsIn(tables.methods, method);
  const [reached] = rowsIn(tables.depths, depth);
  if (depth === undefined || method === undefined || row === undefined || reached === undefined)
    return undefined;
  const severity = reached.reaches && row.odd?.[reached.reaches];
  if (severity === undefined) return undefined;
  return {
    at: depth,
    severity,
    form: upper.has(reached.reaches ?? '') ? 'shallow' : 'deep',
    args: { method: row.name, depth: reached.name },
    related: [{ start: method.start, end: method.end, form: 'method', args: {} }],
  };
}

function sizeReport({ size, method }: Procedure, tables: Tables): Report | undefined {
  const [mm, second] = size?.value?.mm ?? [];
  if (size === undefined || mm === undefined) return undefined;
  if (rowsIn(tables.methods, method)[0]?.diameter !== true) return undefined;
  if (second !== undefined && second !== mm) return { at: size, form: 'two', args: { size: size.text } };
  return made.includes(mm) ? undefined : { at: size, args: { size: size.text } };
}

export const checks: readonly Check[] = [
  {
    code: 'method/odd-depth',
    about: ['depth'],
    severity: 'warning',
    title: 'A depth that does not suit the method',
    why: 'A shave to mid dermis is in order; deeper it leaves a scar, and through the fat it is no shave any more. A punch or an excision that stays in the upper dermis may be a slip of the pen.',
    sources: [
      { source: 'biopsy-guide-afp', mark: 'Q' },
      { source: 'biopsy-msd', mark: 'Q' },
      { source: 'melanoma-aad', mark: 'Q' },
      { source: 'format', mark: 'format' },
    ],
    messages: {
      deep: 'A {method} to the {depth} goes deeper than the method is meant for. Check method and depth; a deep sample is a deep shave, a punch or an excision.',
      shallow: 'A {method} that reaches only the {depth} is unusually shallow. Check method and depth.',
      method: 'the method',
    },
    find: ({ note, tables }) =>
      (note.procedures ?? [])
        .map((procedure) => depthReport(procedure, tables))
        .filter((report) => report !== undefined),
  },
  {
    code: 'method/punch-size',
    about: ['size'],
    when: isPunchUsed,
    severity: 'information',
    title: 'A punch of a size that is not made',
    why: 'Punches come in sizes from 1 to 12 mm; another number is more likely the size of the lesion or a slip.',
    sources: [{ source: 'common', mark: 'common' }],
    messages: {
      main: 'A punch of {size} is not a size that is made. Write its diameter: 3 mm, 4 mm, 6 mm.',
      two: 'A punch has one diameter, and {size} gives two. If this is the lesion, write it under `lesion`.',
    },
    find: ({ note, tables }) =>
      (note.procedures ?? [])
        .map((procedure) => sizeReport(procedure, tables))
        .filter((report) => report !== undefined),
  },
];

import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import { rowsIn } from '../words.ts';
import { lesionMm } from './_lesion-size.ts';

/** From this many times the usual size on the number is doubted; a choice of our own. */
const times = 5;

/** A size out of all proportion to its method. */
export interface Disproportion {
  readonly method: string;
  /** What the method usually takes at most, in mm. */
  readonly usual: number;
}

/** How a size is out of proportion to the method; undefined where it is not, or where the lesion is nearly as large. */
export function disproportionOf(procedure: Procedure, tables: Tables): Disproportion | undefined {
  const row = rowsIn(tables.methods, procedure.method)[0];
  const mm = Math.max(0, ...(procedure.size?.value?.mm ?? []));
  if (row?.usualMm === undefined || mm <= times * row.usualMm) return undefined;
  const lesion = lesionMm(procedure);
  return lesion !== undefined && lesion * 2 >= mm ? undefined : { method: row.name, usual: row.usualMm };
}

import type { Procedure } from '../../note/generated/types.ts';
import type { Subject } from '../check.ts';
import { rowsIn } from '../words.ts';

/** Name of the method in its table. */
export const methodName = ({ method }: Procedure, { tables }: Subject): string | undefined =>
  rowsIn(tables.methods, method)[0]?.name;
/** Name of the depth in its table. */
export const depthName = ({ depth }: Procedure, { tables }: Subject): string | undefined =>
  rowsIn(tables.depths, depth)[0]?.name;

/** Methods that take the upper layers only. */
export const superficial: ReadonlySet<string | undefined> = new Set(['shave', 'scissor', 'curettage']);

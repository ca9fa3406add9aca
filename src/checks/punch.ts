import type { Procedure } from '../note/generated/types.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import type { Tables } from '../practice/tables.ts';
import { rowsIn } from './words.ts';

/** The diameter of a punch in mm, and where it stands; undefined where the method is another one. */
export function punchOf(
  { size, method }: Procedure,
  tables: Tables,
): { readonly mm: number; readonly at: Leaf<unknown> } | undefined {
  const [mm] = size?.value?.mm ?? [];
  if (size === undefined || mm === undefined) return undefined;
  return rowsIn(tables.methods, method)[0]?.diameter === true ? { mm, at: size } : undefined;
}

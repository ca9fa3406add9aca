import type { Closure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { MaterialRow } from '../../reference/materials.ts';
import { rowsIn } from '../words.ts';

export const material = (closure: Closure, tables: Tables): MaterialRow | undefined =>
  rowsIn(tables.materials, closure.material)[0];

export const format = { source: 'format', mark: 'format' } as const;

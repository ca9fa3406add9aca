import type { Tables } from '../../practice/tables.ts';
import type { WordRow } from '../../reference/types.ts';

/** The rows of a table of words by the name that the schema gives it; none where there is no such table. */
export function rowsOfTable(tables: Tables, name: string | undefined): readonly WordRow[] {
  if (name === undefined || !Object.hasOwn(tables, name)) return [];
  const table = tables[name as keyof Tables] as { readonly rows?: readonly WordRow[] };
  return table.rows ?? [];
}

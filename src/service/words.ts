import type { Tables } from '../practice/tables.ts';
import type { WordRow } from '../reference/types.ts';

/** The rows of a table of words by the name that the schema gives it; none where there is no such table. */
export function rowsOfTable(tables: Tables, name: string | undefined): readonly WordRow[] {
  const table = Object.entries(tables).find(([key]) => key === name)?.[1] as
    { readonly rows?: readonly WordRow[] } | undefined;
  return table?.rows ?? [];
}

import type { Procedure } from '../note/generated/types.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import type { Tables } from '../practice/tables.ts';
import { rowsIn } from './words.ts';

/** `4 mm punch`, `punch biopsy, 4 mm`. */
const diameter =
  /\b(\d{1,2}(?:\.\d)?) ?-?mm (?:\w+ )?punch|punch(?: \w+)?[, (]{1,3}(\d{1,2}(?:\.\d)?) ?mm\b/i;

function inMethod(method: Leaf<string> | undefined): number | undefined {
  const [, before, after] = diameter.exec(method?.value ?? '') ?? [];
  const typed = before ?? after;
  return typed === undefined ? undefined : Number(typed);
}

/** The diameter of a punch in mm, under `size` or in the words for the method (`4 mm punch`), and where it is; undefined where the method is another one. */
export function punchOf(
  { size, method }: Procedure,
  tables: Tables,
): { readonly mm: number; readonly at: Leaf<unknown> } | undefined {
  if (rowsIn(tables.methods, method)[0]?.diameter !== true) return undefined;
  const at = size ?? method;
  const mm = size === undefined ? inMethod(method) : size.value?.mm[0];
  return at === undefined || mm === undefined ? undefined : { mm, at };
}

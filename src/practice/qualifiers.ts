import { once } from '../note/text/once.ts';
import { Qualifiers } from '../note/words/understood.ts';
import type { QualifierRow } from '../reference/qualifiers.ts';

const byTable = once<readonly QualifierRow[], Map<string, Qualifiers>>(() => new Map());

/** The words that change nothing beside those of a table, made once for each. */
export function qualifiersOf(rows: readonly QualifierRow[], name: string): Qualifiers {
  const made = byTable(rows);
  let own = made.get(name);
  if (own === undefined) {
    const words = rows.flatMap((row) => (row.table === 'any' || row.table === name ? row.words : []));
    made.set(name, (own = new Qualifiers(words)));
  }
  return own;
}

import type { WordTable } from '../../note/words/word-table.ts';
import type { Tables } from '../../practice/tables.ts';
import type { WordRow } from '../../reference/types.ts';

export type Lookup = WordTable<WordRow>;

/** The tables by the name that the schema's `x-words` uses; agents have a check of their own. */
export const lookups: ReadonlyMap<string, (tables: Tables) => Lookup> = new Map<
  string,
  (tables: Tables) => Lookup
>([
  ['authorities', (tables) => tables.authorities],
  ['closures', (tables) => tables.closures],
  ['consents', (tables) => tables.consents],
  ['depths', (tables) => tables.depths],
  ['dressings', (tables) => tables.dressings],
  ['events', (tables) => tables.events],
  ['hemostasis', (tables) => tables.hemostasis],
  ['layers', (tables) => tables.layers],
  ['materials', (tables) => tables.materials],
  ['media', (tables) => tables.media],
  ['methods', (tables) => tables.methods],
  ['preparations', (tables) => tables.preparations],
  ['relations', (tables) => tables.relations],
  ['tests', (tables) => tables.tests],
]);

/** The names of tables that are looked up here. */
export const wordTables: ReadonlySet<string> = new Set(lookups.keys());

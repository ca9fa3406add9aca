import { plainWord, wordsRead } from '../note/words/word-table.ts';
import type { Tables } from '../practice/tables.ts';
import type { WordRow } from '../reference/types.ts';
import { Trie } from './trie.ts';

/** The tables whose words a text may name. */
export type Table =
  | 'method'
  | 'depth'
  | 'relation'
  | 'preparation'
  | 'hemostasis'
  | 'closure'
  | 'material'
  | 'technique'
  | 'layer'
  | 'medium'
  | 'test'
  | 'dressing'
  | 'agent'
  | 'consent'
  | 'implant'
  | 'allergen'
  | 'reaction'
  | 'medicine'
  | 'condition'
  | 'diagnosis';

/** A row of a table that words of a text name. */
export interface Claim {
  readonly table: Table;
  readonly row: WordRow;
}

type Rows = readonly WordRow[];

/** Rows whose words say that it was done, and not with what, or that name something else as often. */
const general: ReadonlySet<string> = new Set([
  'antiseptic',
  'cleaned',
  'obtained',
  'gauze',
  'elevation',
  'epinephrine',
]);

const rowsOf = (tables: Tables): readonly (readonly [Table, Rows])[] => [
  ['method', tables.methods.rows],
  ['depth', tables.depths.rows],
  ['relation', tables.relations.rows],
  ['preparation', tables.preparations.rows.filter(({ name }) => !general.has(name))],
  ['hemostasis', tables.hemostasis.rows.filter(({ name }) => !general.has(name))],
  ['closure', tables.closures.rows],
  ['material', tables.materials.rows],
  ['technique', tables.techniques.rows],
  ['layer', tables.layers.rows],
  ['medium', tables.media.rows],
  ['test', tables.tests.rows],
  ['dressing', tables.dressings.rows],
  ['consent', tables.consents.rows],
  ['implant', tables.implants.rows],
  ['allergen', tables.allergens.rows],
  ['reaction', tables.reactions.rows],
  ['medicine', tables.bloodThinners.rows],
  ['medicine', tables.cautions.rows.filter(({ kind }) => kind === 'medicine')],
  ['medicine', tables.otherMedicines.rows],
  ['condition', tables.cautions.rows.filter(({ kind }) => kind === 'condition')],
  ['condition', tables.cardiacConditions.rows],
  ['condition', tables.otherConditions.rows],
  ['condition', tables.lengthening.rows],
  ['diagnosis', tables.diagnoses.rows],
];

/** Words of the tables that mean something else as often, by their table. */
const skipped: Readonly<Partial<Record<Table, ReadonlySet<string>>>> = {
  test: new Set([
    'he',
    'path',
    'pathology',
    'dermatopathology',
    'dermpath',
    'derm path',
    'if',
    'levels',
    'kit',
    'iron',
    'fresh',
    'biopsy',
  ]),
  hemostasis: new Set(['closure', 'primary closure', 'closed', 'tie', 'ties', 'suture closure', 'sutured']),
  consent: new Set(['consent']),
  medium: new Set(['freeze', 'freezing', 'frozen']),
  medicine: new Set(['prep']),
  allergen: new Set(['prep']),
  technique: new Set(['one layer', 'single layer', 'layered', 'two layer', 'single layer closure']),
  dressing: new Set(['dressing', 'dressings', 'dressing applied']),
};

export type Lexicon = Trie<readonly Claim[]>;

export interface Lexicons {
  readonly words: Lexicon;
  /** Anesthetics, apart from the words of other tables that begin with one. */
  readonly agents: Lexicon;
}

const made = new WeakMap<Tables, Lexicons>();

/** All words of the tables; made once for each tables. */
export function lexiconsOf(tables: Tables): Lexicons {
  let lexicons = made.get(tables);
  if (lexicons === undefined)
    made.set(
      tables,
      (lexicons = { words: built(rowsOf(tables)), agents: built([['agent', tables.agents.rows]]) }),
    );
  return lexicons;
}

function built(all: readonly (readonly [Table, Rows])[]): Lexicon {
  const lexicon: Lexicon = new Trie();
  for (const [table, rows] of all) {
    const own = new Set(rows.flatMap(wordsRead).map(plainWord));
    for (const row of rows)
      for (const word of wordsRead(row))
        if (skipped[table]?.has(plainWord(word)) !== true && !isTwo(word, own))
          lexicon.add(word.toLowerCase(), (before = []) =>
            before.some((claim) => claim.table === table) ? before : [...before, { table, row }],
          );
  }
  return lexicon;
}

/** Whether a word of a table names two of its rows: "gauze and paper tape". */
function isTwo(word: string, own: ReadonlySet<string>): boolean {
  const parts = plainWord(word).split(' and ');
  return parts.length > 1 && parts.every((part) => own.has(part));
}

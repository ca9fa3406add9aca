import type {
  Practice,
  PracticeAgentWord,
  PracticeDressingWord,
  PracticeHemostasisWord,
  PracticePreparationWord,
  PracticeSiteWord,
} from '../note/generated/types.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import { plainWord, WordTable } from '../note/words/word-table.ts';
import type { AgentRow } from '../reference/agents.ts';
import type { DressingRow } from '../reference/dressings.ts';
import type { LimitRow } from '../reference/limits.ts';
import type { HemostasisRow } from '../reference/hemostasis.ts';
import type { MaterialRow } from '../reference/materials.ts';
import type { MediumRow } from '../reference/media.ts';
import type { PreparationRow } from '../reference/preparations.ts';
import { ordinary, type SiteRow } from '../reference/sites.ts';
import type { Sourced, WordRow } from '../reference/types.ts';
import type { Faults } from './faults.ts';
import { textOf } from './leaves.ts';
import { approvalOf, practiceRow, type Loosened } from './limits.ts';

/** A word of a practice, with what it says of it. */
export interface OwnWord<Row> {
  readonly name: Leaf<string> | undefined;
  readonly rowOf: (name: string) => Row;
  /** Whether the practice says what kind of thing it is, so that checks can look into it. */
  readonly isKind?: boolean;
}

/**
 * A table with the practice's own words after it; the same table where there are none. A known word stays what it
 * was. `unjudged` names the message for words that checks can't look into, since only their names are known.
 */
export function extended<Row extends WordRow>(
  table: WordTable<Row>,
  words: readonly OwnWord<Row>[],
  faults: Faults,
  unjudged?: string,
): WordTable<Row> {
  const added: Added<Row>[] = [];
  for (const { name: leaf, rowOf, isKind } of words) {
    const name = textOf(leaf);
    if (leaf === undefined || name === '') continue;
    if (unjudged !== undefined && isKind !== true && table.find(name) === undefined)
      faults.add('word-unjudged', leaf, { word: name }, unjudged);
    added.push({ leaf, row: rowOf(name) });
  }
  return joined(table, added, faults);
}

interface Added<Row> {
  readonly leaf: Leaf<string>;
  readonly row: Row;
}

function joined<Row extends WordRow>(
  table: WordTable<Row>,
  added: readonly Added<Row>[],
  faults: Faults,
): WordTable<Row> {
  const rows: Row[] = [];
  let own = new WordTable<Row>([]);
  for (const { leaf, row } of added) {
    const known = table.find(row.name) ?? own.find(row.name);
    if (known !== undefined) faults.add('shadowed-word', leaf, { word: row.name, known: known.name });
    else own = new WordTable([...rows, row]);
    if (known === undefined) rows.push(row);
  }
  return rows.length === 0 ? table : new WordTable([...table.rows, ...rows]);
}

/** Sites of the practice: each takes over what is known of the site that it is like. */
export function sitesOf(
  words: readonly PracticeSiteWord[] | undefined,
  sites: WordTable<SiteRow>,
  faults: Faults,
): WordTable<SiteRow> {
  return joined(
    sites,
    (words ?? []).flatMap((word) => siteOf(word, sites, faults)),
    faults,
  );
}

function siteOf(
  { name, like, side }: PracticeSiteWord,
  sites: WordTable<SiteRow>,
  faults: Faults,
): Added<SiteRow>[] {
  const text = textOf(name);
  if (name === undefined || text === '') return [];
  const model = sites.find(textOf(like));
  if (textOf(like) !== '' && like !== undefined && model === undefined)
    faults.unknown('unknown-site', like, textOf(like), sites.words);
  else if (like === undefined && sites.find(text) === undefined)
    faults.add('word-unjudged', name, { word: text }, 'sites');
  return [{ leaf: name, row: siteRow(text, model ?? nowhere, side?.value) }];
}

/** A place of which nothing is known. */
const nowhere: SiteRow = { ...ordinary, name: '', synonyms: [], region: 'other', side: 'optional' };

function siteRow(name: string, model: SiteRow, sided: boolean | undefined): SiteRow {
  const own = { ...model, name, synonyms: [] };
  return sided === undefined ? own : { ...own, side: sided ? 'needed' : 'optional' };
}

/** The agents of a practice, and the limits that come with them. */
export interface PracticeAgents {
  readonly agents: WordTable<AgentRow>;
  readonly limits: readonly LimitRow[];
  readonly loosened: readonly Loosened[];
}

/**
 * Agents of the practice. One is known only with class, a limit, source and a whole approval. In restricted mode its
 * limit is left out, since it makes a dose pass that could not be judged before.
 */
export function agentsOf(
  words: readonly PracticeAgentWord[] | undefined,
  agents: WordTable<AgentRow>,
  authority: string,
  trusted: boolean,
  faults: Faults,
): PracticeAgents {
  const whole = (words ?? []).flatMap((word) => wholeAgent(word, faults) ?? []);
  const table = joined(agents, whole, faults);
  const used = whole.filter(({ row }) => table.find(row.name) === row);
  if (!trusted) {
    for (const { leaf, row } of used) faults.add('loosening-ignored', leaf, { product: row.name });
    return { agents: table, limits: [], loosened: [] };
  }
  const both = used.flatMap(({ row, figures, approval, source }) =>
    [false, true].map((epinephrine) => ({ agent: row.name, epinephrine, ...figures, source, approval })),
  );
  return {
    agents: table,
    limits: both.map((one) => practiceRow(one.agent, one.epinephrine, one, authority, one.approval)),
    loosened: both.map((one) => ({ ...one, published: nothingPublished })),
  };
}

const nothingPublished: Loosened['published'] = { authority: '' };

const classes: ReadonlyMap<string, AgentRow['class']> = new Map(
  (['amide', 'ester', 'none'] as const).map((name) => [name, name]),
);

type WholeAgent = Added<AgentRow> & {
  readonly figures: Pick<Loosened, 'mgPerKg' | 'capMg'>;
  readonly approval: Loosened['approval'];
  readonly source: string;
};

function wholeAgent(word: PracticeAgentWord, faults: Faults): WholeAgent | undefined {
  const name = textOf(word.name);
  if (word.name === undefined || name === '') return undefined;
  const kind = classes.get(textOf(word.class).toLowerCase());
  const figures = { mgPerKg: word.maxMgPerKg?.value, capMg: word.maxMg?.value };
  const limit = figures.mgPerKg ?? figures.capMg;
  const source = textOf(word.source);
  const approval = approvalOf(word.approved);
  if (kind !== undefined && limit !== undefined && source !== '' && approval !== undefined)
    return { leaf: word.name, row: agentRow(name, kind), figures, approval, source };
  const needed = [
    ['`class` (amide, ester or none)', kind],
    ['`max-mg-per-kg` or `max-mg`', limit],
    ['`source`', source],
    ['`approved` with by, on and reason', approval],
  ] as const;
  const missing = needed.filter(([, given]) => given === undefined || given === '').map(([what]) => what);
  faults.add('incomplete-agent', word.name, { agent: name, missing: missing.join('; ') });
  return undefined;
}

const agentRow = (name: string, kind: AgentRow['class']): AgentRow => ({
  name,
  synonyms: [],
  class: kind,
  form: 'injected',
  contains: [],
  strengths: [],
  limited: true,
  preservatives: [],
  source: 'practice-file',
  mark: 'format',
});

const wordRow = (name: string): WordRow => ({ name, synonyms: [] });

/** What a practice says of its own word is the word's meaning in its file. */
const ownWord = (name: string): WordRow & Sourced => ({
  name,
  synonyms: [],
  source: 'practice-file',
  mark: 'format',
});

/** What a practice can add by name alone: nothing more is known of such a word than that it is one. */
export const plainRows = {
  media: (name: string): MediumRow => ({ name, synonyms: [], fixes: false, effects: {} }),
  materials: (name: string): MaterialRow => ({ ...ownWord(name), absorbable: false, strand: 'other' }),
  tests: wordRow,
  events: wordRow,
};

/** The words of a practice of which it can give only the name. */
export const named = <Row>(
  leaves: readonly Leaf<string>[] | undefined,
  rowOf: (name: string) => Row,
): readonly OwnWord<Row>[] => (leaves ?? []).map((name) => ({ name, rowOf }));

/** The words of a practice for ways to stop bleeding; what is said of a current decides for patients with a device. */
export const hemostasisWords = (
  words: readonly PracticeHemostasisWord[] = [],
): readonly OwnWord<HemostasisRow>[] =>
  words.map(({ name, current }) => ({
    name,
    isKind: current?.value !== undefined,
    rowOf: (word) => ({ ...ownWord(word), stops: current?.value === true ? 'current' : 'other' }),
  }));

/** The dressings of a practice: one that sticks holds adhesive, which some patients react to. */
export const dressingWords = (words: readonly PracticeDressingWord[] = []): readonly OwnWord<DressingRow>[] =>
  words.map(({ name, adhesive }) => ({
    name,
    isKind: adhesive?.value !== undefined,
    rowOf: (word) =>
      adhesive?.value === true
        ? { ...ownWord(word), adhesive: true, contains: ['adhesive'] }
        : { ...ownWord(word), ...(adhesive?.value === false ? { adhesive: false } : {}) },
  }));

/** The skin preparations of a practice: one that burns holds alcohol. */
export const preparationWords = (
  words: readonly PracticePreparationWord[] = [],
): readonly OwnWord<PreparationRow>[] =>
  words.map(({ name, flammable }) => ({
    name,
    isKind: flammable?.value !== undefined,
    rowOf: (word) => ({
      ...ownWord(word),
      ...(flammable?.value === undefined ? {} : { flammable: flammable.value }),
    }),
  }));

/** A trade name of the practice and the generic word that it is read as. */
export interface OwnTradeName {
  readonly name: string;
  readonly generic: string;
}

/** What says that there is nothing, or that nobody knows, is no generic word. */
const answers: ReadonlySet<string> = new Set(['none', 'unknown']);

/** The trade names of a practice that are new, each for a word of one of these tables. A known word stays what it was. */
export function tradeNamesOf(
  { tradeNames }: Practice,
  tables: readonly WordTable<WordRow>[],
  faults: Faults,
): readonly OwnTradeName[] {
  const own = new Map<string, OwnTradeName>();
  const knownAs = (name: string): string | undefined =>
    own.get(plainWord(name))?.generic ?? rowOf(name, tables)?.name;
  for (const { name, value, start, end } of tradeNames ?? []) {
    const generic = textOf(value);
    const row = rowOf(generic, tables);
    const known = knownAs(name);
    if (generic === '' || plainWord(name) === '') continue;
    if (known !== undefined) faults.add('shadowed-word', { start, end }, { word: name, known });
    else if (row === undefined || answers.has(row.name))
      faults.unknown('unknown-generic', value, generic, wordsOf(tables));
    else own.set(plainWord(name), { name, generic });
  }
  return [...own.values()];
}

const rowOf = (text: string, tables: readonly WordTable<WordRow>[]): WordRow | undefined => {
  for (const table of tables) {
    const row = table.find(text);
    if (row !== undefined) return row;
  }
  return undefined;
};

function* wordsOf(tables: readonly WordTable<WordRow>[]): Generator<string> {
  for (const table of tables) yield* table.words;
}

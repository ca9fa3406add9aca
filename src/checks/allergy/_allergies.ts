import type { Related } from '../../note/tree/finding.ts';
import type { Allergy, Note } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { phrasesOf, type Standing } from '../../note/words/phrases.ts';
import type { Tables } from '../../practice/tables.ts';
import type { AgentRow } from '../../reference/agents.ts';
import type { AllergenRow, Crossing } from '../../reference/allergens.ts';
import type { WordRow } from '../../reference/types.ts';
import type { WordTable } from '../../note/words/word-table.ts';
import { shared } from '../shared.ts';
import { rowsSaid } from '../words.ts';

/** Why an entry is less than an allergy: what happened was no allergy, it was tolerated since, or a test was negative. */
export type Ease = 'intolerance' | 'tolerated' | 'tested';

/** A thing to which the patient is said to be allergic. */
export interface Named {
  readonly leaf: Leaf<string>;
  /** How the entry calls it. */
  readonly word: string;
  /** Worked out when asked, since few entries ever meet what they name; of a class it may be asked for one agent. */
  readonly ease: (agent?: string) => Ease | undefined;
  /** Whether it is at most a warning, as the table of allergens says. */
  readonly mild: boolean;
  /** What the entry says was had since without a reaction. */
  readonly tolerates: readonly Leaf<string>[] | undefined;
}

export interface Crossed {
  readonly named: Named;
  readonly crossing: Crossing;
}

/** The patient's allergies by what they mean here. */
export interface Allergies {
  /** Whether there is anything to look for. */
  readonly any: boolean;
  readonly substances: ReadonlyMap<string, Named>;
  readonly crossed: ReadonlyMap<string, Crossed>;
  /** By the name of the agent. */
  readonly agents: ReadonlyMap<string, Named & { readonly class: AgentRow['class'] }>;
  /** By the class that an entry names as a whole. */
  readonly classes: ReadonlyMap<'amide' | 'ester' | 'any', Named>;
  /** What becomes of esters in the body, and esters that are no agents here. */
  readonly esters: readonly Named[];
  /** Names of agents that were tolerated, or tested negative, since. */
  readonly cleared: () => ReadonlySet<string>;
}

/** What the patient is allergic to. */
export const allergiesIn = ({ patient }: Note, tables: Tables): Allergies =>
  new Reader(tables).read(patient?.allergies ?? []);

/** The same, worked out once for each note. */
export const allergiesOf = shared(({ note, tables }) => allergiesIn(note, tables));

/** The place of the entry, for findings elsewhere. */
export const entryOf = ({ leaf, word }: Named): readonly Related[] => [
  { start: leaf.start, end: leaf.end, form: 'entry', args: { allergy: word } },
];

/** What stands before a thing that was tolerated, and before one that was not, however it is put. */
const toleratedBefore = /\btolerat(?:ed|es|ing) (?:[a-z-]+ ){0,2}$/i;
const notToleratedBefore =
  /(?:\b(?:not|never|cannot|no longer|hardly|barely|scarcely|poorly|badly)|n't)(?: [a-z]+){0,2} tolerat\w* (?:[a-z-]+ ){0,2}$/i;

/** Whether a text takes back that it names an allergy to what stands behind some of its words. */
const isTakenBack = (before: string, standing: Standing): boolean =>
  !notToleratedBefore.test(before) && (standing === 'denied' || toleratedBefore.test(before));

/** What an entry names as an allergy: what it denies, or says to be tolerated, is none. */
function saidIn<Row extends WordRow>(table: WordTable<Row>, text: string): readonly Row[] {
  const row = table.find(text);
  if (row !== undefined) return [row];
  return phrasesOf(table)
    .mentionsIn(text)
    .flatMap(({ row, from, standing }) => (isTakenBack(text.slice(0, from), standing) ? [] : [row]));
}

class Reader {
  private readonly substances = new Map<string, Named>();
  private readonly crossed = new Map<string, Crossed>();
  private readonly agents = new Map<string, Named & { readonly class: AgentRow['class'] }>();
  private readonly classes = new Map<'amide' | 'ester' | 'any', Named>();
  private readonly esters: Named[] = [];

  constructor(private readonly tables: Tables) {}

  read(entries: readonly Allergy[]): Allergies {
    for (const entry of entries) this.entry(entry);
    return {
      any: this.substances.size + this.agents.size + this.classes.size > 0,
      substances: this.substances,
      crossed: this.crossed,
      agents: this.agents,
      classes: this.classes,
      esters: this.esters,
      cleared: () =>
        new Set(entries.flatMap((entry) => [...this.tolerated(entry), ...(this.testedIn(entry) ?? [])])),
    };
  }

  private entry(entry: Allergy): void {
    const { to, tolerates } = entry;
    if (to?.value === undefined) return;
    const { agents, allergens } = this.tables;
    const exact = allergens.find(to.value);
    if (exact?.kind === 'none' || exact?.kind === 'irrelevant') return;
    const ease = (name: string) => (agent?: string) => this.easeOf(entry, name, agent);
    // What one table knows as it stands is in no need of a search in the other.
    for (const row of exact === undefined ? saidIn(agents, to.value) : [])
      for (const word of partsOf(row))
        add(this.agents, word, {
          leaf: to,
          word,
          mild: false,
          ease: ease(word),
          tolerates,
          class: row.class,
        });
    for (const row of exact === undefined ? saidIn(allergens, to.value) : [exact])
      this.allergen(row, {
        leaf: to,
        word: row.name,
        mild: row.mild === true,
        ease: ease(row.name),
        tolerates,
      });
  }

  /** What an entry says against one of its things being an allergy. */
  private easeOf(entry: Allergy, name: string, agent = name): Ease | undefined {
    const tolerated = this.tolerated(entry);
    if (tolerated.has(name) || tolerated.has(agent)) return 'tolerated';
    const tested = this.testedIn(entry);
    if (tested !== undefined && (tested.size === 0 || tested.has(name) || tested.has(agent))) return 'tested';
    return this.isIntolerance(entry) ? 'intolerance' : undefined;
  }

  private tolerated({ tolerates }: Allergy): Set<string> {
    return this.namesIn(tolerates ?? []);
  }

  private allergen(row: AllergenRow, named: Named): void {
    if (row.kind === 'class') this.classes.set(row.anesthetics ?? 'any', named);
    else if (row.kind !== 'substance') return;
    else {
      if (row.anesthetics === 'ester') this.esters.push(named);
      for (const name of [row.name, ...(row.covers ?? [])]) add(this.substances, name, named);
    }
    for (const crossing of row.crosses ?? []) {
      const before = this.crossed.get(crossing.to);
      if (before?.crossing.mark !== 'Q') this.crossed.set(crossing.to, { named, crossing });
    }
  }

  /** The agents and allergens that texts name. */
  private namesIn(leaves: readonly Leaf<string>[]): Set<string> {
    const { agents, allergens } = this.tables;
    return new Set(
      leaves.flatMap(({ value = '' }) => [
        ...rowsSaid(agents, value).flatMap(partsOf),
        ...rowsSaid(allergens, value).map(({ name }) => name),
      ]),
    );
  }

  /** What a test has cleared: the names in it, or an empty set where it names nothing and means the entry itself. */
  private testedIn({ tested }: Allergy): Set<string> | undefined {
    if (tested?.value === undefined) return undefined;
    const kinds = new Set(
      phrasesOf(this.tables.reactions)
        .mentionsIn(tested.value)
        .filter(({ standing }) => standing === 'asserted' || standing === 'past')
        .map(({ row }) => row.kind),
    );
    return kinds.has('cleared') && !kinds.has('allergy') ? this.namesIn([tested]) : undefined;
  }

  private isIntolerance({ reaction }: Allergy): boolean {
    if (reaction === undefined) return false;
    const kinds = this.reactionsIn(reaction);
    return kinds.has('intolerance') && !kinds.has('allergy');
  }

  private reactionsIn({ value = '' }: Leaf<string>): ReadonlySet<string> {
    return new Set(rowsSaid(this.tables.reactions, value).map(({ kind }) => kind));
  }
}

/** The anesthetics that a row of agents stands for: what is in a product, or itself. */
export const partsOf = (row: AgentRow): readonly string[] =>
  row.contains.length > 0 ? row.contains : [row.name];

/** Of two entries for the same thing the graver one stays. */
function add<One extends Named>(map: Map<string, One>, name: string, named: One): void {
  const before = map.get(name);
  if (before === undefined || before.mild || before.ease() !== undefined) map.set(name, named);
}

import type { Related } from '../note/tree/finding.ts';
import type { Allergy, Note } from '../note/generated/types.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import { phrasesOf } from '../note/words/phrases.ts';
import type { Tables } from '../practice/tables.ts';
import type { AgentRow } from '../reference/agents.ts';
import type { AllergenRow, Crossing } from '../reference/allergens.ts';
import { asMeant, rowMeant } from '../note/words/as-meant.ts';
import { readMentions } from '../note/words/mentions/read.ts';
import { allergyNames, type AllergyRow } from './lookups.ts';
import { once } from '../note/text/once.ts';
import { shared } from './shared.ts';
import { rowsSaid } from './words.ts';

/**
 * Why an entry is less than an allergy: what happened was no allergy, it was tolerated since, a test was negative, or
 * its words leave it open.
 */
export type Ease = 'intolerance' | 'tolerated' | 'tested' | 'open';

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

/**
 * An entry as one text, so that what is written as its reaction may answer: `{lidocaine: tolerated}`. That no reaction
 * is known denies nothing.
 */
const entryText = (to: string, reaction: Allergy['reaction']): string => {
  const told = reaction?.value;
  return told === undefined || saysNothing.test(told.replace(/[\s.]+/g, ' ').trim()) ? to : `${to}: ${told}`;
};

const saysNothing = /^(?:none|nil|unknown|not known|n[/ ]?a)?$/i;

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
    const { to } = entry;
    if (to?.value === undefined) return;
    const text = this.meant(to.value);
    const exact = this.exactly(text, entry);
    if (exact !== undefined) {
      if (exact.kind !== 'none' && exact.kind !== 'irrelevant')
        this.allergen(exact, this.named(entry, exact.name, false, exact.mild === true));
      return;
    }
    const mentions = readMentions(entryText(text, entry.reaction), allergyNames(this.tables));
    // What it is to may be written as the reaction.
    const named = mentions.filter((one) => one.to <= text.length);
    for (const { row, answer } of named.length > 0 ? named : mentions)
      if (answer !== 'denied') this.mention(entry, row, answer === 'unclear');
  }

  /** What is surely meant by an entry: its words put right, or the one thing that the whole of it is a slip of. */
  private meant(typed: string): string {
    const { agents, allergens } = this.tables;
    const words = asMeant(typed, agents, allergens);
    if (words !== typed || readMentions(words, allergyNames(this.tables)).length > 0) return words;
    return (rowMeant(allergens, typed) ?? rowMeant(agents, typed))?.name ?? words;
  }

  /** The allergen that is all that an entry says of what it is to; undefined where its words have to be read. */
  private exactly(text: string, { reaction }: Allergy): AllergenRow | undefined {
    const exact = this.tables.allergens.find(text);
    return exact === undefined || reaction === undefined || exact.kind === 'none' ? exact : undefined;
  }

  private mention(entry: Allergy, row: AllergyRow, open: boolean): void {
    if (row.of === 'allergens') {
      if (row.allergen.kind !== 'irrelevant')
        this.allergen(row.allergen, this.named(entry, row.name, open, row.allergen.mild === true));
      return;
    }
    for (const word of partsOf(row.agent))
      add(this.agents, word, { ...this.named(entry, word, open), class: row.agent.class });
  }

  private named(entry: Allergy, word: string, open = false, mild = false): Named {
    return {
      leaf: entry.to!,
      word,
      mild,
      ease: (agent) => this.easeOf(entry, word, agent) ?? (open ? 'open' : undefined),
      tolerates: entry.tolerates,
    };
  }

  /** What an entry says against one of its things being an allergy. */
  private easeOf(entry: Allergy, name: string, agent = name): Ease | undefined {
    const { tolerated, tested, isIntolerance } = this.eases(entry);
    if (tolerated.has(name) || tolerated.has(agent)) return 'tolerated';
    if (tested !== undefined && (tested.size === 0 || tested.has(name) || tested.has(agent))) return 'tested';
    return isIntolerance ? 'intolerance' : undefined;
  }

  /** What of an entry may ease it, read once: it is asked for each thing that the entry names. */
  private readonly eases = once((entry: Allergy) => ({
    tolerated: this.tolerated(entry),
    tested: this.testedIn(entry),
    isIntolerance: this.isIntolerance(entry),
  }));

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
    const lookup = allergyNames(this.tables);
    return new Set(
      leaves.flatMap(({ value = '' }) => readMentions(value, lookup).flatMap(({ row }) => namesOf(row))),
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

  /** Whether all that an entry says to have happened was no allergy, in whatever key it says so. */
  private isIntolerance({ to, reaction }: Allergy): boolean {
    const kinds = new Set([...this.reactionsIn(to), ...this.reactionsIn(reaction)]);
    return (
      kinds.has('intolerance') &&
      !kinds.has('allergy') &&
      !/allerg|\breact|\brxn|tolerat/i.test(to?.value ?? '')
    );
  }

  private reactionsIn(leaf: Leaf<string> | undefined): readonly string[] {
    return leaf?.value === undefined
      ? []
      : rowsSaid(this.tables.reactions, leaf.value).map(({ kind }) => kind);
  }
}

/** The anesthetics that a row of agents means: what is in a product, or itself. */
export const partsOf = (row: AgentRow): readonly string[] =>
  row.contains.length > 0 ? row.contains : [row.name];

/** What a name among the allergies means. */
export const namesOf = (row: AllergyRow): readonly string[] =>
  row.of === 'agents' ? partsOf(row.agent) : [row.name];

/** Of two entries for the same thing the graver one stays. */
function add<One extends Named>(map: Map<string, One>, name: string, named: One): void {
  const before = map.get(name);
  if (before === undefined || before.mild || before.ease() !== undefined) map.set(name, named);
}

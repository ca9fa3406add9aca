import type { Related } from '../../note/finding.ts';
import type { Allergy } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/leaf.ts';
import type { Tables } from '../../practice/tables.ts';
import type { AgentRow } from '../../reference/agents.ts';
import type { AllergenRow, Crossing } from '../../reference/allergens.ts';
import type { Subject } from '../check.ts';
import { rowsSaid } from '../words.ts';

/** Why an entry is less than an allergy: what happened was no allergy, it was tolerated since, or a test was negative. */
export type Ease = 'intolerance' | 'tolerated' | 'tested';

/** A thing to which the patient is said to be allergic. */
export interface Named {
  readonly leaf: Leaf<string>;
  /** How the entry calls it. */
  readonly word: string;
  readonly ease: Ease | undefined;
  /** Whether it is at most a warning, as the table of allergens says. */
  readonly mild: boolean;
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
  readonly cleared: ReadonlySet<string>;
}

const seen = new WeakMap<Subject, Allergies>();

/** What the patient is allergic to, worked out once for each note. */
export function allergiesOf(subject: Subject): Allergies {
  const found = seen.get(subject);
  if (found !== undefined) return found;
  const made = new Reader(subject.tables).read(subject.note.patient?.allergies ?? []);
  seen.set(subject, made);
  return made;
}

/** The place of the entry, for findings elsewhere. */
export const entryOf = ({ leaf, word }: Named): readonly Related[] => [
  { start: leaf.start, end: leaf.end, form: 'entry', args: { allergy: word } },
];

class Reader {
  private readonly substances = new Map<string, Named>();
  private readonly crossed = new Map<string, Crossed>();
  private readonly agents = new Map<string, Named & { readonly class: AgentRow['class'] }>();
  private readonly classes = new Map<'amide' | 'ester' | 'any', Named>();
  private readonly esters: Named[] = [];
  private readonly cleared = new Set<string>();

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
      cleared: this.cleared,
    };
  }

  private entry(entry: Allergy): void {
    const { to } = entry;
    if (to?.value === undefined) return;
    const { agents, allergens } = this.tables;
    const kind = allergens.find(to.value)?.kind;
    if (kind === 'none' || kind === 'irrelevant') return;
    const ease = this.easing(entry);
    for (const row of rowsSaid(agents, to.value))
      for (const word of partsOf(row))
        this.agents.set(word, { leaf: to, word, mild: false, ease: ease(word), class: row.class });
    for (const row of rowsSaid(allergens, to.value))
      this.allergen(row, { leaf: to, word: row.name, mild: row.mild === true, ease: ease(row.name) });
  }

  /** What an entry says against its own things being allergies, by their names. */
  private easing(entry: Allergy): (name: string) => Ease | undefined {
    const tolerated = this.namesIn(entry.tolerates ?? []);
    const tested = this.testedIn(entry);
    for (const name of [...tolerated, ...(tested ?? [])]) this.cleared.add(name);
    return (name) => {
      if (tolerated.has(name)) return 'tolerated';
      if (tested !== undefined && (tested.size === 0 || tested.has(name))) return 'tested';
      return this.isIntolerance(entry) ? 'intolerance' : undefined;
    };
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
    const kinds = this.reactionsIn(tested);
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
function add(map: Map<string, Named>, name: string, named: Named): void {
  const before = map.get(name);
  if (before === undefined || before.ease !== undefined || before.mild) map.set(name, named);
}

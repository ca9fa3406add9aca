import type { Severity } from '../note/finding.ts';
import type { Practice } from '../note/generated/types.ts';
import { agents, type AgentRow } from '../reference/agents.ts';
import { allergens, type AllergenRow } from '../reference/allergens.ts';
import { authorities } from '../reference/authorities.ts';
import { closures, type ClosureRow } from '../reference/closures.ts';
import { consents } from '../reference/consents.ts';
import { depths } from '../reference/depths.ts';
import { dressings, type DressingRow } from '../reference/dressings.ts';
import { events } from '../reference/events.ts';
import { hemostasis, type HemostasisRow } from '../reference/hemostasis.ts';
import { implants, type ImplantRow } from '../reference/implants.ts';
import { laboratoryTests, type TestRow } from '../reference/laboratory-tests.ts';
import { layers } from '../reference/layers.ts';
import { limits, type LimitRow } from '../reference/limits.ts';
import { materials, type MaterialRow } from '../reference/materials.ts';
import { media, type MediumRow } from '../reference/media.ts';
import { methods, type MethodRow } from '../reference/methods.ts';
import { preparations, type PreparationRow } from '../reference/preparations.ts';
import { relations } from '../reference/relations.ts';
import { sites, type SiteRow } from '../reference/sites.ts';
import { sutureWindows, type SutureWindowRow } from '../reference/suture-windows.ts';
import type { WordRow } from '../reference/types.ts';
import { WordTable } from '../note/word-table.ts';

/** All that is known for judging a note: the reference tables with the practice's file laid over them. */
export interface Tables {
  readonly agents: WordTable<AgentRow>;
  readonly allergens: WordTable<AllergenRow>;
  readonly authorities: WordTable<WordRow>;
  readonly closures: WordTable<ClosureRow>;
  readonly consents: WordTable<WordRow>;
  readonly depths: WordTable<WordRow>;
  readonly dressings: WordTable<DressingRow>;
  readonly events: WordTable<WordRow>;
  readonly hemostasis: WordTable<HemostasisRow>;
  readonly implants: WordTable<ImplantRow>;
  readonly layers: WordTable<WordRow>;
  readonly materials: WordTable<MaterialRow>;
  readonly media: WordTable<MediumRow>;
  readonly methods: WordTable<MethodRow>;
  readonly preparations: WordTable<PreparationRow>;
  readonly relations: WordTable<WordRow>;
  readonly sites: WordTable<SiteRow>;
  readonly tests: WordTable<TestRow>;
  readonly limits: readonly LimitRow[];
  readonly sutureWindows: readonly SutureWindowRow[];
  /** The authority whose limits are the ceiling. */
  readonly authority: string;
  readonly severities: ReadonlyMap<string, Severity | 'off'>;
}

/** The tables of a practice without a file of its own. */
export const referenceTables: Tables = {
  agents: new WordTable(agents),
  allergens: new WordTable(allergens),
  authorities: new WordTable(authorities),
  closures: new WordTable(closures),
  consents: new WordTable(consents),
  depths: new WordTable(depths),
  dressings: new WordTable(dressings),
  events: new WordTable(events),
  hemostasis: new WordTable(hemostasis),
  implants: new WordTable(implants),
  layers: new WordTable(layers),
  materials: new WordTable(materials),
  media: new WordTable(media),
  methods: new WordTable(methods),
  preparations: new WordTable(preparations),
  relations: new WordTable(relations),
  sites: new WordTable(sites),
  tests: new WordTable(laboratoryTests),
  limits,
  sutureWindows,
  authority: 'US prescribing information',
  severities: new Map(),
};

/** The tables with a practice's file laid over them. */
export function tablesOf(practice: Practice | null): Tables {
  return practice === null
    ? referenceTables
    : { ...referenceTables, authority: practice.authority?.value ?? referenceTables.authority };
}

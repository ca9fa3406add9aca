import type { Problem } from '../note/tree/finding.ts';
import type { Practice } from '../note/generated/types.ts';
import type { Source } from '../note/read.ts';
import { agents, type AgentRow } from '../reference/agents.ts';
import { endArteryAdvice, thinnerAdvice } from '../reference/advice.ts';
import { aftercare } from '../reference/aftercare.ts';
import { allergens, reactions, type AllergenRow, type ReactionRow } from '../reference/allergens.ts';
import { authorities, type AuthorityRow } from '../reference/authorities.ts';
import { bloodThinners, type BloodThinnerRow } from '../reference/blood-thinners.ts';
import {
  cautions,
  oldAge,
  readings,
  toleranceFrom,
  weightAges,
  type CautionRow,
} from '../reference/cautions.ts';
import { closures, type ClosureRow } from '../reference/closures.ts';
import { consents } from '../reference/consents.ts';
import { creams, type CreamRow } from '../reference/creams.ts';
import { depths, type DepthRow } from '../reference/depths.ts';
import { diagnoses, type DiagnosisRow } from '../reference/diagnoses.ts';
import { dressings, type DressingRow } from '../reference/dressings.ts';
import { cardiacConditions, epinephrine } from '../reference/epinephrine.ts';
import { events } from '../reference/events.ts';
import { reportHeads } from '../reference/report-heads.ts';
import { contacts, otherPersons, patientWords, type ContactRow } from '../reference/contact-ways.ts';
import {
  eventTerms,
  findingsToAct,
  homeCare,
  recalls,
  scarCheck,
  scarRisks,
  slowTests,
  terms,
  type FindingRow,
} from '../reference/follow-up.ts';
import { helpers } from '../reference/helpers.ts';
import { hemostasis, type HemostasisRow } from '../reference/hemostasis.ts';
import { implants, type ImplantRow } from '../reference/implants.ts';
import { otherConditions } from '../reference/conditions.ts';
import { mishaps, noMishaps, type MishapRow } from '../reference/mishaps.ts';
import { instruments } from '../reference/instruments.ts';
import { otherMedicines } from '../reference/medicines.ts';
import { techniques } from '../reference/techniques.ts';
import { abbreviations } from '../reference/abbreviations.ts';
import { laboratoryTests, type TestRow } from '../reference/laboratory-tests.ts';
import { layers } from '../reference/layers.ts';
import { lesions, type LesionRow } from '../reference/lesions.ts';
import { infantReduction, limits, type LimitRow } from '../reference/limits.ts';
import { materials, type MaterialRow } from '../reference/materials.ts';
import { media, type MediumRow } from '../reference/media.ts';
import { methods, type MethodRow } from '../reference/methods.ts';
import { preparations, type PreparationRow } from '../reference/preparations.ts';
import { qualifiers, type QualifierRow } from '../reference/qualifiers.ts';
import { relations } from '../reference/relations.ts';
import { irrelevantDrug } from '../reference/other-allergens.ts';
import { siteVolumes, type SiteVolumeRow } from '../reference/site-volumes.ts';
import { sites, siteTraits, type SiteRow } from '../reference/sites.ts';
import {
  lengthening,
  lengtheningStep,
  sutureWindows,
  type LengtheningRow,
  type PracticeSutureWindow,
  type SutureWindowRow,
} from '../reference/suture-windows.ts';
import { injectedDrugs, type InjectedDrugRow } from '../reference/injected-drugs.ts';
import { openPunch, sutureSizes } from '../reference/suture-sizes.ts';
import { withTradeNames } from '../reference/trade-names.ts';
import type { WordRow } from '../reference/types.ts';
import { weightRanges } from '../reference/weights-for-age.ts';
import { WordTable } from '../note/words/word-table.ts';
import { ClosedLoop, type LoosenedFollowUp } from './closed-loop.ts';
import { closedDaysOf, weekend, type ClosedDays } from './closed-days.ts';
import { Faults } from './faults.ts';
import { gapOf, wholeGap, type Gap } from './gap.ts';
import { limitsOf, type Loosened } from './limits.ts';
import {
  authorityOf,
  factsOf,
  overdueOf,
  severitiesOf,
  usualFacts,
  usualOverdue,
  windowsOf,
  type Overdue,
  type PracticeFacts,
  type SeverityWord,
} from './settings.ts';
import { stockOf, type StockProduct } from './stock.ts';
import {
  agentsOf,
  dressingWords,
  extended,
  hemostasisWords,
  named,
  plainRows,
  preparationWords,
  sitesOf,
  tradeNamesOf,
} from './words.ts';

export type { StockProduct };

/** All that is known for judging a note: the reference tables with the practice's file laid over them. */
export interface Tables {
  /** What is shown beside a value, and judges nothing. */
  readonly advice: typeof advice;
  /** Care at home as published. */
  readonly aftercare: typeof aftercare;
  readonly agents: WordTable<AgentRow>;
  readonly allergens: WordTable<AllergenRow>;
  /** How generic names of medicines end that are in nothing that is used here. */
  readonly irrelevantDrug: RegExp;
  readonly authorities: WordTable<AuthorityRow>;
  readonly bloodThinners: WordTable<BloodThinnerRow>;
  readonly cardiacConditions: WordTable<WordRow>;
  /** Conditions and medicines with which an anesthetic calls for care. */
  readonly cautions: WordTable<CautionRow>;
  readonly toleranceFrom: number;
  readonly oldAge: typeof oldAge;
  readonly readings: typeof readings;
  readonly weightAges: typeof weightAges;
  readonly closures: WordTable<ClosureRow>;
  readonly consents: WordTable<WordRow>;
  readonly creams: readonly CreamRow[];
  readonly depths: WordTable<DepthRow>;
  /** Diseases that need a sample of a certain kind. */
  readonly diagnoses: WordTable<DiagnosisRow>;
  readonly dressings: WordTable<DressingRow>;
  readonly epinephrine: typeof epinephrine;
  readonly events: WordTable<WordRow>;
  /** What says that nobody helps at home. */
  readonly helpers: WordTable<WordRow>;
  readonly hemostasis: WordTable<HemostasisRow>;
  /** Drugs that are injected into lesions and are no anesthetics. */
  readonly injectedDrugs: WordTable<InjectedDrugRow>;
  readonly instruments: WordTable<WordRow>;
  /** Conditions and medicines that are known and that no check judges by. */
  readonly otherConditions: WordTable<WordRow>;
  readonly otherMedicines: WordTable<WordRow>;
  /** Words by which a text says that something went wrong, and those that only look so. */
  readonly mishaps: readonly MishapRow[];
  readonly noMishaps: readonly WordRow[];
  readonly techniques: WordTable<WordRow>;
  readonly implants: WordTable<ImplantRow>;
  readonly layers: WordTable<WordRow>;
  readonly lesions: WordTable<LesionRow>;
  readonly abbreviations: typeof abbreviations;
  readonly materials: WordTable<MaterialRow>;
  readonly media: WordTable<MediumRow>;
  readonly methods: WordTable<MethodRow>;
  readonly preparations: WordTable<PreparationRow>;
  /** Words that change nothing about the word beside which they are written. */
  readonly qualifiers: readonly QualifierRow[];
  /** What was seen after something to which a patient is said to be allergic. */
  readonly reactions: WordTable<ReactionRow>;
  readonly relations: WordTable<WordRow>;
  readonly sites: WordTable<SiteRow>;
  readonly siteVolumes: readonly SiteVolumeRow[];
  readonly tests: WordTable<TestRow>;
  readonly infantReduction: typeof infantReduction;
  readonly limits: readonly LimitRow[];
  /** By the name of the product in plain form. */
  readonly stock: ReadonlyMap<string, StockProduct>;
  readonly weightRanges: typeof weightRanges;
  readonly sutureSizes: typeof sutureSizes;
  readonly openPunch: typeof openPunch;
  readonly sutureWindows: readonly SutureWindowRow[];
  /** What makes a wound hold late, and by how many days one step lengthens its window. */
  readonly lengthening: WordTable<LengtheningRow>;
  readonly lengtheningStep: number;
  /** The authority whose limits are the ceiling. */
  readonly authority: string;
  readonly severities: ReadonlyMap<string, SeverityWord>;
  /** Windows of the practice; of several that fit a site the last one counts. */
  readonly practiceWindows: readonly PracticeSutureWindow[];
  readonly closedDays: ClosedDays;
  readonly overdue: Overdue;
  /** What falls due after a visit, and when. */
  readonly followUp: typeof followUp;
  readonly practice: PracticeFacts;
  /** Safety limits that the practice has loosened, with who means it. */
  readonly loosened: readonly Loosened[];
  /** Settings by which the practice follows what is open less closely than is usual. */
  readonly loosenedFollowUp: readonly LoosenedFollowUp[];
  /** What of the practice's file is not in force though it is there; undefined where nothing is missing. */
  readonly gap: Gap | undefined;
}

const followUp = {
  contacts: new WordTable<ContactRow>(contacts),
  otherPersons: new WordTable<WordRow>(otherPersons),
  patientWords: new WordTable<WordRow>(patientWords),
  eventTerms,
  findings: new WordTable<FindingRow>(findingsToAct),
  homeCare,
  recalls: new WordTable<WordRow>(recalls),
  reportHeads,
  scarCheck,
  scarRisks: new WordTable<WordRow>(scarRisks),
  slowTests,
  terms,
};

const advice = { endArtery: endArteryAdvice, thinners: thinnerAdvice, sites: siteTraits };

/** The tables of a practice without a file of its own. */
export const referenceTables: Tables = {
  advice,
  aftercare,
  agents: new WordTable(withTradeNames(agents)),
  allergens: new WordTable(withTradeNames(allergens)),
  irrelevantDrug,
  authorities: new WordTable(authorities),
  bloodThinners: new WordTable(withTradeNames(bloodThinners)),
  cardiacConditions: new WordTable<WordRow>(cardiacConditions),
  cautions: new WordTable(withTradeNames(cautions)),
  toleranceFrom,
  oldAge,
  readings,
  weightAges,
  closures: new WordTable(withTradeNames(closures)),
  consents: new WordTable(consents),
  creams,
  depths: new WordTable(depths),
  diagnoses: new WordTable(diagnoses),
  dressings: new WordTable(withTradeNames(dressings)),
  epinephrine,
  events: new WordTable(events),
  helpers: new WordTable(helpers),
  hemostasis: new WordTable(withTradeNames(hemostasis)),
  injectedDrugs: new WordTable(withTradeNames(injectedDrugs)),
  instruments: new WordTable(instruments),
  otherConditions: new WordTable(otherConditions),
  otherMedicines: new WordTable(withTradeNames(otherMedicines)),
  mishaps,
  noMishaps,
  techniques: new WordTable(techniques),
  implants: new WordTable(withTradeNames(implants)),
  layers: new WordTable(layers),
  lesions: new WordTable(lesions),
  abbreviations,
  materials: new WordTable(withTradeNames(materials)),
  media: new WordTable(withTradeNames(media)),
  methods: new WordTable(methods),
  preparations: new WordTable(withTradeNames(preparations)),
  qualifiers,
  reactions: new WordTable(reactions),
  relations: new WordTable(relations),
  sites: new WordTable(sites),
  siteVolumes,
  tests: new WordTable(laboratoryTests),
  infantReduction,
  limits,
  stock: new Map(),
  weightRanges,
  sutureSizes,
  openPunch,
  sutureWindows,
  lengthening: new WordTable(withTradeNames(lengthening)),
  lengtheningStep,
  authority: 'US prescribing information',
  severities: new Map(),
  practiceWindows: [],
  closedDays: weekend,
  overdue: usualOverdue,
  followUp,
  practice: usualFacts,
  loosened: [],
  loosenedFollowUp: [],
  gap: undefined,
};

/** The tables where the practice has a file that can't be read: published values, and the word that they may not hold. */
export const unreadTables: Tables = { ...referenceTables, gap: wholeGap };

export interface Laid {
  readonly tables: Tables;
  /** What is wrong with the practice file beyond its form. */
  readonly problems: readonly Problem[];
}

export interface Trust {
  /** False in restricted mode: what loosens a safety limit is then left out, and so is the calendar. True where nothing is said. */
  readonly trusted?: boolean;
  /** Text of the calendar that the file names under `holidays`; undefined where it was not found or not looked for. */
  readonly holidays?: string | undefined;
}

/** The tables with a practice's file laid over them, and what the file gets wrong. */
export function layOver(practice: Practice | null, { trusted = true, holidays }: Trust = {}): Laid {
  if (practice === null) return { tables: referenceTables, problems: [] };
  const faults = new Faults();
  const chosen = authorityOf(practice, referenceTables.authorities, faults) ?? referenceTables.authority;
  // Another authority may be looser here and stricter there: in restricted mode both count.
  const authority = trusted ? chosen : referenceTables.authority;
  if (practice.authority !== undefined && chosen !== authority)
    faults.add('loosening-ignored', practice.authority, { authority: chosen }, 'authority');
  const published = chosen === authority ? limits : [...limits, ...asStricter(chosen)];
  const own = agentsOf(practice.words?.agents, referenceTables.agents, authority, trusted, faults);
  const sites = sitesOf(practice.words?.sites, referenceTables.sites, faults);
  const laid = limitsOf(
    practice.limits,
    {
      limits: [...published, ...own.limits],
      authorities: referenceTables.authorities,
      agents: own.agents,
      authority,
      trusted,
    },
    faults,
  );
  const loop = new ClosedLoop(practice, trusted, faults);
  const plain: Tables = {
    ...referenceTables,
    ...ownWordsOf(practice, faults),
    agents: own.agents,
    sites,
    authority,
    limits: laid.limits,
    loosened: [...own.loosened, ...laid.loosened],
    stock: stockOf(practice.stock, own.agents, faults),
    practiceWindows: loop.windows(windowsOf(practice, sites, faults), sites),
    closedDays: closedDaysOf(practice, { trusted, text: holidays }, faults),
    overdue: loop.overdue(overdueOf(practice, faults)),
    practice: factsOf(practice, faults),
    severities: loop.severities(severitiesOf(practice, faults)),
    // Filled by what is above.
    loosenedFollowUp: loop.loosened,
  };
  return { tables: traded(plain, practice, faults), problems: faults.problems };
}

/** The tables with the practice's trade names. */
function traded(tables: Tables, practice: Practice, faults: Faults): Tables {
  if (practice.tradeNames === undefined) return tables;
  const { agents, allergens, bloodThinners, cautions, closures, dressings, hemostasis } = tables;
  const { implants, lengthening, materials, media, otherMedicines, preparations } = tables;
  const all = [agents, allergens, bloodThinners, cautions, closures, dressings, hemostasis];
  const more = [implants, lengthening, materials, media, otherMedicines, preparations];
  const names = tradeNamesOf(practice, [...all, ...more], faults);
  const named = <Row extends WordRow>({ rows }: WordTable<Row>): WordTable<Row> =>
    new WordTable(withTradeNames(rows, names));
  return {
    ...tables,
    agents: named(agents),
    allergens: named(allergens),
    bloodThinners: named(bloodThinners),
    cautions: named(cautions),
    closures: named(closures),
    dressings: named(dressings),
    hemostasis: named(hemostasis),
    implants: named(implants),
    lengthening: named(lengthening),
    materials: named(materials),
    media: named(media),
    otherMedicines: named(otherMedicines),
    preparations: named(preparations),
  };
}

/** The tables with a practice's file laid over them as it was read, with what of it is not in force. */
export function tablesFrom(source: Source<Practice>, trust?: Trust): Tables {
  const { tables, problems } = layOver(source.value, trust);
  const gap = gapOf(source, problems);
  return gap === undefined ? tables : { ...tables, gap };
}

/** The tables with a practice's file laid over them. */
export const tablesOf = (practice: Practice | null, trust?: Trust): Tables => layOver(practice, trust).tables;

const asStricter = (authority: string): readonly LimitRow[] =>
  limits
    .filter((row) => row.authority === authority && row.notRecommended === undefined)
    .map((row) => ({ ...row, practice: 'stricter' }));

type OwnTables = Pick<
  Tables,
  'dressings' | 'media' | 'materials' | 'preparations' | 'hemostasis' | 'tests' | 'events'
>;

function ownWordsOf({ words }: Practice, faults: Faults): OwnTables {
  const { dressings, media, materials, preparations, hemostasis, tests, events } = referenceTables;
  return {
    dressings: extended(dressings, dressingWords(words?.dressings), faults, 'dressings'),
    media: extended(media, named(words?.media, plainRows.media), faults, 'media'),
    materials: extended(materials, named(words?.materials, plainRows.materials), faults, 'materials'),
    preparations: extended(preparations, preparationWords(words?.preparations), faults, 'preparations'),
    hemostasis: extended(hemostasis, hemostasisWords(words?.hemostasis), faults, 'hemostasis'),
    tests: extended(tests, named(words?.tests, plainRows.tests), faults),
    events: extended(events, named(words?.events, plainRows.events), faults),
  };
}

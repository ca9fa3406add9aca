import type { PreservativeFact } from '../../reference/agents.ts';
import type { Mark } from '../../reference/types.ts';
import type { Check, Report, Subject } from '../check.ts';
import { allergiesOf, entryOf, partsOf, type Allergies, type Named } from './_allergies.ts';
import { epinephrineAt, givenAgents, type GivenAgent } from './_given.ts';

const ownList = { source: 'format', mark: 'format' } as const;

const eased = {
  intolerance: 'What is told of it was no allergic reaction, but it should be settled first.',
  tolerated: 'It is said to have been tolerated since; make sure of it.',
  tested: 'A test is said to have been negative; make sure of it.',
} as const;

/** The agent itself, or the class that the entry names. */
function direct({ agent }: GivenAgent, allergies: Allergies): Named | undefined {
  for (const name of partsOf(agent)) {
    const named = allergies.agents.get(name);
    if (named !== undefined) return named;
  }
  if (agent.class === 'none') return undefined;
  return allergies.classes.get(agent.class) ?? allergies.classes.get('any');
}

/** Another agent of the same class, or what esters become. */
function sameClass({ agent }: GivenAgent, allergies: Allergies): Named | undefined {
  if (agent.class === 'none') return undefined;
  const alike = [...allergies.agents.values()].filter((named) => named.class === agent.class);
  const candidates = agent.class === 'ester' ? [...alike, ...allergies.esters] : alike;
  if (candidates.length === 0) return undefined;
  const cleared = allergies.cleared();
  if (partsOf(agent).every((name) => cleared.has(name))) return undefined;
  return candidates.find((named) => named.ease() !== 'intolerance');
}

const reportOf = (given: GivenAgent, named: Named): Report => ({
  at: given.at,
  args: { agent: given.agent.name, allergy: named.word, class: given.agent.class },
  related: entryOf(named),
});

/** A report that is a warning, and says why, where the entry is less than an allergy. */
function withEase(report: Report, named: Named, agent?: string): Report {
  const ease = named.ease(agent);
  if (ease === undefined) return report;
  return { ...report, form: 'eased', severity: 'warning', args: { ...report.args, ease: eased[ease] } };
}

/** A check of every anesthetic given, which is not asked where no allergy can concern it. */
const ofGiven = (
  concerns: (allergies: Allergies) => boolean,
  judge: (given: GivenAgent, allergies: Allergies) => Report | undefined,
): NonNullable<Check['find']> =>
  function (subject: Subject) {
    const found: Report[] = [];
    const allergies = allergiesOf(subject);
    if (!concerns(allergies)) return found;
    for (const given of givenAgents(subject)) {
      const report = judge(given, allergies);
      if (report !== undefined) found.push(report);
    }
    return found;
  };

/** Whether an entry names an anesthetic, a class of them, or what esters become. */
const namesAnesthetic = ({ agents, classes, esters }: Allergies): boolean =>
  agents.size + classes.size + esters.length > 0;

/** How loud a fact may be by the way it was verified. */
const loudest = (mark: Mark): 'error' | 'warning' | 'information' =>
  mark === 'Q' || mark === 'format' ? 'error' : mark === 'Q2' ? 'warning' : 'information';

const atMostWarning = (severity: 'error' | 'warning' | 'information', named: Named): typeof severity =>
  severity === 'error' && (named.mild || named.ease() !== undefined) ? 'warning' : severity;

function judgeAgent(given: GivenAgent, allergies: Allergies): Report | undefined {
  const named = direct(given, allergies);
  if (named === undefined) return undefined;
  return withEase(reportOf(given, named), named, given.agent.name);
}

function judgeClass(given: GivenAgent, allergies: Allergies): Report | undefined {
  if (direct(given, allergies) !== undefined) return undefined;
  const named = sameClass(given, allergies);
  if (named === undefined) return undefined;
  return { ...reportOf(given, named), form: given.agent.class };
}

function judgePreservative(given: GivenAgent, allergies: Allergies): Report | undefined {
  for (const fact of given.agent.preservatives) {
    const report = preservativeReport(given, fact, allergies);
    if (report !== undefined) return report;
  }
  return undefined;
}

function preservativeReport(
  given: GivenAgent,
  fact: PreservativeFact,
  { substances, crossed }: Allergies,
): Report | undefined {
  const own = substances.get(fact.name);
  const named = own ?? crossed.get(fact.name)?.named;
  const holds = holdsPreservative(given, fact);
  if (named === undefined || holds === 'no') return undefined;
  const { args, ...report } = reportOf(given, named);
  const words = { ...args, preservative: fact.name, forms: fact.forms };
  if (own === undefined) return { ...report, args: words, form: 'crossed', severity: 'information' };
  const severity = atMostWarning(holds === 'yes' ? loudest(fact.mark) : 'warning', named);
  return { ...report, args: words, form: holds === 'yes' ? 'main' : 'unsaid', severity };
}

/** Whether what was given holds a preservative, as far as note and practice file say. */
function holdsPreservative(
  { injection, product }: GivenAgent,
  { name, always }: PreservativeFact,
): 'yes' | 'no' | 'unsaid' {
  if (always) return 'yes';
  const free = injection.preservativeFree?.value ?? product?.preservativeFree;
  if (free !== undefined) return free ? 'no' : 'yes';
  const listed = product?.preservatives;
  if (listed === undefined) return 'unsaid';
  return listed.some((one) => one.toLowerCase().includes(name)) ? 'yes' : 'no';
}

function judgeSulfite(given: GivenAgent, allergies: Allergies): Report | undefined {
  const named = allergies.substances.get('sulfite');
  const at = epinephrineAt(given);
  if (named === undefined || at === undefined || given.product?.sulfite === false) return undefined;
  const mark = given.agent.sulfiteWithEpinephrine?.mark;
  const severity = mark === undefined ? 'warning' : loudest(mark);
  return { ...reportOf(given, named), at, severity: atMostWarning(severity, named) };
}

function judgeEpinephrine(given: GivenAgent, allergies: Allergies): Report | undefined {
  const named = allergies.substances.get('epinephrine');
  const at = epinephrineAt(given);
  if (named === undefined || at === undefined) return undefined;
  return withEase({ ...reportOf(given, named), at }, named);
}

const entry = 'the patient is listed as allergic to {allergy} here';

export const checks: readonly Check[] = [
  {
    code: 'allergy/agent',
    about: ['allergies'],
    severity: 'error',
    title: 'An anesthetic to which the patient is allergic',
    why: 'A second contact can end in anaphylaxis. An entry whose reaction was no allergy (racing heart, faint), or that says that just this was tolerated or tested negative since, is a warning.',
    sources: [{ source: 'us-label-amide-contraindication', mark: 'Q' }, ownList],
    messages: {
      main: '{agent} was given to a patient who is listed as allergic to {allergy}. Use another class or no injection, or correct the list of allergies; if it was given, watch for a reaction.',
      eased: '{agent} was given to a patient whose list of allergies names {allergy}. {ease}',
      entry,
    },
    find: ofGiven(namesAnesthetic, judgeAgent),
  },
  {
    code: 'allergy/same-class',
    about: ['allergies'],
    severity: 'warning',
    title: 'An anesthetic of the class to which the patient is allergic',
    why: 'Labels forbid amides after a reaction to any amide. Esters share a metabolite, para-aminobenzoic acid. Quiet where the list of allergies says that the agent was tolerated or tested negative since.',
    sources: [
      { source: 'us-label-amide-contraindication', mark: 'Q' },
      { source: 'wikem-local-anesthetics', mark: 'Q' },
      { source: 'medscape-anesthetic-allergy', mark: 'Q' },
    ],
    messages: {
      amide:
        '{agent} is an amide, and so is {allergy}, to which the patient is listed as allergic: labels forbid every amide then. Choose another class, or write under `tolerates` or `tested` what shows that {agent} is in order.',
      ester:
        '{agent} is an ester and becomes para-aminobenzoic acid, like what the patient is listed as allergic to ({allergy}). Choose an amide, or write under `tolerates` or `tested` what shows that {agent} is in order.',
      entry,
    },
    find: ofGiven(namesAnesthetic, judgeClass),
  },
  {
    code: 'allergy/preservative',
    about: ['allergies'],
    severity: 'error',
    title: 'A preservative to which the patient is allergic',
    why: 'Multiple-dose vials hold methylparaben, bacteriostatic saline holds benzyl alcohol. Single-dose vials are made without. Sources differ on whether parabens cross with para-aminobenzoic acid: the check mentions it, and no more.',
    sources: [
      { source: 'us-label-multidose-lidocaine', mark: 'Q' },
      { source: 'handbook-mepivacaine', mark: 'Q' },
      { source: 'permanente-2002', mark: 'Q' },
      { source: 'nus-parabens', mark: 'Q' },
    ],
    messages: {
      main: 'This {agent} holds {preservative}, and the patient is listed as allergic to {allergy}. Use a single-dose vial without preservative.',
      unsaid:
        '{agent} from {forms} holds {preservative}, and the patient is listed as allergic to {allergy}. If a vial without preservative is used, write `preservative-free: yes`; otherwise use one.',
      crossed:
        '{agent} from {forms} holds {preservative}; whether it crosses with {allergy} is disputed. A vial without preservative settles it: `preservative-free: yes`.',
      entry,
    },
    find: ofGiven(({ any }) => any, judgePreservative),
  },
  {
    code: 'allergy/sulfite',
    about: ['allergies'],
    severity: 'error',
    title: 'Epinephrine in solution for a patient who is allergic to sulfite',
    why: 'Solutions of local anesthetic with epinephrine hold a metabisulfite. Sulfa drugs are something else and do not cross.',
    sources: [
      { source: 'us-label-articaine-sulfite', mark: 'Q' },
      { source: 'us-label-potassium-metabisulfite', mark: 'Q' },
    ],
    messages: {
      main: 'Solutions of {agent} with epinephrine hold a sulfite, and the patient is listed as allergic to {allergy}. Use a plain solution, or name a product of the practice file that has `sulfite: no`.',
      entry,
    },
    find: ofGiven(({ substances }) => substances.has('sulfite'), judgeSulfite),
  },
  {
    code: 'allergy/epinephrine',
    about: ['allergies'],
    severity: 'error',
    title: 'Epinephrine for a patient who is listed as allergic to it',
    why: 'A racing heart after epinephrine is its effect and no allergy; such an entry is a warning. An entry without a reaction can not be told from an allergy, which may have been to the sulfite beside it.',
    sources: [ownList],
    messages: {
      main: 'The solution holds epinephrine, and the patient is listed as allergic to {allergy}. Use a plain solution, or write under `reaction` what happened.',
      eased: 'The solution holds epinephrine, which the list of allergies names. {ease}',
      entry,
    },
    find: ofGiven(({ substances }) => substances.has('epinephrine'), judgeEpinephrine),
  },
];

import type { Report } from '../../note/tree/finding.ts';
import type { PreservativeFact } from '../../reference/agents.ts';
import type { Check } from '../check.ts';
import { type Allergies } from '../allergies.ts';
import { type GivenAgent } from './_given.ts';
import { reportOf, ofGiven, loudest, atMostWarning, entry } from './_agent.ts';

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
  const form = fact.always ? 'always' : holds === 'yes' ? 'main' : 'unsaid';
  return { ...report, args: words, form, severity };
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

export const check: Check = {
  code: 'allergy/preservative',
  severity: 'error',
  title: 'A preservative to which the patient is allergic',
  why: 'Multiple-dose vials contain methylparaben, bacteriostatic saline contains benzyl alcohol. Single-dose vials are made without. Sources differ on whether parabens cross-react with para-aminobenzoic acid, so the check only mentions it.',
  sources: [
    { source: 'us-label-multidose-lidocaine', mark: 'Q' },
    { source: 'handbook-mepivacaine', mark: 'Q' },
    { source: 'permanente-2002', mark: 'Q' },
    { source: 'nus-parabens', mark: 'Q' },
  ],
  messages: {
    main: 'This {agent} contains {preservative}, and the patient is listed as allergic to {allergy}. Use a single-dose vial without preservative.',
    always:
      '{agent} always contains {preservative}, and the patient is listed as allergic to {allergy}. Use an anesthetic from a vial without preservative; plain saline does not numb.',
    unsaid:
      '{agent} from {forms} contains {preservative}, and the patient is listed as allergic to {allergy}. If a vial without preservative is used, write `preservative-free: yes`; otherwise use one.',
    crossed:
      '{agent} from {forms} contains {preservative}; whether it cross-reacts with {allergy} is disputed. A vial without preservative settles it: `preservative-free: yes`.',
    entry,
  },
  alternatives: { readAs: [], forms: ['main'] },
  sourcesDiffer: {
    how: 'Some name a cross-reaction between parabens and para-aminobenzoic acid, others see none that matters. It is mentioned, and no more.',
    settings: [],
  },
  find: ofGiven(({ any }) => any, judgePreservative),
};

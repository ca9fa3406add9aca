import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import { partsOf, type Allergies, type Named } from '../allergies.ts';
import { type GivenAgent } from './_given.ts';
import { direct, reportOf, ofGiven, namesAnesthetic, entry } from './_agent.ts';

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

function judgeClass(given: GivenAgent, allergies: Allergies): Report | undefined {
  if (direct(given, allergies) !== undefined) return undefined;
  const named = sameClass(given, allergies);
  if (named === undefined) return undefined;
  return { ...reportOf(given, named), form: given.agent.class };
}

export const check: Check = {
  code: 'allergy/same-class',
  severity: 'warning',
  title: 'An anesthetic of the class to which the patient is allergic',
  why: 'Labels forbid amides after a reaction to any amide. Esters become para-aminobenzoic acid or, for chloroprocaine, a relative of it; labels forbid them all in patients allergic to it. Hair dye with paraphenylenediamine is of the same group. Nothing is reported where the list of allergies says that the agent was tolerated or tested negative since.',
  sources: [
    { source: 'us-label-amide-contraindication', mark: 'Q' },
    { source: 'wikem-local-anesthetics', mark: 'Q' },
    { source: 'medscape-anesthetic-allergy', mark: 'Q' },
    { source: 'para-group', mark: 'Q2' },
  ],
  messages: {
    amide:
      '{agent} is an amide like {allergy}, to which the patient is listed as allergic: labels forbid every amide. Choose another class, or write under `tolerates` or `tested` why {agent} is safe.',
    ester:
      '{agent} is an ester: it becomes para-aminobenzoic acid or a relative of it, and the patient is listed as allergic to {allergy}. Choose an amide, or write under `tolerates` or `tested` why {agent} is safe.',
    entry,
  },
  alternatives: { readAs: [] },
  find: ofGiven(namesAnesthetic, judgeClass),
};

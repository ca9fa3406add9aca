import type { Check } from '../check.ts';
import type { Report } from '../check.ts';
import { type Allergies } from './_allergies.ts';
import { epinephrineAt, type GivenAgent } from './_given.ts';
import { reportOf, ofGiven, loudest, atMostWarning, entry } from './_agent.ts';

function judgeSulfite(given: GivenAgent, allergies: Allergies): Report | undefined {
  const named = allergies.substances.get('sulfite');
  const at = epinephrineAt(given);
  if (named === undefined || at === undefined || given.product?.sulfite === false) return undefined;
  const mark = given.agent.sulfiteWithEpinephrine?.mark;
  const severity = mark === undefined ? 'warning' : loudest(mark);
  return { ...reportOf(given, named), at, severity: atMostWarning(severity, named) };
}

export const check: Check = {
  code: 'allergy/sulfite',
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
  alternatives: { readAs: [] },
  find: ofGiven(({ substances }) => substances.has('sulfite'), judgeSulfite),
};

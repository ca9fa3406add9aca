import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import { type Allergies } from '../allergies.ts';
import { epinephrineAt, type GivenAgent } from './_given.ts';
import { reportOf, ofGiven, loudest, atMostWarning, entry } from './_agent.ts';

function judgeSulfite(given: GivenAgent, allergies: Allergies): Report | undefined {
  const named = allergies.substances.get('sulfite');
  if (named === undefined || given.product?.sulfite === false) return undefined;
  const { sulfite, sulfiteWithEpinephrine } = given.agent;
  if (sulfite !== undefined) {
    const severity = atMostWarning(loudest(sulfite.mark), named);
    return { ...reportOf(given, named), form: 'always', severity };
  }
  const at = epinephrineAt(given);
  if (at === undefined) return undefined;
  const mark = sulfiteWithEpinephrine?.mark;
  const severity = mark === undefined ? 'warning' : loudest(mark);
  return { ...reportOf(given, named), at, severity: atMostWarning(severity, named) };
}

export const check: Check = {
  code: 'allergy/sulfite',
  severity: 'error',
  title: 'A solution with sulfite for a patient who is allergic to it',
  why: 'Solutions of local anesthetic with epinephrine contain a metabisulfite, and procaine contains a sulfite in its plain form too. Sulfa drugs are different and do not cross-react.',
  sources: [
    { source: 'us-label-articaine-sulfite', mark: 'Q' },
    { source: 'us-label-potassium-metabisulfite', mark: 'Q' },
    { source: 'us-label-procaine', mark: 'Q' },
    { source: 'us-label-mepivacaine-levonordefrin', mark: 'Q' },
  ],
  messages: {
    always:
      '{agent} contains a sulfite in every form, and the patient is listed as allergic to {allergy}. Use another anesthetic, plain.',
    main: 'Solutions of {agent} with epinephrine contain a sulfite, and the patient is listed as allergic to {allergy}. Use a plain solution, or name a product of the practice file that has `sulfite: no`.',
    entry,
  },
  alternatives: { readAs: [] },
  find: ofGiven(({ substances }) => substances.has('sulfite'), judgeSulfite),
};

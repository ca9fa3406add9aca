import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import { type Allergies } from '../allergies.ts';
import { epinephrineAt, type GivenAgent } from './_given.ts';
import { reportOf, withEase, ofGiven, entry, unclearEntry } from './_agent.ts';
import { format } from '../sources.ts';

function judgeEpinephrine(given: GivenAgent, allergies: Allergies): Report | undefined {
  const named = allergies.substances.get('epinephrine');
  const at = epinephrineAt(given);
  if (named === undefined || at === undefined) return undefined;
  return withEase({ ...reportOf(given, named), at }, named);
}

export const check: Check = {
  code: 'allergy/epinephrine',
  severity: 'error',
  title: 'Epinephrine for a patient who is listed as allergic to it',
  why: 'A racing heart after epinephrine is its effect, not an allergy; such an entry is a warning. An entry without a reaction may be a true allergy, or one to the sulfite in the same solution.',
  sources: [format],
  messages: {
    main: 'The solution contains epinephrine, and the patient is listed as allergic to {allergy}. Use a plain solution, or write under `reaction` what happened.',
    eased: 'The solution contains epinephrine, which the list of allergies names. {ease}',
    entry,
  },
  alternatives: { readAs: [] },
  unclear: unclearEntry,
  find: ofGiven(({ substances }) => substances.has('epinephrine'), judgeEpinephrine),
};

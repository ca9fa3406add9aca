import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import { type Allergies } from '../allergies.ts';
import { type GivenAgent } from './_given.ts';
import { direct, reportOf, withEase, ofGiven, namesAnesthetic, entry, unclearEntry } from './_agent.ts';
import { format } from '../sources.ts';

/** Whether the entries name both classes, so that no other anesthetic can be advised. */
const leavesNone = ({ classes }: Allergies): boolean =>
  classes.has('any') || (classes.has('amide') && classes.has('ester'));

function judgeAgent(given: GivenAgent, allergies: Allergies): Report | undefined {
  const named = direct(given, allergies);
  if (named === undefined) return undefined;
  const form = leavesNone(allergies) ? 'any' : 'main';
  return withEase({ ...reportOf(given, named), form }, named, given.agent.name);
}

export const check: Check = {
  code: 'allergy/agent',
  severity: 'error',
  title: 'An anesthetic to which the patient is allergic',
  why: 'A second contact can end in anaphylaxis. An entry whose reaction was not an allergy (racing heart, fainting), or that says this drug was tolerated or tested negative since, is a warning.',
  sources: [{ source: 'us-label-amide-contraindication', mark: 'Q' }, format],
  messages: {
    main: '{agent} was given to a patient who is listed as allergic to {allergy}. Use another class or no injection, or correct the list of allergies; if it was given, watch for a reaction.',
    any: '{agent} was given to a patient who is listed as allergic to {allergy}: Wheal knows no other local anesthetic. Postpone, or have the allergy tested first; if given, watch for a reaction.',
    eased: '{agent} was given to a patient whose list of allergies names {allergy}. {ease}',
    entry,
  },
  alternatives: { readAs: [] },
  unclear: unclearEntry,
  find: ofGiven(namesAnesthetic, judgeAgent),
};

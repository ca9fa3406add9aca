import type { Report } from '../../note/tree/finding.ts';
import type { Mark } from '../../reference/types.ts';
import type { Check, Subject } from '../check.ts';
import { allergiesOf, entryOf, partsOf, type Allergies, type Named } from '../allergies.ts';
import { givenAgents, type GivenAgent } from './_given.ts';

export const eased = {
  intolerance: 'What is described was not an allergic reaction, but it should be settled first.',
  tolerated: 'It is said to have been tolerated since; make sure of it.',
  open: 'Its words leave it open whether that is an allergy: ask, and write what it is.',
  tested: 'A test is said to have been negative; make sure of it.',
} as const;

/** The agent itself, or the class that the entry names. */
export function direct({ agent }: GivenAgent, allergies: Allergies): Named | undefined {
  for (const name of partsOf(agent)) {
    const named = allergies.agents.get(name);
    if (named !== undefined) return named;
  }
  if (agent.class === 'none') return undefined;
  return allergies.classes.get(agent.class) ?? allergies.classes.get('any');
}

export const reportOf = (given: GivenAgent, named: Named): Report => ({
  at: given.at,
  args: { agent: given.agent.name, allergy: named.word, class: given.agent.class },
  related: entryOf(named),
});

/** The allergy that the words of an entry leave open. */
export const unclearEntry: NonNullable<Check['unclear']> = ({ args }) =>
  args['ease'] === eased.open ? { key: 'allergies', name: String(args['allergy']) } : undefined;

/** A report that is a warning, and says why, where the entry is less than an allergy. */
export function withEase(report: Report, named: Named, agent?: string): Report {
  const ease = named.ease(agent);
  if (ease === undefined) return report;
  return { ...report, form: 'eased', severity: 'warning', args: { ...report.args, ease: eased[ease] } };
}

/** A check of every anesthetic given, which is not asked where no allergy can concern it. */
export const ofGiven = (
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
export const namesAnesthetic = ({ agents, classes, esters }: Allergies): boolean =>
  agents.size + classes.size + esters.length > 0;

/** How loud a fact may be by the way it was verified. */
export const loudest = (mark: Mark): 'error' | 'warning' | 'information' =>
  mark === 'Q' || mark === 'format' ? 'error' : mark === 'Q2' ? 'warning' : 'information';

export const atMostWarning = (
  severity: 'error' | 'warning' | 'information',
  named: Named,
): typeof severity =>
  severity === 'error' && (named.mild || named.ease() !== undefined) ? 'warning' : severity;

export const entry = 'the patient is listed as allergic to {allergy} here';

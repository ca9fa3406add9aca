import type { Report } from '../../note/tree/finding.ts';
import { allergiesOf } from '../allergies.ts';
import { bounded } from '../bounded.ts';
import type { Check, Subject } from '../check.ts';
import { daysOf } from './_days.ts';
import { placeOf, usedOn } from './_caution-findings.ts';

/** Whether the list of allergies names an anesthetic, so that little else may be left. */
function isAllergic(subject: Subject): boolean {
  const { agents, classes, esters } = allergiesOf(subject);
  return agents.size + classes.size + esters.length > 0;
}

function find(subject: Subject): readonly Report[] {
  const { note, dose, siteOf } = subject;
  const found: Report[] = [];
  for (const day of daysOf(dose))
    for (const { agent, injection } of usedOn(day)) {
      const fact = agent.notForAnesthesia;
      if (fact === undefined) continue;
      const procedures = note.procedures ?? [];
      const own = procedures.filter(({ anesthetic }) => anesthetic?.includes(injection));
      const end = (own.length === 0 ? procedures : own)
        .map((procedure) => siteOf(procedure)?.base)
        .find((base) => base?.endArtery === true);
      found.push({
        at: placeOf(injection),
        severity: bounded(end === undefined && isAllergic(subject) ? 'information' : 'warning', fact.mark),
        form: end === undefined ? 'main' : 'end-artery',
        args: { agent: agent.name, site: end?.name ?? '' },
      });
    }
  return found;
}

export const check: Check = {
  code: 'dose/not-an-anesthetic',
  severity: 'warning',
  title: 'A medicine whose label rules out numbing skin with it',
  why: 'Diphenhydramine numbs, and case reports and a guideline name it for patients allergic to all others; its label rules this out, since skin died where it was injected. Where the list of allergies names an anesthetic it is information, except where end arteries supply the skin.',
  sources: [
    { source: 'us-label-diphenhydramine', mark: 'Q' },
    { source: 'diphenhydramine-2009', mark: 'Q' },
  ],
  messages: {
    main: 'The label of {agent} rules out its use as a local anesthetic: skin can die. Consider another; if it was given, look at the site again.',
    'end-artery':
      'The label of {agent} rules out its use as a local anesthetic, and the {site} is supplied by end arteries: skin can die. Use another; if it was given, look at the site again.',
  },
  find,
};

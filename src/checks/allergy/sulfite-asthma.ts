import type { Report } from '../../note/tree/finding.ts';
import { bounded } from '../bounded.ts';
import type { Check, Subject } from '../check.ts';
import { cautionsOf } from '../dose/_cautions.ts';
import { nameOf, said, saidHere } from '../dose/_caution-findings.ts';
import { allergiesOf } from '../allergies.ts';
import { epinephrineAt, givenAgents } from './_given.ts';

function find(subject: Subject): readonly Report[] {
  const caution = cautionsOf(subject).find(({ row }) => row.sulfite !== undefined);
  // The list of allergies is judged by a check of its own.
  if (caution?.row.sulfite === undefined || allergiesOf(subject).substances.has('sulfite')) return [];
  const severity = bounded('warning', caution.row.sulfite.mark);
  return givenAgents(subject).flatMap((given): readonly Report[] => {
    if (given.product?.sulfite === false) return [];
    const at = given.agent.sulfite === undefined ? epinephrineAt(given) : given.at;
    if (at === undefined) return [];
    return [
      { at, severity, args: { agent: given.agent.name, name: nameOf(caution) }, related: [said(caution)] },
    ];
  });
}

export const check: Check = {
  code: 'allergy/sulfite-asthma',
  severity: 'warning',
  title: 'A solution with sulfite for a patient whose asthma reacts to it',
  why: 'Solutions of local anesthetic with epinephrine contain a metabisulfite, and labels rule them out in hypersensitivity to sulfite. Asthma alone is not reported: most people with asthma tolerate sulfites.',
  sources: [
    { source: 'us-label-articaine-sulfite', mark: 'Q' },
    { source: 'us-label-potassium-metabisulfite', mark: 'Q' },
  ],
  messages: {
    main: 'This {agent} contains a sulfite, and the note mentions {name}. Use a plain solution of another agent; if it was given, watch the breathing.',
    ...saidHere,
  },
  find,
};

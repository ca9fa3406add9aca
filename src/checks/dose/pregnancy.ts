import type { Report } from '../../note/tree/finding.ts';
import type { AgentRow } from '../../reference/agents.ts';
import type { Check, Subject } from '../check.ts';
import { cautionsOf } from './_cautions.ts';
import { daysOf } from './_days.ts';
import { said, saidHere, usedOn, placeOf } from './_caution-findings.ts';

function inPregnancy(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysOf(subject.dose))
    for (const one of usedOn(day)) {
      const { agent, injection } = one;
      if (agent.class === 'none' || !isOther(agent)) continue;
      const caution = cautionsOf(subject).find(({ row }) => row.pregnancy !== undefined);
      if (caution !== undefined)
        found.push({
          at: placeOf(injection),
          args: { agent: agent.name },
          related: [said(caution)],
          rests: caution.row.pregnancy,
        });
    }
  return found;
}

/** Whether it holds another anesthetic than lidocaine. */
const isOther = ({ name, contains }: AgentRow): boolean =>
  contains.length === 0 ? name !== 'lidocaine' : contains.some((one) => one !== 'lidocaine');

export const check: Check = {
  code: 'dose/pregnancy',
  severity: 'information',
  title: 'Another anesthetic than lidocaine in pregnancy',
  why: 'The academy’s guideline holds lidocaine usable in pregnancy and the evidence on others too thin, and has elective procedures wait.',
  sources: [{ source: 'aad-2016-summary', mark: 'Q' }],
  messages: {
    main: '{agent} in pregnancy: the guideline knows too little of it, and holds lidocaine usable. Weigh lidocaine alone.',
    ...saidHere,
  },
  find: inPregnancy,
};

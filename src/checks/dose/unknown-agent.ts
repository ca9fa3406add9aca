import type { Report } from '../../note/tree/finding.ts';
import { nearest } from '../../note/text/nearest.ts';
import { agentOf } from '../../dose/injections.ts';
import type { Check, Subject } from '../check.ts';
import { injectionsOf } from './_days.ts';
import { meant, fix } from './_agents.ts';
import { format } from '../sources.ts';

function unknownAgents({ dose, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const injection of injectionsOf(dose)) {
    const { agent } = injection;
    if (agent?.value === undefined || agentOf(injection, tables) !== undefined) continue;
    const near = nearest(agent.value, tables.agents.words, (word) => tables.agents.find(word));
    found.push({ at: agent, args: { agent: agent.value, ...(near && { near: near.word }) }, ...meant(near) });
  }
  return found;
}

export const check: Check = {
  code: 'dose/unknown-agent',
  severity: 'error',
  title: 'An anesthetic that is not known',
  why: 'Without knowing the drug neither the dose nor an allergy can be checked.',
  sources: [format],
  messages: {
    main: '“{agent}” is not an anesthetic that is known here, so neither dose nor allergy can be checked. Write its generic name, such as lidocaine.',
    near: '“{agent}” is not an anesthetic that is known here, so neither dose nor allergy can be checked. Did you mean {near}?',
  },
  find: unknownAgents,
  fix,
};

import type { DoseJudgement, Given } from '../../dose/judge.ts';
import type { Injection } from '../../note/generated/types.ts';
import type { AgentRow } from '../../reference/agents.ts';
import type { Report } from '../check.ts';
import { type Caution } from './_cautions.ts';

export const said = ({ at, row }: Caution): NonNullable<Report['related']>[number] => ({
  start: at.start,
  end: at.end,
  form: 'said',
  args: { name: row.name },
});

export const saidHere = '{name} is said here';

export const epinephrineAt = ({ injection, at }: Given): Report['at'] =>
  injection.epinephrine ?? injection.product ?? at;

export const withEpinephrine = ({ given }: DoseJudgement): readonly Given[] =>
  given.filter(({ epinephrineMicrograms }) => epinephrineMicrograms > 0);

export interface Used {
  readonly agent: AgentRow;
  readonly injection: Injection;
}

export const usedOn = ({ given, creams, unlimited }: DoseJudgement): readonly Used[] => [
  ...given,
  ...creams.flatMap(({ applied }) => applied),
  ...unlimited,
];

export const placeOf = ({ agent, product, head }: Injection): Report['at'] => agent ?? product ?? head;

/** Whether it is an agent, or has it in it. */
export const holds = ({ agent }: Used, name: string): boolean =>
  agent.name === name || agent.contains.includes(name);

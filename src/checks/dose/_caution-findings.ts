import type { Report } from '../../note/tree/finding.ts';
import type { DoseJudgement, Given } from '../../dose/judge.ts';
import type { Severity } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import type { Injection } from '../../note/generated/types.ts';
import type { AgentRow } from '../../reference/agents.ts';
import { type Caution } from './_cautions.ts';

/** Where the note says what calls for care, or leaves it open. */
export const said = ({ at, row, open }: Caution): NonNullable<Report['related']>[number] => ({
  start: at.start,
  end: at.end,
  form: open ? 'open' : 'said',
  args: { name: row.name, key: row.kind === 'condition' ? 'conditions' : 'medications' },
});

/** The condition or medicine that the note leaves open. */
export const unclearCaution: NonNullable<Check['unclear']> = ({ related }) => {
  const { key, name } = related.find(({ form }) => form === 'open')?.args ?? {};
  return key === 'conditions' || key === 'medications' ? { key, name: String(name) } : undefined;
};

/** The messages for where it is said. */
export const saidHere = { said: '{name} is mentioned here', open: 'it is unclear here whether it is {name}' };

/** The name for a message, which says where the note leaves it open. */
export const nameOf = ({ row, open, typed }: Caution): string =>
  typed !== undefined
    ? `${row.name} (as \`${typed}\` is read: look it up)`
    : open
      ? `${row.name} (unclear in the note: ask, and write it)`
      : row.name;

/** What is left open is a warning at most. */
export const opened = (severity: Severity, { open }: Caution): Severity =>
  open && severity === 'error' ? 'warning' : severity;

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

import type { Note } from '../note/generated/types.ts';
import type { Range } from '../note/tree.ts';
import type { Tables } from '../practice/tables.ts';
import type { AgentRow, LimitRow } from '../reference/types.ts';
import { isOver } from './arithmetic.ts';

/** One injection in mg of the drug that was drawn. */
export interface Given {
  readonly agent: AgentRow;
  readonly withEpinephrine: boolean;
  readonly mg: number;
  readonly epinephrineMicrograms: number;
  /** Where its volume stands. */
  readonly at: Range;
}

/** All of one agent, with or without epinephrine, against its own limit. */
export interface AgentDose {
  readonly agent: string;
  readonly epinephrine: boolean;
  readonly mg: number;
  readonly mgPerKg: number | null;
  readonly limitMg: number;
  readonly boundBy: 'weight' | 'cap';
  readonly fraction: number;
  readonly limit: LimitRow;
  readonly given: readonly Given[];
}

export interface DoseJudgement {
  readonly judged: boolean;
  /** Sum of the agents' fractions of their own limits; null where it can't be judged. */
  readonly fraction: number | null;
  readonly why: string | undefined;
  readonly epinephrineMicrograms: number;
  readonly agents: readonly AgentDose[];
}

/** Judges the anesthetic of a whole visit. */
export function judgeDose(note: Note, tables: Tables): DoseJudgement {
  const given = [
    ...(note.anesthetic ?? []),
    ...(note.procedures ?? []).flatMap((procedure) => procedure.anesthetic ?? []),
  ].flatMap((injection): Given[] => {
    const agent =
      injection.agent?.value === undefined ? undefined : tables.agents.find(injection.agent.value);
    const strength = injection.concentration?.value?.amount;
    const volume = injection.volume;
    if (agent === undefined || strength === undefined || volume?.value === undefined) return [];
    return [
      {
        agent,
        withEpinephrine: injection.epinephrine !== undefined,
        mg: volume.value.amount * strength,
        epinephrineMicrograms: 0,
        at: volume,
      },
    ];
  });
  const kg = note.patient?.weight?.value?.amount;
  if (kg === undefined)
    return { judged: false, fraction: null, why: 'no weight', epinephrineMicrograms: 0, agents: [] };
  const agents = tables.limits.flatMap((limit): AgentDose[] => {
    const own = given.filter(
      (one) => one.agent.name === limit.agent && one.withEpinephrine === limit.epinephrine,
    );
    if (own.length === 0) return [];
    const mg = own.reduce((sum, one) => sum + one.mg, 0);
    const byWeight = (limit.mgPerKg ?? Infinity) * kg;
    const cap = limit.capMg ?? Infinity;
    const limitMg = Math.min(byWeight, cap);
    return [
      {
        agent: limit.agent,
        epinephrine: limit.epinephrine,
        mg,
        mgPerKg: mg / kg,
        limitMg,
        boundBy: byWeight <= cap ? 'weight' : 'cap',
        fraction: mg / limitMg,
        limit,
        given: own,
      },
    ];
  });
  return {
    judged: true,
    fraction: agents.reduce((sum, one) => sum + one.fraction, 0),
    why: undefined,
    epinephrineMicrograms: 0,
    agents,
  };
}

export const overLimit = (dose: DoseJudgement): boolean => dose.fraction !== null && isOver(dose.fraction, 1);

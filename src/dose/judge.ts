import type { Note } from '../note/generated/types.ts';
import type { Range } from '../note/tree.ts';
import type { Tables } from '../practice/tables.ts';
import type { AgentRow } from '../reference/agents.ts';
import type { LimitRow } from '../reference/limits.ts';
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

/** What may still be given of a product that was used, or that the practice would reach for. */
export interface Left {
  readonly product: string;
  readonly mg: number;
  /** Rounded down to 0.1 mL. */
  readonly ml: number;
}

/** One step of the sum, in the words that a hover or a summary shows. */
export interface Step {
  readonly text: string;
  /** Key of the table of sources. */
  readonly source?: string;
}

/** A published limit below or beside the ceiling that this dose passes. */
export interface Advisory {
  readonly limit: LimitRow;
  readonly maxMg: number;
  readonly mg: number;
}

export interface DoseJudgement {
  readonly judged: boolean;
  /** Sum of the agents' fractions of their own limits; null where it can't be judged. */
  readonly fraction: number | null;
  /** Why it can't be judged, or not in full. */
  readonly why: string | undefined;
  readonly epinephrineMicrograms: number;
  readonly agents: readonly AgentDose[];
  readonly left: readonly Left[];
  readonly advisories: readonly Advisory[];
  /** The whole sum, in order, so that every number can be followed. */
  readonly steps: readonly Step[];
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
    return {
      judged: false,
      fraction: null,
      why: 'no weight',
      epinephrineMicrograms: 0,
      agents: [],
      left: [],
      advisories: [],
      steps: [],
    };
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
    left: [],
    advisories: [],
    steps: [],
  };
}

export const overLimit = (dose: DoseJudgement): boolean => dose.fraction !== null && isOver(dose.fraction, 1);

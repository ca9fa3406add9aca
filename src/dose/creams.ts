import type { Tables } from '../practice/tables.ts';
import type { AgentRow } from '../reference/agents.ts';
import type { CreamRow } from '../reference/creams.ts';
import { isOver } from './arithmetic.ts';
import type { Applied } from './injections.ts';
import { appliesTo, type Facts } from '../limits/ceilings.ts';

export interface CreamExcess {
  readonly what: 'grams' | 'area' | 'time';
  readonly amount: number;
  readonly limit: number;
}

/** All of one cream on a day against its own row. */
export interface CreamDose {
  readonly agent: AgentRow;
  readonly applied: readonly Applied[];
  readonly grams: number;
  /** Undefined where no area is written. */
  readonly cm2: number | undefined;
  /** The longest of the applications. */
  readonly minutes: number | undefined;
  /** The row that counts; undefined where none is known for this patient. */
  readonly row: CreamRow | undefined;
  readonly over: readonly CreamExcess[];
}

/** Judges creams by their own rows: amounts and areas of a day are added, the longest time counts. */
export function creamDoses(all: readonly Applied[], facts: Facts, tables: Tables): readonly CreamDose[] {
  const agents = [...new Set(all.map(({ agent }) => agent))];
  return agents.map((agent) => {
    const applied = all.filter((one) => one.agent === agent);
    const grams = sumOf(applied.map((one) => one.grams)) ?? 0;
    const cm2 = sumOf(applied.map((one) => one.cm2));
    const times = applied.flatMap(({ minutes }) => (minutes === undefined ? [] : [minutes]));
    const minutes = times.length === 0 ? undefined : Math.max(...times);
    const row = tables.creams.findLast((one) => one.agent === agent.name && appliesTo(one.population, facts));
    const over = [
      excess('grams', grams, row?.maxGrams),
      excess('area', cm2, row?.maxCm2),
      excess('time', minutes, row?.maxMinutes),
    ].flat();
    return { agent, applied, grams, cm2, minutes, row, over };
  });
}

function sumOf(amounts: readonly (number | undefined)[]): number | undefined {
  const known = amounts.filter((amount) => amount !== undefined);
  return known.length === 0 ? undefined : known.reduce((sum, amount) => sum + amount, 0);
}

function excess(
  what: CreamExcess['what'],
  amount: number | undefined,
  limit: number | undefined,
): readonly CreamExcess[] {
  return amount === undefined || limit === undefined || !isOver(amount, limit)
    ? []
    : [{ what, amount, limit }];
}

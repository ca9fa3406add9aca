import type { Tables } from '../practice/tables.ts';
import type { AgentRow } from '../reference/agents.ts';
import type { CreamRow } from '../reference/creams.ts';
import type { Mark } from '../reference/types.ts';
import { isOver } from './arithmetic.ts';
import type { Applied } from './injections.ts';
import { appliesTo, type Facts } from '../limits/ceilings.ts';

export interface CreamExcess {
  readonly what: 'grams' | 'area' | 'time';
  readonly amount: number;
  readonly limit: number;
  /** How sure the limit is. */
  readonly mark: Mark;
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
  /** What the row allows of it for this weight; undefined where it has no amount. */
  readonly allowedGrams: number | undefined;
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
    const allowedGrams = row && gramsAllowed(row, agent, facts.kg);
    const over = row === undefined ? [] : excesses({ grams, cm2, minutes, allowedGrams }, row);
    return { allowedGrams, agent, applied, grams, cm2, minutes, row, over };
  });
}

/** Why a cream was held against no maximum: none is known for the patient, or it is an area and none is written. */
export function creamGap({
  row,
  allowedGrams,
  cm2,
}: Pick<CreamDose, 'row' | 'allowedGrams' | 'cm2'>): 'main' | 'area' | undefined {
  if (allowedGrams !== undefined) return undefined;
  if (row?.maxCm2 !== undefined) return cm2 === undefined ? 'area' : undefined;
  return 'main';
}

function sumOf(amounts: readonly (number | undefined)[]): number | undefined {
  const known = amounts.filter((amount) => amount !== undefined);
  return known.length === 0 ? undefined : known.reduce((sum, amount) => sum + amount, 0);
}

/** The grams that a row allows: its own, or those that hold its mg/kg where that is less; undefined where it has neither. */
function gramsAllowed(
  { maxGrams, maxMgPerKg }: CreamRow,
  { strengths }: AgentRow,
  kg: number | undefined,
): number | undefined {
  const [mgPerGram] = strengths;
  if (maxMgPerKg === undefined || kg === undefined || mgPerGram === undefined) return maxGrams;
  return Math.min(maxGrams ?? Infinity, (maxMgPerKg * kg) / mgPerGram);
}

function excesses(
  { grams, cm2, minutes, allowedGrams }: Pick<CreamDose, 'grams' | 'cm2' | 'minutes' | 'allowedGrams'>,
  row: CreamRow,
): readonly CreamExcess[] {
  const found: CreamExcess[] = [];
  const compare = (
    what: CreamExcess['what'],
    amount: number | undefined,
    limit: number | undefined,
    { mark }: Pick<CreamRow, 'mark'>,
  ): void => {
    if (amount !== undefined && limit !== undefined && isOver(amount, limit))
      found.push({ what, amount, limit, mark });
  };
  compare('grams', grams, allowedGrams, row);
  compare('area', cm2, row.maxCm2, row.maxCm2From ?? row);
  compare('time', minutes, row.maxMinutes, row);
  return found;
}

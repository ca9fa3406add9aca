import type { Tables } from '../practice/tables.ts';
import type { AgentRow } from '../reference/agents.ts';
import { floorTo, isOver } from './arithmetic.ts';
import { lockedBy, type Locked } from './injections.ts';
import type { Step } from './types.ts';
import { ceilingOf, type Ceiling, type Facts } from '../limits/ceilings.ts';
import { needsAge } from './patient.ts';
import { advisoryCeilings, rulesOf } from './rules.ts';
import { factsStep, limitSteps } from './steps.ts';
import { allowedMgText, epinephrineText, kindText, strengthText } from './words.ts';
import { formatNumber } from '../note/values/format.ts';

export interface DoseQuery extends Facts {
  readonly agent: AgentRow;
  readonly mgPerMl: number;
  /** As drawn; 0 is plain. */
  readonly epinephrineMicrogramsPerMl: number;
}

/** How much of a product a limit allows. */
export interface Allowance extends Ceiling {
  /** Cut to 0.01 mg. */
  readonly maxMg: number;
  /** Cut to 0.1 mL. */
  readonly maxMl: number;
}

export interface MaxDose extends Allowance {
  /** Limits of the country's guidelines that are not above the ceiling; the lowest first. */
  readonly advisories: readonly Allowance[];
  /** Limits of everyone else; the lowest first. */
  readonly elsewhere: readonly Allowance[];
  readonly assumedAdult: boolean;
  readonly locked: Locked | undefined;
  readonly steps: readonly Step[];
}

/** Why there is no answer. */
export interface NoMaximum {
  readonly why: string;
}

/** The most that may be given of a product to a patient who has had none today. */
export function maxDose(query: DoseQuery, tables: Tables): MaxDose | NoMaximum {
  const { agent, kg, mgPerMl } = query;
  if (tables.gap !== undefined) return { why: tables.gap.why };
  if (!agent.limited) return { why: `${agent.name} has no dose limit of this kind` };
  if (agent.form !== 'injected')
    return { why: `${agent.name} is limited by its amount and area, not by mg/kg` };
  if (kg === undefined) return { why: 'the weight is not known' };
  if (needsAge(query)) return { why: 'under 50 kg the age is needed' };
  const drawn = query.epinephrineMicrogramsPerMl;
  const { strongest } = tables.epinephrine;
  if (isOver(drawn, strongest.microgramsPerMl))
    return {
      why: `epinephrine ${epinephrineText(drawn)} is stronger than ${epinephrineText(strongest.microgramsPerMl)}, the strongest that is made with a local anesthetic`,
    };
  const locked = lockedBy(drawn, undefined, undefined, undefined, tables);
  const epinephrine = drawn > 0 && locked === undefined;
  const rules = rulesOf(tables);
  const ceiling = ceilingOf(rules, agent.name, epinephrine, query);
  if (ceiling === undefined)
    return { why: `no limit is known for ${kindText(agent.name, epinephrine)} in such a patient` };
  const kind = { agent: agent.name, epinephrine, limit: ceiling.limit };
  const beside = (list: 'advisories' | 'others'): readonly Allowance[] =>
    advisoryCeilings(rules, kind, query, list, tables)
      .map((one) => allowanceOf(one, mgPerMl))
      .sort((a, b) => a.maxMg - b.maxMg);
  const allowed = allowanceOf(ceiling, mgPerMl);
  return {
    ...allowed,
    advisories: beside('advisories').filter(({ limitMg }) => !isOver(limitMg, ceiling.limitMg)),
    elsewhere: beside('others'),
    assumedAdult: query.months === undefined,
    locked,
    steps: stepsOf(query, allowed, epinephrine, locked, tables),
  };
}

const allowanceOf = (ceiling: Ceiling, mgPerMl: number): Allowance => ({
  ...ceiling,
  maxMg: floorTo(ceiling.limitMg, 0.01),
  maxMl: floorTo(ceiling.limitMg / mgPerMl, 0.1),
});

function stepsOf(
  query: DoseQuery,
  allowed: Allowance,
  epinephrine: boolean,
  locked: Locked | undefined,
  { authority }: Tables,
): readonly Step[] {
  const name = kindText(query.agent.name, epinephrine);
  const weak = `Epinephrine ${epinephrineText(query.epinephrineMicrogramsPerMl)} is too weak for the higher limit: the plain limit counts`;
  return [
    factsStep(query),
    ...(locked === undefined ? [] : [{ text: weak }]),
    ...limitSteps(name, allowed, query, authority),
    {
      text: `${allowedMgText(allowed.maxMg)} mg ÷ ${formatNumber(query.mgPerMl)} mg/mL = ${formatNumber(allowed.maxMl)} mL of ${strengthText(query.mgPerMl)}, rounded down`,
    },
  ];
}

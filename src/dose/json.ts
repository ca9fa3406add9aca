import { floorTo, isOver } from './arithmetic.ts';
import { creamGap, type CreamDose } from './creams.ts';
import type { AgentDose, DoseJudgement } from './types.ts';
import type { Allowance, MaxDose } from './max.ts';
import { bindingSource } from './words.ts';

const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));

/** A share of a limit with four decimals that never hides on which side of the limit it is. */
function fractionJson(fraction: number): number {
  const shown = rounded(fraction, 4);
  if (isOver(fraction, 1)) return Math.max(shown, 1.0001);
  return isOver(1, fraction) ? Math.min(shown, 0.9999) : shown;
}

/** The dose of a note as `wheal check --format json` gives it: limits cut to 0.01 mg, other numbers rounded. */
export function doseJson(dose: DoseJudgement): unknown {
  return {
    judged: dose.judged,
    fraction: dose.fraction === null ? null : fractionJson(dose.fraction),
    ...(dose.why === undefined ? {} : { why: dose.why }),
    epinephrineMicrograms: rounded(dose.epinephrineMicrograms, 2),
    agents: dose.agents.map(agentJson),
    ...(dose.creams.length === 0 ? {} : { creams: dose.creams.map(creamJson) }),
  };
}

const creamJson = (cream: CreamDose): unknown => ({
  agent: cream.agent.name,
  grams: rounded(cream.grams, 2),
  judged: creamGap(cream) === undefined,
});

function agentJson({ agent, epinephrine, mg, mgPerKg, limitMg, boundBy, fraction }: AgentDose): unknown {
  return {
    agent,
    epinephrine,
    mg: rounded(mg, 2),
    mgPerKg: mgPerKg === null ? null : rounded(mgPerKg, 3),
    limitMg: limitMg === Infinity ? null : floorTo(limitMg, 0.01),
    boundBy,
    fraction: fractionJson(fraction),
  };
}

/**
 * The most of a product as `wheal dose --format json` gives it.
 * @param cite the citation of a source key
 */
export function maxDoseJson(max: MaxDose, cite: (key: string) => string): unknown {
  const sourceOf = ({ limit, boundBy }: Allowance): string => cite(bindingSource(limit, boundBy));
  return {
    wheal: 1,
    maxMg: max.maxMg,
    maxMl: max.maxMl,
    boundBy: max.boundBy,
    source: sourceOf(max),
    advisories: max.advisories.map((one) => ({
      maxMg: one.maxMg,
      maxMl: one.maxMl,
      source: sourceOf(one),
    })),
  };
}

import { formatNumber } from '../note/values/format.ts';
import type { Tables } from '../practice/tables.ts';
import { floorTo, isOver } from './arithmetic.ts';
import type { CreamDose } from './creams.ts';
import type { Given } from './injections.ts';
import { leftOf } from './left.ts';
import type { AgentDose, DoseJudgement, Left, Step } from './types.ts';
import type { Ceiling, Facts } from '../limits/ceilings.ts';
import {
  allowedMgText,
  authorityText,
  bindingText,
  epinephrineText,
  kindText,
  mgText,
  microgramsText,
  percentText,
  productText,
} from './words.ts';

/** The whole sum of a day in the order in which a person would do it. */
export function stepsOf(dose: DoseJudgement, tables: Tables): readonly Step[] {
  const { given, agents, unread, unlimited, creams } = dose;
  return [
    ...(given.length > 0 ? [factsStep(dose.facts)] : []),
    ...given.flatMap((one) => givenSteps(one, tables)),
    ...unread.map(({ what, why, text }) => ({
      text: `Not counted: ${why === 'missing' ? `an injection without ${what}` : `${what} "${text}"`}`,
    })),
    ...unlimited.map(({ agent }) => ({
      text: `${agent.name}: no dose limit of this kind`,
      source: agent.source,
      mark: agent.mark,
    })),
    ...otherSteps(dose),
    ...agents.flatMap((one) => agentSteps(one, dose.facts, tables)),
    ...dose.noLimit.map(({ agent, epinephrine }) => ({
      text: `${kindText(agent, epinephrine)}: no limit is known for such a patient`,
    })),
    ...sumSteps(dose),
    ...epinephrineSteps(dose.epinephrineMicrograms, tables),
    ...dose.left.map(leftStep),
    ...creams.map(creamStep),
    ...whySteps(dose),
  ];
}

/** The part of a day's sum that one injection has to do with: its own mg, its limit, and what the whole comes to. */
export function stepsOfOne(dose: DoseJudgement, one: Given, tables: Tables): readonly Step[] {
  const group = dose.agents.find(({ given }) => given.includes(one));
  return [
    factsStep(dose.facts),
    ...givenSteps(one, tables),
    ...(group === undefined ? [] : [...besideSteps(group, one), ...agentSteps(group, dose.facts, tables)]),
    ...sumSteps(dose),
    ...epinephrineSteps(dose.epinephrineMicrograms, tables),
    ...(group === undefined || !dose.judged
      ? []
      : [leftStep(leftOf(productText(one), one.mgPerMl, group.limitMg, dose.atLeast))]),
    ...whySteps(dose),
  ];
}

const leftStep = ({ product, mg, ml }: Left): Step => ({
  text: `Left: ${allowedMgText(mg)} mg, that is ${formatNumber(ml)} mL of ${product}`,
});

const whySteps = ({ why }: DoseJudgement): readonly Step[] =>
  why === undefined ? [] : [{ text: `Not judged: ${why}` }];

/** What other notes of the day add, or that nobody looked at them. */
function otherSteps({ given, others }: DoseJudgement): readonly Step[] {
  if (others === undefined)
    return given.length === 0 ? [] : [{ text: 'Other notes of this patient and day were not checked' }];
  return others.given.map((one) => ({
    text: `Another note of that day, ${productText(one)}: ${formatNumber(one.ml)} mL = ${mgText(one.mg)} mg`,
  }));
}

/** Weight and age, and what was assumed. */
export function factsStep({ kg, months }: Facts): Step {
  const weight = kg === undefined ? 'No weight' : `Weight ${formatNumber(kg, 2)} kg`;
  if (months === undefined) return { text: `${weight}; no age, so an adult is assumed` };
  const age = months < 24 ? `${months} months` : `${Math.floor(months / 12)} years`;
  return { text: `${weight}; age ${age}` };
}

function givenSteps(one: Given, tables: Tables): readonly Step[] {
  const share = one.share < 1 ? ` × ${formatNumber(one.share, 4)} (buffered)` : '';
  const drawn: Step = {
    text: `${productText(one)}: ${formatNumber(one.ml)} mL × ${formatNumber(one.drawnMgPerMl)} mg/mL${share} = ${mgText(one.mg)} mg`,
  };
  if (one.locked === undefined) return [drawn];
  const { unlocksFrom, bufferedDays } = tables.epinephrine;
  const why: Step =
    one.locked === 'weak'
      ? {
          text: `Epinephrine ${epinephrineText(one.drawnMicrogramsPerMl)} is weaker than ${epinephrineText(unlocksFrom.microgramsPerMl)}: the plain limit counts`,
          source: unlocksFrom.source,
          mark: unlocksFrom.mark,
        }
      : {
          text: `Buffered more than ${bufferedDays.days} days ago: the plain limit counts`,
          source: bufferedDays.source,
          mark: bufferedDays.mark,
        };
  return [drawn, why];
}

function agentSteps(dose: AgentDose, facts: Facts, tables: Tables): readonly Step[] {
  const name = kindText(dose.agent, dose.epinephrine);
  const share =
    dose.limitMg === Infinity ? 'no cap to compare it with' : `${percentText(dose.fraction)}% of the limit`;
  return [
    ...limitSteps(name, dose, facts, tables.authority),
    { text: `${name}: ${mgText(dose.mg)} mg, ${share}` },
  ];
}

/** What other injections add to the sum that one injection counts in. */
function besideSteps({ agent, epinephrine, mg }: AgentDose, one: Given): readonly Step[] {
  if (!isOver(mg, one.mg)) return [];
  return [{ text: `Other injections of ${kindText(agent, epinephrine)}: ${mgText(mg - one.mg)} mg` }];
}

/**
 * How a limit comes about, and where each number is from.
 * @param chosen the authority whose limits are the ceiling
 */
export function limitSteps(
  name: string,
  { limit, limitMg, boundBy }: Ceiling,
  { kg }: Facts,
  chosen: string,
): readonly Step[] {
  const { mgPerKg, capMg } = limit;
  const byWeight =
    mgPerKg === undefined
      ? []
      : kg === undefined
        ? [`${formatNumber(mgPerKg)} mg/kg`]
        : [`${formatNumber(mgPerKg)} mg/kg × ${formatNumber(kg, 2)} kg = ${allowedMgText(mgPerKg * kg)} mg`];
  const cap = capMg === undefined ? [] : [`cap ${formatNumber(capMg)} mg`];
  const binds =
    limitMg === Infinity ? '' : `; ${bindingText(limit, boundBy, kg)} binds: ${allowedMgText(limitMg)} mg`;
  const printed = limit.printed === undefined ? '' : ` (printed as ${limit.printed})`;
  const main: Step = {
    text: `Limit of ${name}, ${authorityText(limit, 'cap', chosen)}, ${limit.population.text}: ${[...byWeight, ...cap].join(', ')}${printed}${binds}`,
    source: limit.source,
    mark: limit.mark,
  };
  return limit.mgPerKgFrom === undefined
    ? [main]
    : [
        main,
        {
          text: `${limit.authority} has only the cap; the mg/kg are from a reference table`,
          source: limit.mgPerKgFrom,
          mark: 'Q',
        },
      ];
}

function sumSteps({ agents, atLeast, facts }: DoseJudgement): readonly Step[] {
  if (facts.kg === undefined || agents.length < 2) return [];
  return [
    {
      text: `Sum of the shares: ${agents.map(({ fraction }) => `${percentText(fraction)}%`).join(' + ')} = ${percentText(atLeast)}%`,
      source: 'additive-toxicity',
      mark: 'Q',
    },
  ];
}

function epinephrineSteps(micrograms: number, tables: Tables): readonly Step[] {
  if (micrograms === 0) return [];
  const { healthy } = tables.epinephrine;
  return [
    {
      text: `Epinephrine: ${microgramsText(micrograms)}; ${microgramsText(healthy.micrograms)} is a maximum for healthy adults in dental teaching`,
      source: healthy.source,
      mark: healthy.mark,
    },
  ];
}

/** What was put on of a cream, and the row that it is held against. */
export function creamStep({ agent, grams, cm2, minutes, row, allowedGrams }: CreamDose): Step {
  const parts = [
    `${formatNumber(grams)} g`,
    ...(cm2 === undefined ? [] : [`${formatNumber(cm2)} cm²`]),
    ...(minutes === undefined ? [] : [`${minutes} min`]),
  ].join(', ');
  if (row === undefined)
    return { text: `${agent.name}: ${parts}; not judged, since no maximum is known for such a patient` };
  const most = [
    ...(allowedGrams === undefined ? [] : [`${formatNumber(floorTo(allowedGrams, 0.01))} g`]),
    ...(row.maxCm2 === undefined ? [] : [`${row.maxCm2} cm²`]),
    ...(row.maxMinutes === undefined ? [] : [`${row.maxMinutes} min`]),
  ].join(', ');
  const kind = row.kind === 'maximum' ? 'at most' : 'the most that was studied is';
  return {
    text: `${agent.name}, beside the sum: ${parts}; ${row.population.text}: ${kind} ${most}`,
    source: row.source,
    mark: row.mark,
  };
}

import { floorTo, isOver } from '../../dose/arithmetic.ts';
import type { AgentDose, DoseJudgement } from '../../dose/judge.ts';
import { creamStep } from '../../dose/steps.ts';
import {
  authorityText,
  bindingSource,
  bindingText,
  kindText,
  mgText,
  microgramsText,
  percentText,
} from '../../dose/words.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Note } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import { citation } from '../../reference/sources/index.ts';
import { plain } from '../one-line.ts';
import { anesthesiaOf } from './procedure.ts';

/** The dose of the whole visit in rows: each agent with its limit and the source, then the sum. */
export function doseOf(note: Note, dose: DoseJudgement | null, tables: Tables): readonly string[] {
  const forVisit = anesthesiaOf(note.anesthetic, dose, tables);
  const once = forVisit === undefined ? [] : [`Given once for the visit: ${forVisit}.`];
  if (dose === null) return once;
  if (!hasAnesthetic(note)) return ['No local anesthetic is recorded.'];
  return [
    ...once,
    ...rowsOf(dose, tables),
    ...dose.later.flatMap((later) =>
      rowsOf(later, tables).map((row) => `On ${later.day ?? 'a later day'}: ${row}`),
    ),
  ].map(plain);
}

function rowsOf(dose: DoseJudgement, tables: Tables): readonly string[] {
  const { agents, noLimit, unlimited, creams, epinephrineMicrograms, advisories } = dose;
  return [
    ...agents.map((agent) => agentRow(agent, dose.facts.kg, tables)),
    ...noLimit.map(
      ({ agent, epinephrine }) => `${kindText(agent, epinephrine)}: not judged, since no limit is known.`,
    ),
    ...unlimited.map(({ agent }) => `${agent.name}: no dose limit of this kind.`),
    ...creams.map((cream) => cited(creamStep(cream))),
    ...(epinephrineMicrograms > 0 ? [`Epinephrine: ${microgramsText(epinephrineMicrograms)}.`] : []),
    ...sumRows(dose),
    ...advisories.map(
      ({ limit, maxMg, mg }) =>
        `${mgText(mg)} mg of ${limit.agent} is more than the ${formatNumber(floorTo(maxMg, 0.01))} mg of ${limit.authority}. Source: ${citation(limit.source)}.`,
    ),
  ];
}

function agentRow(
  { agent, epinephrine, mg, mgPerKg, ...ceiling }: AgentDose,
  kg: number | undefined,
  { authority }: Tables,
): string {
  const { limit, limitMg, boundBy, fraction } = ceiling;
  const given = `${kindText(agent, epinephrine)}: ${mgText(mg)} mg${mgPerKg === null ? '' : ` (${formatNumber(mgPerKg, 3)} mg/kg)`}`;
  if (limitMg === Infinity) return `${given}; without a weight there is no limit to hold it against.`;
  const bound = `${bindingText(limit, boundBy, kg)}; ${authorityText(limit, boundBy, authority)}, ${limit.population.text}`;
  return `${given}, ${percentText(fraction)}% of the limit of ${formatNumber(floorTo(limitMg, 0.01))} mg (${bound}). Source: ${citation(bindingSource(limit, boundBy))}.`;
}

function sumRows({ judged, why, atLeast, fraction, agents }: DoseJudgement): readonly string[] {
  if (!judged)
    return [
      `The dose can't be judged: ${why ?? 'something is missing'}.${isOver(atLeast, 1) ? ` It is over the limit all the same: ${percentText(atLeast)}% at least.` : ''}`,
    ];
  if (fraction === null || agents.length === 0) return [];
  const over = isOver(fraction, 1) ? ' That is over the limit.' : '';
  return [`All injections together: ${percentText(fraction)}% of the limit.${over}`];
}

const cited = ({ text, source }: { readonly text: string; readonly source?: string }): string =>
  source === undefined ? `${text}.` : `${text}. Source: ${citation(source)}.`;

const hasAnesthetic = ({ anesthetic, procedures, events }: Note): boolean =>
  (anesthetic ?? []).length > 0 ||
  [...(procedures ?? []), ...(events ?? [])].some((part) => (part.anesthetic ?? []).length > 0);

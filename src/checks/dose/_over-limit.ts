import type { Report } from '../../note/tree/finding.ts';
import { ceilTo, floorTo } from '../../dose/arithmetic.ts';
import { type AgentDose, type DoseJudgement, type Given } from '../../dose/judge.ts';
import {
  allowedMgText,
  authorityText,
  bindingText,
  mgText,
  percentText,
  productText,
} from '../../dose/words.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Check, SourcesDiffer } from '../check.ts';
import type { Tables } from '../../practice/tables.ts';
import { crossing, dayText, shareElsewhere, shareOf, sumText } from './_days.ts';

export const sourcesDiffer: SourcesDiffer = {
  how: 'Limits of the same anesthetic differ by half and more between countries and texts, and so does the weight that counts in obesity. The text of one authority is followed, US prescribing information where the practice chooses none, with the actual weight; nothing is averaged.',
  settings: ['authority', 'limits'],
};

export const sources: Check['sources'] = [
  { source: 'us-label-lidocaine', mark: 'Q' },
  { source: 'bnfc', mark: 'Q' },
  { source: 'us-label-bupivacaine', mark: 'Q' },
  { source: 'us-label-mepivacaine', mark: 'Q' },
  { source: 'us-label-chloroprocaine', mark: 'Q' },
  { source: 'us-label-articaine', mark: 'Q' },
  { source: 'poisoning-drug-overdose', mark: 'Q' },
  { source: 'additive-toxicity', mark: 'Q' },
];

/** mL of an injection that keep the day within its limits, the others left as they are. */
export function allowedMl(one: Given, day: DoseJudgement): number {
  const others = day.given.reduce(
    (sum, other) => (other === one ? sum : sum + shareOf(other, day)),
    shareElsewhere(day),
  );
  const own = day.agents.find(({ given }) => given.includes(one));
  return Math.max(0, floorTo(((1 - others) * (own?.limitMg ?? 0)) / one.mgPerMl, 0.1));
}

/** mL of the product of an injection that may still be given. */
export function leftMl(one: Given, day: DoseJudgement): number {
  const own = day.agents.find(({ given }) => given.includes(one));
  return Math.max(0, floorTo(((1 - day.atLeast) * (own?.limitMg ?? 0)) / one.mgPerMl, 0.1));
}

export function report(
  day: DoseJudgement,
  visit: DoseJudgement,
  bound: number,
  tables: Tables,
): Report | undefined {
  const at = crossing(day.given, (one) => shareOf(one, day), bound - shareElsewhere(day));
  if (at === undefined) return undefined;
  const ml = allowedMl(at, day);
  return {
    at: at.at,
    form: ml > 0 ? 'main' : 'nothing-left',
    rests: day.agents.find(({ given }) => given.includes(at))?.limit,
    args: {
      day: dayText(day, visit),
      percent: percentText(day.atLeast),
      sum: sumText(day, tables),
      product: productText(at),
      ml: formatNumber(ml),
      left: formatNumber(leftMl(at, day)),
      beside: day.given.length > 1 || shareElsewhere(day) > 0 ? ' beside the rest' : '',
    },
    related: day.given
      .filter((one) => one !== at)
      .map((one) => ({
        start: one.at.start,
        end: one.at.end,
        form: 'also',
        args: { mg: mgText(one.mg), product: productText(one) },
      })),
  };
}

/** What binds; whose limit it is only where it is the practice's own, the rest is in the hover. */
function bindingOf({ limit, boundBy }: AgentDose, kg: number | undefined, authority: string): string {
  const binding = bindingText(limit, boundBy, kg);
  return limit.practice === undefined ? binding : `${binding}, ${authorityText(limit, boundBy, authority)}`;
}

/** By how much the day is over, in the words of one limit or of several together. */
function excessOf(day: DoseJudgement, visit: DoseJudgement, { authority }: Tables): Report['args'] {
  const [dose] = day.agents;
  const where = dayText(day, visit);
  return {
    over: mgText(ceilTo((dose?.mg ?? 0) - (dose?.limitMg ?? 0), 0.01)),
    max: allowedMgText(dose?.limitMg ?? 0),
    binding: dose === undefined ? '' : bindingOf(dose, day.facts.kg, authority),
    excess: formatNumber(Math.max(0.1, ceilTo((day.atLeast - 1) * 100, 0.1))),
    where: where === 'the visit' ? '' : ` (${where})`,
  };
}

/** An injection over the limit: how much too much, and what to do. */
export function overReport(day: DoseJudgement, visit: DoseJudgement, tables: Tables): Report | undefined {
  const found = report(day, visit, 1, tables);
  if (found === undefined) return undefined;
  const together = day.agents.length > 1;
  const form = `${together ? 'together' : 'main'}${found.form === 'main' ? '' : '-nothing-left'}`;
  return { ...found, form, args: { ...found.args, ...excessOf(day, visit, tables) } };
}

export const also = 'Counts too: {mg} mg, {product}.';

import { floorTo, isAtLeast } from '../../dose/arithmetic.ts';
import { overLimit, type DoseJudgement, type Given } from '../../dose/judge.ts';
import { mgText, percentText, productText } from '../../dose/words.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Check, Report } from '../check.ts';
import { crossing, dayText, daysOf, shareElsewhere, shareOf, sumText } from './_days.ts';

/** From here on a dose is near its limit. */
const near = 0.8;

const sources: Check['sources'] = [
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
function allowedMl(one: Given, day: DoseJudgement): number {
  const others = day.given.reduce(
    (sum, other) => (other === one ? sum : sum + shareOf(other, day)),
    shareElsewhere(day),
  );
  const own = day.agents.find(({ given }) => given.includes(one));
  return Math.max(0, floorTo(((1 - others) * (own?.limitMg ?? 0)) / one.mgPerMl, 0.1));
}

/** mL of the product of an injection that may still be given. */
function leftMl(one: Given, day: DoseJudgement): number {
  const own = day.agents.find(({ given }) => given.includes(one));
  return Math.max(0, floorTo(((1 - day.atLeast) * (own?.limitMg ?? 0)) / one.mgPerMl, 0.1));
}

function report(day: DoseJudgement, visit: DoseJudgement, bound: number): Report | undefined {
  const at = crossing(day.given, (one) => shareOf(one, day), bound - shareElsewhere(day));
  if (at === undefined) return undefined;
  const ml = allowedMl(at, day);
  return {
    at: at.at,
    form: ml > 0 ? 'main' : 'nothing-left',
    args: {
      day: dayText(day, visit),
      percent: percentText(day.atLeast),
      sum: sumText(day),
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

const also = 'Counts too: {mg} mg, {product}.';

export const checks: readonly Check[] = [
  {
    code: 'dose/over-limit',
    severity: 'error',
    title: 'More local anesthetic than the limit for this patient',
    why: 'Past the limit the risk of seizures and of cardiac arrest rises. All sites of a visit count together, and different anesthetics add up.',
    sources,
    messages: {
      main: 'The dose of {day} is {percent}% of the limit: {sum}. At most {ml} mL of this {product} would be in order{beside}; check volume, strength and weight.',
      'nothing-left':
        'The dose of {day} is {percent}% of the limit: {sum}. The rest has used up the limit, so that no {product} would be in order; check volumes, strengths and weight.',
      also,
    },
    find({ dose }) {
      const reports: Report[] = [];
      for (const day of daysOf(dose)) {
        const found = overLimit(day) ? report(day, dose, 1) : undefined;
        if (found !== undefined) reports.push(found);
      }
      return reports;
    },
  },
  {
    code: 'dose/near-limit',
    severity: 'warning',
    title: 'Dose of local anesthetic from 80% of the limit on',
    why: 'Little may be added. Weight, liver, heart and age can make less than the published limit too much.',
    sources,
    messages: {
      main: 'The dose of {day} is {percent}% of the limit: {sum}. At most {left} mL more of this {product} would be in order.',
      'nothing-left': 'The dose of {day} is {percent}% of the limit: {sum}. Add nothing more.',
      also,
    },
    find({ dose }) {
      const reports: Report[] = [];
      for (const day of daysOf(dose)) {
        if (day.facts.kg === undefined || overLimit(day) || !isAtLeast(day.atLeast, near)) continue;
        const found = report(day, dose, near);
        if (found !== undefined)
          reports.push({ ...found, form: isAtLeast(day.atLeast, 1) ? 'nothing-left' : 'main' });
      }
      return reports;
    },
  },
];

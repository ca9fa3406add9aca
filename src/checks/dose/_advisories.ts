import type { Report } from '../../note/tree/finding.ts';
import { type Advisory, type DoseJudgement } from '../../dose/judge.ts';
import { ceilingBy } from '../../limits/ceilings.ts';
import { allowedMgText, bindingText, kindText, mgText } from '../../dose/words.ts';
import type { SourcesDiffer } from '../check.ts';
import { crossing, dayText } from './_days.ts';

export const sourcesDiffer: SourcesDiffer = {
  how: 'Guidelines and other countries give less than the ceiling. The ceiling of the practice’s authority is followed, and each of the others is named beside it.',
  settings: ['authority', 'limits', 'severities'],
};

/** For each agent the one to mention: the surest, and of these the lowest. */
export function lowestByAgent(advisories: readonly Advisory[]): readonly Advisory[] {
  if (advisories.length < 2) return advisories;
  const marks = ['Q', 'Q2', 'M', 'common', 'format'];
  const sorted = [...advisories].sort(
    (a, b) => marks.indexOf(a.limit.mark) - marks.indexOf(b.limit.mark) || a.maxMg - b.maxMg,
  );
  return sorted.filter((one, at) => sorted.findIndex(({ given }) => given === one.given) === at);
}

export function reportOf(
  { limit, maxMg, mg, given }: Advisory,
  day: DoseJudgement,
  visit: DoseJudgement,
): Report | undefined {
  const { kg } = day.facts;
  const at = crossing(given, (one) => one.mg, maxMg);
  if (at === undefined) return undefined;
  const { boundBy } = ceilingBy(limit, kg);
  return {
    at: at.at,
    form: limit.notRecommended === true ? 'not-recommended' : 'main',
    rests: limit,
    args: {
      day: dayText(day, visit),
      product: kindText(limit.agent, limit.epinephrine),
      mg: mgText(mg),
      max: allowedMgText(maxMg),
      authority: limit.authority,
      population: limit.population.text,
      binding: limit.notRecommended === true ? '' : bindingText(limit, boundBy, kg),
      printed: limit.printed === undefined ? '' : `, printed as ${limit.printed}`,
    },
    related: given
      .filter((one) => one !== at)
      .map((one) => ({ start: one.at.start, end: one.at.end, form: 'also', args: { mg: mgText(one.mg) } })),
  };
}

export const also = 'Counts too: {mg} mg.';

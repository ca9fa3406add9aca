import { overLimit, type Advisory, type DoseJudgement } from '../../dose/judge.ts';
import { ceilingBy } from '../../limits/ceilings.ts';
import { allowedMgText, bindingText, kindText, mgText } from '../../dose/words.ts';
import { bounded } from '../bounded.ts';
import type { Check, Report } from '../check.ts';
import { crossing, dayText, daysOf } from './_days.ts';

/** For each agent the one to tell of: the surest, and of these the lowest. */
function lowestByAgent(advisories: readonly Advisory[]): readonly Advisory[] {
  if (advisories.length < 2) return advisories;
  const marks = ['Q', 'Q2', 'M', 'common', 'format'];
  const sorted = [...advisories].sort(
    (a, b) => marks.indexOf(a.limit.mark) - marks.indexOf(b.limit.mark) || a.maxMg - b.maxMg,
  );
  return sorted.filter((one, at) => sorted.findIndex(({ given }) => given === one.given) === at);
}

function reportOf(
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

const also = 'Counts too: {mg} mg.';

export const checks: readonly Check[] = [
  {
    code: 'dose/advisory-passed',
    severity: 'warning',
    title: 'Within the limit, and above what a guideline advises for this patient',
    why: 'Guidelines for children and for infants advise less than the labels allow. Sources differ, and no average of them is taken.',
    sources: [
      { source: 'aad-2016', mark: 'Q2' },
      { source: 'aap-2019', mark: 'Q2' },
      { source: 'us-label-mepivacaine-children', mark: 'Q2' },
      { source: 'us-label-bupivacaine-children', mark: 'Q2' },
    ],
    messages: {
      main: 'The {product} of {day}, {mg} mg, is more than the {max} mg ({binding}{printed}) of the {authority} for this patient ({population}). It is within the limit; weigh whether less will do.',
      'not-recommended':
        'The {authority} advises against {product} for this patient ({population}); {mg} mg is within the limit that another source gives. Weigh another anesthetic.',
      also,
    },
    find({ dose }) {
      const found: Report[] = [];
      for (const day of daysOf(dose)) {
        if (overLimit(day)) continue;
        for (const advisory of lowestByAgent(day.advisories)) {
          const report = reportOf(advisory, day, dose);
          if (report !== undefined)
            found.push({ ...report, severity: bounded('warning', advisory.limit.mark) });
        }
      }
      return found;
    },
  },
  {
    code: 'dose/other-countries',
    severity: 'information',
    title: 'Within the limit, and above what another source gives',
    why: 'Published limits of the same anesthetic differ by half and more from country to country.',
    sources: [
      { source: 'australia-toxicology', mark: 'Q' },
      { source: 'uk-smpc-lidocaine', mark: 'Q' },
      { source: 'sg-label-lidocaine', mark: 'Q' },
      { source: 'poisoning-drug-overdose', mark: 'Q' },
    ],
    messages: {
      main: 'The {product} of {day}, {mg} mg, is within the limit used here and above the {max} mg ({binding}{printed}) of {authority}. Published limits differ.',
      also,
    },
    find({ dose }) {
      const found: Report[] = [];
      for (const day of daysOf(dose)) {
        if (overLimit(day)) continue;
        for (const advisory of lowestByAgent(day.elsewhere)) {
          const report = reportOf(advisory, day, dose);
          if (report !== undefined) found.push(report);
        }
      }
      return found;
    },
  },
];

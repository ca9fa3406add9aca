import { isOver } from '../../dose/arithmetic.ts';
import { fractionAtWeight, overLimit, type DoseJudgement } from '../../dose/judge.ts';
import { needsAge } from '../../dose/patient.ts';
import { kindText, mgText } from '../../dose/words.ts';
import { formatNumber } from '../../note/values/format.ts';
import { saysNotKnown } from '../../note/values/quantity.ts';
import type { Problem } from '../../note/tree/finding.ts';
import type { Note } from '../../note/generated/types.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { Check, Report, Subject } from '../check.ts';
import { daysOf } from './_days.ts';

const format = { source: 'format', mark: 'format' } as const;

/** A child is one below this age; from here to 18 years the weight is asked for less loudly. */
const childBelowMonths = 144;
const adultFromMonths = 216;
/** An adult's weight is asked for once the dose would be too much at this weight. */
const smallAdultKg = 40;

/** Where to point for a missing weight; undefined where something is written that another finding is about. */
function placeOfWeight({ patient, head }: Note): Range | undefined {
  if (patient === undefined) return head;
  if (patient.weight === undefined) return patient.keys.has('weight') ? undefined : patient.head;
  const { weight } = patient;
  return weight.pending || saysNotKnown(weight.text) ? weight : undefined;
}

const doseText = ({ agents }: DoseJudgement): string =>
  agents
    .map(({ agent, epinephrine, mg }) => `${kindText(agent, epinephrine)} ${mgText(mg)} mg`)
    .join(' and ');

const hasDose = ({ given, creams, unread }: DoseJudgement): boolean =>
  given.length > 0 || creams.length > 0 || unread.length > 0;

/** The day that needs the most weight; without a weight only. */
function heaviest(days: readonly DoseJudgement[]): DoseJudgement | undefined {
  return days.reduce<DoseJudgement | undefined>(
    (most, day) => ((day.neededKg ?? 0) > (most?.neededKg ?? 0) ? day : most),
    undefined,
  );
}

function childWithoutWeight({ note, dose }: Subject): readonly Report[] {
  const found: Report[] = [];
  const { kg, months } = dose.facts;
  if (kg !== undefined || months === undefined || months >= adultFromMonths) return found;
  const days = daysOf(dose).filter(hasDose);
  const at = placeOfWeight(note);
  if (days.length === 0 || at === undefined) return found;
  const day = heaviest(days);
  const child = months < childBelowMonths;
  found.push({
    at,
    severity: child ? 'error' : 'warning',
    form: day === undefined ? 'main' : 'from',
    args: {
      who: child ? 'a child under 12 years' : 'a patient under 18 years',
      ...(day === undefined ? {} : { dose: doseText(day), kg: formatNumber(day.neededKg ?? 0) }),
    },
  });
  return found;
}

function adultWithoutWeight({ note, dose, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  const { kg, months } = dose.facts;
  if (kg !== undefined || (months !== undefined && months < adultFromMonths)) return found;
  const day = daysOf(dose).find(
    (one) => !overLimit(one) && isOver(fractionAtWeight(one, smallAdultKg, tables), 1),
  );
  const at = placeOfWeight(note);
  if (day?.neededKg === undefined || at === undefined) return found;
  found.push({
    at,
    form: months === undefined ? 'assumed' : 'main',
    args: { dose: doseText(day), kg: formatNumber(day.neededKg) },
  });
  return found;
}

const touches = (a: Range, b: Range): boolean => a.start < b.end && b.start < a.end;

/** What can't be counted though nothing else says so. */
function unexplained(day: DoseJudgement, problems: readonly Problem[]): readonly Report[] {
  const found: Report[] = [];
  for (const { what, why, at, text } of day.unread) {
    if (why !== 'unreadable' || problems.some((problem) => touches(problem, at))) continue;
    found.push({ at, form: 'unreadable', args: { what, text } });
  }
  return found;
}

function cannotJudge({ note, dose, source }: Subject): readonly Report[] {
  const found: Report[] = [];
  const { weight } = note.patient ?? {};
  for (const day of daysOf(dose)) {
    for (const { agent, epinephrine, given } of day.noLimit) {
      const [first] = given;
      if (first === undefined) continue;
      const at = first.injection.agent ?? first.injection.product ?? first.injection.head;
      found.push({
        at,
        form: 'no-limit',
        args: { product: kindText(agent, epinephrine), mg: mgText(sum(given)) },
      });
    }
    if (day.unread.length > 0) for (const one of unexplained(day, source.problems)) found.push(one);
  }
  if (weight === undefined || !needsAge(dose.facts)) return found;
  if (daysOf(dose).some(({ given, creams }) => given.length > 0 || creams.length > 0))
    found.push({ at: weight, form: 'no-age', args: { weight: weight.text } });
  return found;
}

const sum = (given: readonly { readonly mg: number }[]): number => given.reduce((all, { mg }) => all + mg, 0);

export const checks: readonly Check[] = [
  {
    code: 'dose/cannot-judge',
    severity: 'error',
    title: 'A dose that cannot be judged',
    why: 'A dose that was not judged must not look like one that is in order.',
    sources: [format],
    messages: {
      'no-limit':
        'No dose limit of {product} is known here for such a patient, so {mg} mg can’t be judged. Look it up in the current label, or choose an anesthetic that has one.',
      'no-age':
        'At {weight} the limit depends on the age, and no age is written. Write `born` or `age`, so that the dose can be judged.',
      unreadable: 'The {what} “{text}” can’t be read, so the dose can’t be judged. Write it with its unit.',
    },
    find: cannotJudge,
  },
  {
    code: 'dose/child-without-weight',
    misses: () => 'weight',
    severity: 'error',
    title: 'Anesthetic for a child without a weight',
    why: 'A child’s limit goes by weight alone; without it a usual amount for an adult can be too much.',
    sources: [{ source: 'bnfc', mark: 'Q' }, format],
    messages: {
      main: 'No weight is written for {who}, so the dose can’t be judged. Write `weight` in kg.',
      from: 'No weight is written for {who}, so the dose can’t be judged: {dose} would be in order from {kg} kg on. Write `weight` in kg.',
    },
    find: childWithoutWeight,
  },
  {
    code: 'dose/adult-without-weight',
    misses: () => 'weight',
    severity: 'warning',
    title: 'A dose that is too much for a light adult, and no weight',
    why: 'The limit goes by weight. Up to what suits 40 kg the weight of an adult matters little; beyond, it decides.',
    sources: [{ source: 'us-label-lidocaine', mark: 'Q' }, format],
    messages: {
      main: '{dose} is in order from a body weight of {kg} kg on, and no weight is written. Write `weight` in kg.',
      assumed:
        '{dose} is in order for an adult from a body weight of {kg} kg on, and neither weight nor age is written. Write both.',
    },
    find: adultWithoutWeight,
  },
];

import type { Check } from '../check.ts';
import { type DoseJudgement } from '../../dose/judge.ts';
import { needsAge } from '../../dose/patient.ts';
import { kindText, mgText } from '../../dose/words.ts';
import type { Problem } from '../../note/tree/finding.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { Report, Subject } from '../check.ts';
import { daysOf } from './_days.ts';
import { format } from './_cannot-judge.ts';

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

export const check: Check = {
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
};

import { type DoseJudgement } from '../../dose/judge.ts';
import { needsAge } from '../../dose/patient.ts';
import { kindText, mgText } from '../../dose/words.ts';
import type { Problem, Report } from '../../note/tree/finding.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { Check, Subject } from '../check.ts';
import { daysOf } from './_days.ts';
import { dangerUnder } from '../unread.ts';
import { format } from '../sources.ts';

const touches = (a: Range, b: Range): boolean => a.start < b.end && b.start < a.end;

/** What can't be counted though nothing else says so. */
function unexplained(day: DoseJudgement, problems: readonly Problem[]): readonly Report[] {
  const found: Report[] = [];
  for (const { what, why, at, text } of day.unread) {
    if (why !== 'unreadable' || problems.some((problem) => touches(problem.at, at))) continue;
    found.push({ at, form: 'unreadable', args: { what, text } });
  }
  return found;
}

/** Unknown keys under which a dose, an allergy or an implant may be written. */
const hidden = ({ unread }: Subject['source'], tables: Subject['tables']): Report[] =>
  unread.flatMap((entry) => {
    const danger = dangerUnder(entry, tables);
    return danger === undefined ? [] : [{ at: entry, form: danger, args: { key: shortened(entry.key) } }];
  });

function cannotJudge({ note, dose, source, tables }: Subject): readonly Report[] {
  const found = hidden(source, tables);
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

const shortened = (key: string): string => (key.length > 40 ? `${key.slice(0, 40)}…` : key);

const sum = (given: readonly { readonly mg: number }[]): number => given.reduce((all, { mg }) => all + mg, 0);

export const check: Check = {
  code: 'dose/cannot-judge',
  severity: 'error',
  title: 'A dose that cannot be judged',
  why: 'A dose that was not judged must not look like a safe one.',
  sources: [format],
  messages: {
    'no-limit':
      'Wheal knows no dose limit of {product} for such a patient, so {mg} mg can’t be judged. Look it up in the current label, or choose an anesthetic that has one.',
    'no-age':
      'At {weight} the limit depends on the age, and no age is written. Write `born` or `age`, so that the dose can be judged.',
    dose: 'What is under `{key}`, which is not a key here, may be a dose. It is not counted, so the dose is not judged. Write it under `anesthetic`.',
    allergen:
      'What is under `{key}`, which is not a key here, may be an allergy. It is not read, so the dose is not judged. Write it under its own key, such as `allergies`.',
    implant:
      'What is under `{key}`, which is not a key here, names an implant. It is not read, so the dose is not judged. Write it under the key that it belongs to, such as `implants`.',
    unreadable: 'The {what} “{text}” can’t be read, so the dose can’t be judged. Write it with its unit.',
  },
  find: cannotJudge,
};

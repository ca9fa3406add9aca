import type { Report } from '../../note/tree/finding.ts';
import { isOver } from '../../dose/arithmetic.ts';
import { fractionAtWeight, overLimit } from '../../dose/judge.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Check, Subject } from '../check.ts';
import { daysOf } from './_days.ts';
import { adultFromMonths, placeOfWeight, doseText } from './_cannot-judge.ts';
import { format } from '../sources.ts';

/** An adult's weight is asked for once the dose would be too much at this weight. */
const smallAdultKg = 40;

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

export const check: Check = {
  code: 'dose/adult-without-weight',
  misses: () => 'weight',
  severity: 'warning',
  title: 'A dose that is too much for a light adult, and no weight',
  why: 'The limit depends on weight. A dose that is safe at 40 kg needs no weight in an adult; above that, the weight decides.',
  sources: [{ source: 'us-label-lidocaine', mark: 'Q' }, format],
  messages: {
    main: '{dose} is within the limit only from a body weight of {kg} kg, and the note has no weight. Write `weight` in kg.',
    assumed:
      '{dose} is within the limit for an adult only from a body weight of {kg} kg, and the note has neither weight nor age. Write both.',
  },
  find: adultWithoutWeight,
};

import type { Report } from '../../note/tree/finding.ts';
import { isAtLeast } from '../../dose/arithmetic.ts';
import { percentText } from '../../dose/words.ts';
import { bounded } from '../bounded.ts';
import type { Check, Subject } from '../check.ts';
import { cautionsOf } from './_cautions.ts';
import { daysOf } from './_days.ts';
import { holds, nameOf, placeOf, said, saidHere, usedOn, unclearCaution } from './_caution-findings.ts';

const adding = ['lidocaine', 'prilocaine'];

function find(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysOf(subject.dose)) {
    const used = usedOn(day).find((one) => adding.some((name) => holds(one, name)));
    const isMuch = isAtLeast(day.atLeast, subject.tables.toleranceFrom);
    if (used === undefined || (!isMuch && used.agent.form !== 'cream')) continue;
    for (const caution of cautionsOf(subject)) {
      const effect = caution.row.antiarrhythmic;
      if (effect === undefined) continue;
      found.push({
        at: placeOf(used.injection),
        form: isMuch ? 'main' : 'cream',
        severity: bounded(isMuch ? 'warning' : 'information', effect.mark),
        args: {
          agent: used.agent.name,
          name: nameOf(caution),
          class: effect.class,
          percent: percentText(day.atLeast),
        },
        related: [said(caution)],
      });
    }
  }
  return found;
}

export const check: Check = {
  code: 'dose/antiarrhythmic',
  severity: 'warning',
  title: 'A high dose of lidocaine or prilocaine with an antiarrhythmic',
  why: 'Lidocaine is itself an antiarrhythmic of class I. Labels call the effects on the heart additive with class I, and ask for close monitoring with class III; they name no amount. Wheal reports an injection from half of the limit, a cream always.',
  sources: [{ source: 'us-label-cream-antiarrhythmics', mark: 'Q' }],
  messages: {
    main: '{agent} at {percent}% of the limit with {name}, an antiarrhythmic of class {class}: effects on the heart add up. Use less, and monitor the rhythm.',
    cream:
      '{agent} with {name}, an antiarrhythmic of class {class}: the label asks for care, since effects on the heart add up.',
    ...saidHere,
  },
  unclear: unclearCaution,
  find,
};

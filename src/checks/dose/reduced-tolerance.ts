import type { Report } from '../../note/tree/finding.ts';
import { isAtLeast } from '../../dose/arithmetic.ts';
import { percentText } from '../../dose/words.ts';
import type { Check, Subject } from '../check.ts';
import { cautionsOf } from './_cautions.ts';
import { daysOf } from './_days.ts';
import { nameOf, said, saidHere, unclearCaution } from './_caution-findings.ts';
import { format } from '../sources.ts';

function lessTolerance(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  const { toleranceFrom, oldAge } = subject.tables;
  for (const day of daysOf(subject.dose)) {
    const last = day.given.at(-1);
    if (last === undefined || !isAtLeast(day.atLeast, toleranceFrom)) continue;
    const percent = percentText(day.atLeast);
    const years = Math.floor((day.facts.months ?? 0) / 12);
    if (years >= oldAge.years) {
      const isMuch = years >= oldAge.warnedYears && isAtLeast(day.atLeast, oldAge.warnedFrom);
      found.push({
        at: last.at,
        form: 'age',
        severity: isMuch ? 'warning' : 'information',
        args: { years, percent },
      });
    }
    for (const caution of cautionsOf(subject))
      if (caution.row.tolerance !== undefined)
        found.push({
          at: last.at,
          form: caution.row.tolerance.grave === true ? 'grave' : 'main',
          args: { name: nameOf(caution), percent },
          related: [said(caution)],
          rests: caution.row.tolerance,
        });
  }
  return found;
}

export const check: Check = {
  code: 'dose/reduced-tolerance',
  severity: 'warning',
  milder: { main: 'information' },
  title: 'More than half of the limit in a patient who tolerates less',
  why: 'The limits are for healthy adults. Labels ask for less in the elderly and debilitated and with cardiac or liver disease, without a number; they name severe liver disease, heart failure and heart block as dangers, which is a warning. To report it from half of the limit, from 65 years, and as a warning from 80% at 80 years, is Wheal’s own choice.',
  sources: [
    { source: 'us-label-reduced-doses', mark: 'Q' },
    { source: 'lidocaine-label-heart', mark: 'Q' },
    format,
  ],
  messages: {
    grave:
      'The dose is {percent}% of the limit for a healthy patient. With {name} labels warn: the anesthetic is cleared slowly or affects the heart. Use less, and watch the patient longer.',
    main: 'The dose is {percent}% of the limit for a healthy patient; with {name} the label asks for less, without a number. Consider whether less is enough.',
    age: 'The dose is {percent}% of the limit for a healthy adult; at {years} years labels ask for less, without a number. Consider whether less is enough.',
    ...saidHere,
  },
  unclear: unclearCaution,
  find: lessTolerance,
};

import type { Report } from '../../note/tree/finding.ts';
import { isOver } from '../../dose/arithmetic.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Check, Subject } from '../check.ts';
import { cardiacNames } from '../lookups.ts';
import { patientTexts } from '../patient-texts.ts';
import { crossing, dayText, daysOf } from './_days.ts';

/** Whether the note says, or leaves open, that the heart is ill. */
const hasCardiacDisease = (subject: Subject): boolean =>
  patientTexts(subject).told(cardiacNames(subject.tables)).length > 0;

function total(subject: Subject): readonly Report[] {
  const { dose, tables } = subject;
  const found: Report[] = [];
  const { healthy, cardiac } = tables.epinephrine;
  for (const day of daysOf(dose)) {
    if (!isOver(day.epinephrineMicrograms, cardiac.micrograms)) continue;
    const sick = hasCardiacDisease(subject);
    const bound = sick ? cardiac : healthy;
    if (!isOver(day.epinephrineMicrograms, bound.micrograms)) continue;
    const at = crossing(day.given, (one) => one.epinephrineMicrograms, bound.micrograms);
    if (at === undefined) continue;
    found.push({
      at: at.at,
      rests: bound,
      severity: sick ? 'warning' : 'information',
      form: sick ? 'cardiac' : 'main',
      args: {
        day: dayText(day, dose),
        total: formatNumber(day.epinephrineMicrograms, 2),
        most: bound.micrograms,
      },
    });
  }
  return found;
}

export const check: Check = {
  code: 'dose/epinephrine-total',
  severity: 'information',
  title: 'A lot of epinephrine in one visit',
  why: 'Epinephrine raises pulse and blood pressure. The maxima are those of dental teaching; the medical labels name none.',
  sources: [
    { source: 'epinephrine-dental-course', mark: 'Q' },
    { source: 'epinephrine-cardiac-dental', mark: 'Q' },
  ],
  messages: {
    main: '{total} mcg of epinephrine in {day} is more than {most} mcg, a maximum of dental teaching for healthy adults.',
    cardiac:
      '{total} mcg of epinephrine in {day} is more than {most} mcg, a maximum of dental teaching with cardiac disease. Consider a weaker or plain solution.',
  },
  sourcesDiffer: {
    how: 'A textbook allows 500 mcg, dental teaching 200 mcg and 40 mcg with heart disease; labels give no maximum. The dental ones are followed.',
    settings: ['severities'],
  },
  find: total,
};

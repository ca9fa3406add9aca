import type { Check } from '../check.ts';
import { isOver } from '../../dose/arithmetic.ts';
import { formatNumber } from '../../note/values/format.ts';
import { bounded } from '../bounded.ts';
import type { Report, Subject } from '../check.ts';
import { cautionsOf } from './_cautions.ts';
import { daysOf } from './_days.ts';
import { said, saidHere, epinephrineAt, withEpinephrine } from './_caution-findings.ts';

function epinephrineCare(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  const { micrograms } = subject.tables.epinephrine.cardiac;
  for (const day of daysOf(subject.dose)) {
    const first = withEpinephrine(day)[0];
    if (first === undefined) continue;
    const much = isOver(day.epinephrineMicrograms, micrograms);
    for (const caution of cautionsOf(subject)) {
      const effect = caution.row.epinephrine;
      if (effect === undefined || !(effect.anyAmount || much)) continue;
      found.push({
        at: epinephrineAt(first),
        severity: bounded(effect.anyAmount ? 'warning' : 'information', effect.mark),
        form: effect.anyAmount ? 'any' : 'main',
        args: {
          name: caution.row.name,
          micrograms: formatNumber(day.epinephrineMicrograms, 2),
          most: micrograms,
        },
        related: [said(caution)],
      });
    }
  }
  return found;
}

export const check: Check = {
  code: 'dose/epinephrine-care',
  severity: 'warning',
  title: 'Epinephrine with a condition or medicine that calls for care',
  why: 'With a pheochromocytoma any epinephrine can set off a crisis. With non-selective beta blockers, tricyclics, MAO inhibitors, phenothiazines, cocaine or hyperthyroidism pressure and rhythm can suffer. Sources differ from caution to contraindicated, and hold it unlikely with small local doses: below the maximum for cardiac disease nothing is said.',
  sources: [
    { source: 'epinephrine-conditions', mark: 'Q' },
    { source: 'beta-blocker-interactions', mark: 'Q' },
    { source: 'epinephrine-interactions', mark: 'Q' },
    { source: 'epinephrine-cardiac-dental', mark: 'Q' },
  ],
  messages: {
    any: 'Epinephrine with {name}: the sources advise against it. Use a plain solution, or ask the physician who treats it.',
    main: '{micrograms} mcg of epinephrine is more than {most} mcg, and {name} can make it act more strongly. Weigh less, or a plain solution, and watch pulse and pressure.',
    said: saidHere,
  },
  alternatives: { readAs: [], forms: ['any'] },
  sourcesDiffer: {
    how: 'For the same medicines one text asks for care and another forbids epinephrine. Care is asked for.',
    settings: ['severities'],
  },
  find: epinephrineCare,
};

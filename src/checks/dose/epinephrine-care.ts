import type { Report } from '../../note/tree/finding.ts';
import { isOver } from '../../dose/arithmetic.ts';
import { formatNumber } from '../../note/values/format.ts';
import { bounded } from '../bounded.ts';
import type { Check, Subject } from '../check.ts';
import { cautionsOf } from './_cautions.ts';
import { daysOf } from './_days.ts';
import {
  nameOf,
  said,
  saidHere,
  epinephrineAt,
  withEpinephrine,
  unclearCaution,
} from './_caution-findings.ts';

const forms = { any: 'any', trace: 'avoid', unstable: 'unstable', cardiac: 'main' } as const;

function epinephrineCare(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  const { cardiac, trace } = subject.tables.epinephrine;
  const bounds = { any: 0, trace: trace.micrograms, unstable: trace.micrograms, cardiac: cardiac.micrograms };
  for (const day of daysOf(subject.dose)) {
    const first = withEpinephrine(day)[0];
    if (first === undefined) continue;
    for (const caution of cautionsOf(subject)) {
      const effect = caution.row.epinephrine;
      if (effect === undefined || !isOver(day.epinephrineMicrograms, bounds[effect.from])) continue;
      found.push({
        at: epinephrineAt(first),
        severity: bounded(effect.from === 'cardiac' ? 'information' : 'warning', effect.mark),
        form: forms[effect.from],
        args: {
          name: nameOf(caution),
          micrograms: formatNumber(day.epinephrineMicrograms, 2),
          most: cardiac.micrograms,
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
  why: 'With a pheochromocytoma any epinephrine can set off a crisis. With non-selective beta blockers, tricyclics, MAO inhibitors and ergot-type oxytocics labels warn of severe, prolonged hypertension and advise against it, without an amount; with uncontrolled hypertension they rule it out. Up to 10 mcg (1 mL of 1:100,000), which Wheal takes as a trace, these are not reported. With hyperthyroidism and heart disease that are not under control reviews of dentistry and a Swiss label rule it out. With phenothiazines, cocaine or treated hyperthyroidism it is reported above the maximum for cardiac disease.',
  sources: [
    { source: 'us-label-epinephrine-interactions', mark: 'Q' },
    { source: 'uk-smpc-adrenaline-hypertension', mark: 'Q' },
    { source: 'epinephrine-conditions', mark: 'Q' },
    { source: 'vasoconstrictor-contraindications-1', mark: 'Q' },
    { source: 'vasoconstrictor-contraindications-2', mark: 'Q' },
    { source: 'swiss-label-articaine-epinephrine', mark: 'Q' },
    { source: 'blood-pressure-before-surgery', mark: 'Q' },
    { source: 'beta-blocker-interactions', mark: 'Q' },
    { source: 'epinephrine-interactions', mark: 'Q' },
    { source: 'epinephrine-cardiac-dental', mark: 'Q' },
  ],
  messages: {
    any: 'Epinephrine with {name}: the sources advise against it. Use a plain solution, or ask the physician who treats it.',
    avoid:
      '{micrograms} mcg of epinephrine with {name}: labels advise against it, since blood pressure can rise severely. Use a plain solution; if it was given, watch pulse and blood pressure.',
    unstable:
      '{micrograms} mcg of epinephrine with {name}: reviews rule it out while it is not under control. Use a plain solution, or ask the physician who treats it; if it is under control, write that.',
    main: '{micrograms} mcg of epinephrine is more than {most} mcg, and {name} can make it act more strongly. Consider less, or a plain solution, and watch pulse and blood pressure.',
    ...saidHere,
  },
  alternatives: { readAs: [], forms: ['any', 'avoid', 'unstable'] },
  sourcesDiffer: {
    how: 'For the same medicines one text asks for care and another forbids epinephrine. Care is asked for.',
    settings: ['severities'],
  },
  unclear: unclearCaution,
  find: epinephrineCare,
};

import type { InjectedDose } from '../../dose/injected.ts';
import type { Report } from '../../note/tree/finding.ts';
import type { Check, Subject } from '../check.ts';
import { isAbsent } from '../absent.ts';
import { format } from '../sources.ts';
import { injectedOf } from './_injected.ts';

/** Below this age a dose within the limits of adults is not taken for one in order. */
const childBelowMonths = 144;

/** What keeps the dose of one injection from being judged, first what the record can fix. */
function obstacle(dose: InjectedDose, subject: Subject): Report | undefined {
  const { entry, at, row, mg } = dose;
  const { drug } = entry;
  if (drug === undefined)
    return isAbsent(subject, entry, 'drug') ? { at: entry.head, form: 'drug' } : undefined;
  if (drug.value === undefined) return undefined;
  if (row === undefined)
    return { at: drug, form: 'unknown', severity: 'information', args: { drug: drug.text } };
  if (row.limits.length === 0)
    return { at, form: 'no-limit', severity: 'information', args: { drug: row.name } };
  return mg === undefined ? missing(dose, row.name, subject) : undefined;
}

/** The strength or the volume that the note does not give; what can't be read is reported by its reader. */
function missing(
  { entry, at, mgPerMl, ml }: InjectedDose,
  drug: string,
  subject: Subject,
): Report | undefined {
  if (mgPerMl === undefined && isAbsent(subject, entry, 'concentration', 'strength'))
    return { at, form: 'concentration', args: { drug } };
  if (ml === undefined && isAbsent(subject, entry, 'volume')) return { at, form: 'volume', args: { drug } };
  return undefined;
}

function ofChild({ at, row, mg }: InjectedDose, months: number | undefined): Report | undefined {
  if (row === undefined || mg === undefined || months === undefined || months >= childBelowMonths)
    return undefined;
  return {
    at,
    form: 'child',
    severity: 'information',
    args: { drug: row.name, age: Math.floor(months / 12) },
  };
}

export const check: Check = {
  code: 'dose/injected-not-judged',
  misses: ({ form }) => (form === 'drug' || form === 'concentration' || form === 'volume' ? form : undefined),
  severity: 'warning',
  title: 'The dose of an injected drug cannot be judged',
  why: 'Silence would look like a safe dose. For triamcinolone, strength and volume are needed; for other drugs no limit is known here, which is information. The limits are for adults, so a child’s dose is compared with them but not judged.',
  sources: [format, { source: 'keloid-trials-2023', mark: 'Q' }],
  messages: {
    drug: 'The note does not say which drug was injected. Write `drug`.',
    concentration:
      'The dose of {drug} can’t be judged without its strength. Look at the vial and what it was diluted with, and write `concentration`, such as 10 mg/mL.',
    volume: 'The dose of {drug} can’t be judged without its volume. Write `volume`, such as 0.3 mL.',
    'no-limit': 'Wheal knows no limit of {drug}: its dose is not judged. Compare it with its label.',
    unknown: '`{drug}` is not known here: its dose is not judged. Compare it with its label.',
    child:
      'The limits of {drug} are for adults, and the patient is {age} years old: a dose within them is not judged. Look up a child’s dose.',
  },
  find(subject) {
    const found: Report[] = [];
    const { months } = subject.dose.facts;
    for (const dose of injectedOf(subject)) {
      const report = obstacle(dose, subject) ?? ofChild(dose, months);
      if (report !== undefined) found.push(report);
    }
    return found;
  },
};

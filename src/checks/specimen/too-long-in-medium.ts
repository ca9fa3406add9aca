import type { Report } from '../../note/tree/finding.ts';
import type { Specimen } from '../../note/generated/types.ts';
import { daysBetween } from '../../note/values/days.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check } from '../check.ts';
import { rowsIn } from '../words.ts';
import { sentSpecimens } from './_sent.ts';

function tooLong(specimen: Specimen, visit: IsoDate, tables: Tables): Report | undefined {
  const sent = specimen.sent?.value;
  const keeps = rowsIn(tables.media, specimen.medium)[0]?.keeps;
  if (specimen.sent === undefined || sent === undefined || keeps === undefined) return undefined;
  const asked = (specimen.tests ?? []).some((leaf) =>
    rowsIn(tables.tests, leaf).some(({ name }) => name === keeps.test),
  );
  const days = daysBetween(visit, sent);
  if (!asked || days <= keeps.days) return undefined;
  const medium = specimen.medium?.text ?? '';
  return { at: specimen.sent, args: { medium, days, most: keeps.days, test: keeps.test } };
}

export const check: Check = {
  code: 'specimen/too-long-in-medium',
  severity: 'warning',
  title: 'A specimen too long in its medium',
  why: 'For immunofluorescence tissue keeps about 5 days in a transport medium at room temperature, a day or two in saline. One laboratory keeps Michel medium refrigerated for 7 days and refuses it from room temperature.',
  sources: [
    { source: 'immunofluorescence-manuals', mark: 'Q' },
    { source: 'michel-medium-sheet', mark: 'Q' },
    { source: 'michel-cold-storage', mark: 'Q' },
    { source: 'saline-immunofluorescence', mark: 'Q2' },
  ],
  messages: {
    main: 'The specimen was sent {days} days after the visit; for {test} tissue keeps about {most} days in `{medium}`. Ask the laboratory whether it can still be used.',
  },
  alternatives: { readAs: ['other-date'] },
  nextStep: { main: 'ask the laboratory whether it is still of use' },
  sourcesDiffer: {
    how: 'One laboratory keeps Michel medium at room temperature for 5 days, another in the cold for 7 and refuses it warm. The shorter time is followed.',
    settings: ['severities'],
  },
  find(subject) {
    const { note, tables } = subject;
    const found: Report[] = [];
    const visit = note.visit?.value?.date;
    if (visit === undefined) return found;
    for (const { specimen } of sentSpecimens(subject)) {
      const report = tooLong(specimen, visit, tables);
      if (report !== undefined) found.push(report);
    }
    return found;
  },
};

import { differenceInCalendarDays, parseISO } from 'date-fns';
import type { Severity } from '../../note/tree/finding.ts';
import type { Specimen } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Effect } from '../../reference/media.ts';
import { isAbsent } from '../absent.ts';
import { isSpecimenIncomplete } from '../complete.ts';
import { bounded } from '../bounded.ts';
import type { Check, Report } from '../check.ts';
import { rowsIn } from '../words.ts';
import { sentSpecimens } from './_sent.ts';

interface Harm {
  readonly leaf: Leaf<string>;
  readonly test: string;
  readonly effect: Effect;
  readonly severity: Severity;
}

const gravity: Readonly<Record<Severity, number>> = { error: 0, warning: 1, information: 2, hint: 3 };

/** How grave it is that a medium does this to a test: never more than its source bears. */
const severityOf = ({ on, mark }: Effect): Severity => bounded(on === 'poor' ? 'warning' : 'error', mark);

function harms(specimen: Specimen, tables: Tables): Harm[] {
  const [medium] = rowsIn(tables.media, specimen.medium);
  if (medium === undefined) return [];
  const found: Harm[] = [];
  for (const leaf of specimen.tests ?? [])
    for (const { name, like } of rowsIn(tables.tests, leaf)) {
      const effect = medium.effects?.[like ?? name];
      if (effect !== undefined && effect.on !== 'serves')
        found.push({ leaf, test: name, effect, severity: severityOf(effect) });
    }
  return found;
}

/** One report for a specimen: what its medium does to the test that suffers most, and to all others as gravely. */
function judge(specimen: Specimen, tables: Tables): Report | undefined {
  const found = harms(specimen, tables).sort((a, b) => gravity[a.severity] - gravity[b.severity]);
  const [worst] = found;
  if (worst === undefined || specimen.medium === undefined) return undefined;
  const same = found.filter(({ severity }) => severity === worst.severity);
  return {
    at: specimen.medium,
    severity: worst.severity,
    form: worst.effect.on,
    args: {
      medium: specimen.medium.text,
      tests: [...new Set(same.map(({ test }) => test))].join(', '),
    },
    related: found.map(({ leaf: { start, end }, test }) => ({ start, end, form: 'test', args: { test } })),
  };
}

function tooLong(specimen: Specimen, visit: IsoDate, tables: Tables): Report | undefined {
  const sent = specimen.sent?.value;
  const keeps = rowsIn(tables.media, specimen.medium)[0]?.keeps;
  if (specimen.sent === undefined || sent === undefined || keeps === undefined) return undefined;
  const asked = (specimen.tests ?? []).some((leaf) =>
    rowsIn(tables.tests, leaf).some(({ name }) => name === keeps.test),
  );
  const days = differenceInCalendarDays(parseISO(sent), parseISO(visit));
  if (!asked || days <= keeps.days) return undefined;
  const medium = specimen.medium?.text ?? '';
  return { at: specimen.sent, args: { medium, days, most: keeps.days, test: keeps.test } };
}

export const checks: readonly Check[] = [
  {
    code: 'specimen/medium-missing',
    when: isSpecimenIncomplete,
    misses: () => 'medium',
    severity: 'warning',
    title: 'No word on what the specimen is in',
    why: 'The medium decides which tests are possible, and a mistake can only be mended while the tissue is fresh.',
    sources: [
      { source: 'histology-manuals', mark: 'Q' },
      { source: 'format', mark: 'format' },
    ],
    messages: {
      main: 'The note does not say what the specimen is in. Look at the container, and write `medium`: formalin, Michel, saline, sterile container.',
    },
    find(subject) {
      const found: Report[] = [];
      for (const { specimen } of sentSpecimens(subject))
        if (isAbsent(subject, specimen, 'medium')) found.push({ at: specimen.head });
      return found;
    },
  },
  {
    code: 'specimen/wrong-medium',
    about: ['medium'],
    severity: 'error',
    title: 'A medium that destroys what the test looks for',
    why: 'Formalin and other fixatives destroy what immunofluorescence looks for within minutes, and kill what a culture would grow. The record can not mend that: the laboratory has to know, and another sample be taken. Where a source only says that a medium does not suit a test, it is a warning; what is from memory is information.',
    sources: [
      { source: 'immunofluorescence-manuals', mark: 'Q' },
      { source: 'jaad-2010-formalin', mark: 'Q' },
      { source: 'culture-manuals', mark: 'Q' },
      { source: 'frozen-section-manual', mark: 'Q' },
      { source: 'histology-manuals', mark: 'Q' },
      { source: 'electron-microscopy-manuals', mark: 'Q' },
      { source: 'michel-medium-sheet', mark: 'Q' },
      { source: 'fresh-tissue-manual', mark: 'Q' },
      { source: 'alcohol-fixation-manual', mark: 'Q' },
      { source: 'saline-immunofluorescence', mark: 'Q2' },
      { source: 'media-memory', mark: 'M' },
    ],
    messages: {
      destroys:
        'Tissue in `{medium}` is lost for {tests}. Call the laboratory at once, and take another sample into the right medium.',
      poor: '`{medium}` does not suit {tests}. Call the laboratory: it may still be moved, or another sample is needed.',
      test: '{test} is asked for here',
    },
    find(subject) {
      const { tables } = subject;
      const found: Report[] = [];
      for (const { specimen } of sentSpecimens(subject)) {
        const report = judge(specimen, tables);
        if (report !== undefined) found.push(report);
      }
      return found;
    },
  },
  {
    code: 'specimen/too-long-in-medium',
    about: ['sent'],
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
      main: 'The specimen was sent {days} days after the visit; for {test} tissue keeps about {most} days in `{medium}`. Ask the laboratory whether it is still of use.',
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
  },
];

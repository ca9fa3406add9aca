import type { Report, Severity } from '../../note/tree/finding.ts';
import { byGravity } from '../../note/tree/severity.ts';
import type { Specimen } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Effect, MediumRow } from '../../reference/media.ts';
import { bounded } from '../bounded.ts';
import type { Check } from '../check.ts';
import { rowsIn } from '../words.ts';
import { sentSpecimens } from './_sent.ts';

interface Harm {
  readonly leaf: Leaf<string>;
  readonly test: string;
  /** The test under whose name the effects on it are kept. */
  readonly key: string;
  readonly effect: Effect;
  readonly severity: Severity;
}

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
        found.push({ leaf, test: name, key: like ?? name, effect, severity: severityOf(effect) });
    }
  return found;
}

/** The medium that serves all of these tests, surest first; nothing is named where none is known to. */
function rightText(harmed: readonly Harm[], { media }: Tables): string {
  const serves = (row: MediumRow): boolean => harmed.every(({ key }) => row.effects?.[key]?.on === 'serves');
  const isSure = (row: MediumRow): boolean => harmed.every(({ key }) => row.effects?.[key]?.mark === 'Q');
  const serving = media.rows.filter(serves);
  const row = serving.find(isSure) ?? serving[0];
  return row === undefined ? '' : ` into ${row.name}`;
}

/** One report for a specimen: what its medium does to the test that suffers most, and to all others as gravely. */
function judge(specimen: Specimen, tables: Tables): Report | undefined {
  const found = harms(specimen, tables).sort((a, b) => byGravity(a.severity, b.severity));
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
      right: rightText(same, tables),
    },
    related: found.map(({ leaf: { start, end }, test }) => ({ start, end, form: 'test', args: { test } })),
  };
}

export const check: Check = {
  code: 'specimen/wrong-medium',
  severity: 'error',
  title: 'A medium that destroys what the test looks for',
  why: 'Formalin and other fixatives destroy what immunofluorescence looks for within minutes, and kill what a culture would grow. Correcting the record does not help: the laboratory has to know, and another sample has to be taken. Where a source only says that a medium does not suit a test, it is a warning; what is from memory is information.',
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
      'Tissue in `{medium}` is lost for {tests}. Call the laboratory at once, and take another sample{right}.',
    poor: '`{medium}` does not suit {tests}. Call the laboratory: it may still be moved, or another sample is needed{right}.',
    test: '{test} is asked for here',
  },
  // Tissue that is in a medium that destroys it is not saved by another word.
  alternatives: { readAs: [], forms: ['poor'] },
  nextStep: {
    destroys: 'tell the laboratory, take another specimen',
    poor: 'ask the laboratory whether it can still be moved',
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
};

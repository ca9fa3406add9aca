import type { Report } from '../../note/tree/finding.ts';
import type { Specimen } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Effect, MediumRow } from '../../reference/media.ts';
import { bounded } from '../bounded.ts';
import type { Check, Subject } from '../check.ts';
import { namesUsed } from '../lookups.ts';
import { tellingsOf } from '../mishaps.ts';
import { patientTexts, type Told } from '../patient-texts.ts';
import { rowsIn } from '../words.ts';
import { sentSpecimens } from './_sent.ts';

interface Harm {
  readonly test: string;
  readonly effect: Effect;
  readonly at: Specimen;
}

/** The first test of some specimens that a medium destroys. */
function harmOf(row: MediumRow, specimens: readonly Specimen[], tables: Tables): Harm | undefined {
  for (const at of specimens)
    for (const leaf of at.tests ?? [])
      for (const { name, like } of rowsIn(tables.tests, leaf)) {
        const effect = row.effects?.[like ?? name];
        if (effect?.on === 'destroys') return { test: name, effect, at };
      }
  return undefined;
}

const isFor = /\b(?:DIF|IF|[Ii]mmunofluorescence|[Cc]ultures?|[Ff]rozen)\b/;

/** The words between two stops or commas that hold a mention. */
function clauseOf({ leaf: { value = '' }, from, to }: Told<MediumRow>): string {
  const start = Math.max(...['.', ';', ',', '\n'].map((stop) => value.lastIndexOf(stop, from - 1))) + 1;
  const rest = value.slice(to).search(/[.;,\n]/);
  return value.slice(start, rest < 0 ? value.length : to + rest);
}

function judge(told: Told<MediumRow>, subject: Subject): Report | undefined {
  const telling = tellingsOf(subject).get(told.leaf);
  if (telling === undefined || told.row.effects === undefined || told.why === 'other person')
    return undefined;
  const { tables } = subject;
  const { procedure } = telling;
  const specimens = sentSpecimens(subject).flatMap((one) =>
    procedure === undefined || one.procedure === procedure ? [one.specimen] : [],
  );
  const harm = harmOf(told.row, specimens, tables);
  if (harm === undefined) return undefined;
  // Where another specimen is meant to be in it, the text has to say which one was.
  const isElsewhere = specimens.some(({ medium }) => rowsIn(tables.media, medium).includes(told.row));
  if (isElsewhere && !isFor.test(clauseOf(told))) return undefined;
  const { start, end } = harm.at.medium ?? harm.at.head;
  return {
    at: told.at,
    form: told.answer === 'said' ? 'main' : 'open',
    severity: bounded(told.answer === 'said' ? 'error' : 'warning', harm.effect.mark),
    args: { medium: told.row.name, test: harm.test },
    related: [{ start, end, form: 'specimen', args: { test: harm.test } }],
  };
}

export const check: Check = {
  code: 'specimen/told-medium',
  severity: 'error',
  title: 'A text puts the specimen into a medium that destroys its test',
  why: 'The medium says what was intended; a remark or a call from the laboratory says what happened. Formalin destroys what immunofluorescence looks for within minutes, and kills what a culture would grow.',
  sources: [
    { source: 'immunofluorescence-manuals', mark: 'Q' },
    { source: 'jaad-2010-formalin', mark: 'Q' },
    { source: 'culture-manuals', mark: 'Q' },
    { source: 'frozen-section-manual', mark: 'Q' },
  ],
  messages: {
    main: 'According to this text the tissue was in {medium}, where it is lost for {test}. Call the laboratory at once, and take another sample; if another specimen is meant, name it.',
    open: 'This text leaves open whether the tissue was in {medium}, where it is lost for {test}. Find out and tell the laboratory.',
    specimen: 'the specimen for {test}',
  },
  nextStep: { main: 'tell the laboratory, take another specimen' },
  find(subject) {
    const { media } = subject.tables;
    const tested = sentSpecimens(subject).some(({ specimen }) => specimen.tests !== undefined);
    if (!tested) return [];
    const found = patientTexts(subject)
      .told(namesUsed(media))
      .flatMap((told) => judge(told, subject) ?? []);
    return found.slice(0, 1);
  },
};

import type { Args, Finding } from '../note/tree/finding.ts';
import type { Note, Practice } from '../note/generated/types.ts';
import type { Source } from '../note/read.ts';
import type { Check, Unclear } from './check.ts';
import { catalogue } from './generated/catalogue.ts';
import type { Trust } from '../practice/tables.ts';
import { judgePractice } from './running/practice-file.ts';
import { runChecks, type Context, type Judgement } from './running/run.ts';

export { catalogue, type Check, type Context, type Judgement, type Unclear };

const byCode: ReadonlyMap<string, Check> = new Map(catalogue.map((check) => [check.code, check]));

/** Judges a note by the whole catalogue. */
export function check(source: Source<Note>, context: Context): Judgement {
  return runChecks(catalogue, source, context);
}

/** What some checks of the catalogue find in a note; the list of them has to be one that is kept. */
export function checkBy(some: readonly Check[], source: Source<Note>, context: Context): readonly Finding[] {
  return runChecks(catalogue, source, context, some).findings;
}

/** Judges a practice file: how it is written, and what in it is not used as it was meant. */
export function checkPractice(source: Source<Practice>, trust?: Trust): readonly Finding[] {
  return judgePractice(byCode, source, trust);
}

export const checkOf = (code: string): Check | undefined => byCode.get(code);

/** The words of a finding, from the template of its check. */
export function messageOf(finding: Pick<Finding, 'code' | 'form' | 'args'>): string {
  const template = byCode.get(finding.code)?.messages[finding.form];
  return template === undefined ? finding.code : fill(template, finding.args);
}

function fill(template: string, args: Args): string {
  return template.replace(/\{(\w+)\}/g, (whole, name: string) =>
    Object.hasOwn(args, name) ? String(args[name]) : whole,
  );
}

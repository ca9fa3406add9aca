import type { Args, Finding } from '../note/finding.ts';
import type { Note } from '../note/generated/types.ts';
import type { Source } from '../note/read.ts';
import type { Check } from './check.ts';
import { catalogue } from './generated/catalogue.ts';
import { runChecks, type Context, type Judgement } from './run.ts';

export { catalogue, type Check, type Context, type Judgement };

const byCode: ReadonlyMap<string, Check> = new Map(catalogue.map((check) => [check.code, check]));

/** Judges a note by the whole catalogue. */
export function check(source: Source<Note>, context: Context): Judgement {
  return runChecks(catalogue, source, context);
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

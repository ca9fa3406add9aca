import assert from 'node:assert/strict';
import type { Check } from '../../src/checks/check.ts';
import { catalogue, checkOf, messageOf } from '../../src/checks/index.ts';
import { runChecks, type Judgement } from '../../src/checks/running/run.ts';
import type { Finding, Severity } from '../../src/note/tree/finding.ts';
import { applyEdits } from '../../src/note/tree/edit.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables, type Tables } from '../../src/practice/tables.ts';
import { isTooLoud } from './marks.ts';

export interface Setting {
  /** The day on which the note is judged; 2026-03-02 where nothing is said. */
  readonly today?: string;
  readonly tables?: Tables;
}

export interface Marked {
  readonly text: string;
  readonly ranges: readonly { readonly start: number; readonly end: number }[];
}

/** Takes the marks `⟦` and `⟧` out of a note and answers where they was. */
export function unmark(marked: string): Marked {
  const ranges: { start: number; end: number }[] = [];
  let text = '';
  let start = 0;
  for (const part of marked.split(/(⟦|⟧)/)) {
    if (part === '⟦') start = text.length;
    else if (part === '⟧') ranges.push({ start, end: text.length });
    else text += part;
  }
  return { text, ranges };
}

/** Judges a note by the whole catalogue. */
export function judge(
  text: string,
  { today = '2026-03-02', tables = referenceTables }: Setting = {},
): Judgement {
  return runChecks(catalogue, readNote(text), { tables, today });
}

/** The list of one check for each code, kept since what is known of a list is worked out once. */
const alone: ReadonlyMap<string, readonly Check[]> = new Map(catalogue.map((check) => [check.code, [check]]));

/** What one check finds in a note; no other is asked, since none changes what it finds. */
export function judgeBy(code: string, text: string, setting: Setting = {}): readonly Finding[] {
  const asked = alone.get(code);
  assert.ok(asked !== undefined, `there is no check ${code}`);
  const { today = '2026-03-02', tables = referenceTables } = setting;
  const { findings, failures } = runChecks(catalogue, readNote(text), { tables, today }, asked);
  // A check that throws is caught, and must not pass for one that has nothing to say.
  const failed = failures.find(({ check }) => check === code);
  if (failed !== undefined) throw failed.error;
  return findings.filter((finding) => finding.code === code);
}

/**
 * Asserts that one check finds exactly what is marked with ⟦ ⟧, and answers the findings.
 * With `severity` each of them must have it.
 */
export function flags(
  code: string,
  marked: string,
  setting: Setting & { readonly severity?: Severity } = {},
): readonly Finding[] {
  const { text, ranges } = unmark(marked);
  assert.ok(ranges.length > 0, 'the note marks nothing');
  const findings = judgeBy(code, text, setting);
  assert.deepEqual(
    findings.map(({ start, end }) => text.slice(start, end)),
    ranges.map(({ start, end }) => text.slice(start, end)),
  );
  assert.deepEqual(
    findings.map(({ start, end }) => ({ start, end })),
    ranges,
  );
  for (const finding of findings) {
    if (setting.severity !== undefined) assert.equal(finding.severity, setting.severity);
    assertWords(finding);
    assertLoudness(finding);
  }
  return findings;
}

/** Asserts that no finding is louder than the sources of its check allow. */
function assertLoudness({ code, severity }: Finding): void {
  const check = checkOf(code);
  assert.ok(check !== undefined && !isTooLoud(severity, check), `${code} may not be ${severity}`);
}

/** Asserts that a finding and the places that belong to it have words, and no hole in them. */
export function assertWords({ code, form, args, related }: Finding): void {
  for (const one of [{ form, args }, ...related]) {
    const message = messageOf({ code, form: one.form, args: one.args });
    assert.notEqual(message, code, `${code} has no message ${one.form}`);
    assert.doesNotMatch(message, /\{\w+\}|undefined|NaN/, 'a message with a hole in it');
  }
}

/** Asserts that one check has nothing to say about a note. */
export function silent(code: string, text: string, setting: Setting = {}): void {
  assert.ok(!/[⟦⟧]/.test(text), 'a silent note has no marks');
  assert.deepEqual(judgeBy(code, text, setting).map(messageOf), []);
}

/** Applies the fix with a title that contains `title`, and answers the text that results. */
export function fixed(code: string, text: string, title: string, setting: Setting = {}): string {
  const check = catalogue.find((one) => one.code === code);
  const [finding] = judgeBy(code, text, setting);
  assert.ok(check?.fix !== undefined && finding !== undefined, `${code} finds nothing or has no fix`);
  const fix = check
    .fix({ text, tables: setting.tables ?? referenceTables }, finding)
    .find((one) => one.title.includes(title));
  assert.ok(fix !== undefined, `no fix is titled ${title}`);
  return applyEdits(text, fix.edits);
}

import { check } from '../../src/checks/index.ts';
import { handoutOf } from '../../src/documents/handout/index.ts';
import { summaryFormats, summaryOf } from '../../src/documents/summary/index.ts';
import { factsOf } from '../../src/followup/caseload.ts';
import { noteIndex, readNote } from '../../src/note/read.ts';
import { applyEdits } from '../../src/note/tree/edit.ts';
import { referenceTables as tables } from '../../src/practice/tables.ts';
import {
  analyse,
  completionsAt,
  diagnosticsOf,
  fixAll,
  fixesAt,
  hoverAt,
  outlineOf,
  type Analysis,
} from '../../src/service/index.ts';
import { dangers, samples } from './notes.ts';
import { Random } from './random.ts';
import { rewritten } from './rewrite.ts';

/** One way of trying what nobody has thought of. */
export interface Part {
  /** Tries once; what went wrong, with the text that shows it, where something did. */
  readonly tried: (random: Random) => Failure | undefined;
}

export interface Failure {
  readonly text: string;
  readonly what: string;
  /** Whether another text fails in the same way, for making it smaller; undefined where it depends on two texts. */
  readonly again?: (text: string) => boolean;
}

const today = '2026-03-02';
const analysisOf = (text: string): Analysis => analyse(text, { tables, today });
const signs = Array.from(':{}[]"\'#&*!|>%@-?,`\t\n \\\r\u00a0\u00ad\u200b\u202eа１😀');

/** A text with some of it left out, put in, exchanged or repeated. */
function mutated(text: string, random: Random): string {
  let now = text;
  for (let left = 1 + random.below(6); left > 0; left--) {
    const at = random.below(now.length + 1);
    const to = Math.min(now.length, at + random.below(random.chance(0.2) ? 200 : 4));
    const other = random.of(samples);
    const from = random.below(other.length);
    const put = random.of([
      '',
      random.of(signs),
      other.slice(from, from + random.below(60)),
      now.slice(at, to) + now.slice(at, to),
    ]);
    now = now.slice(0, at) + put + now.slice(to);
  }
  return now;
}

const splitsPair = (text: string, at: number): boolean =>
  /[\ud800-\udbff]/.test(text[at - 1] ?? '') && /[\udc00-\udfff]/.test(text[at] ?? '');

/** What is wrong with how a text was answered, whatever the text is. */
function wrongIn(text: string): string | undefined {
  const source = readNote(text);
  const judgement = check(source, { tables, today });
  const [failure] = judgement.failures;
  if (failure !== undefined) return `${failure.check} threw ${String(failure.error)}`;
  for (const { code, start, end } of judgement.findings) {
    if (!(0 <= start && start <= end && end <= text.length)) return `${code} is at ${start}-${end}`;
    if (splitsPair(text, start) || splitsPair(text, end)) return `${code} splits a pair at ${start}-${end}`;
  }
  diagnosticsOf(text, judgement.findings);
  const summary = summaryOf(source, judgement, { tables, practice: undefined, today });
  if (summary.readable) for (const { write } of Object.values(summaryFormats)) write(summary);
  handoutOf(source, judgement, { tables, language: undefined });
  factsOf(source, tables);
  return undefined;
}

/** What `work` answers, or the error that it throws. */
function caught(work: () => string | undefined): string | undefined {
  try {
    return work();
  } catch (error) {
    return error instanceof Error ? `threw ${error.message}` : `threw ${String(error)}`;
  }
}

function failing(text: string, wrong: (text: string) => string | undefined): Failure | undefined {
  const what = caught(() => wrong(text));
  return what === undefined
    ? undefined
    : { text, what, again: (other) => caught(() => wrong(other)) !== undefined };
}

const texts: Part = { tried: (random) => failing(mutated(random.of(samples), random), wrongIn) };

/** Findings and dose by which two ways of writing are compared; not how it is written. */
function meaningOf(text: string): string {
  const { findings, dose } = check(readNote(text), { tables, today });
  const codes = findings
    .filter(({ code }) => !code.startsWith('yaml/'))
    .map(({ code, severity }) => `${code} ${severity}`)
    .sort();
  return JSON.stringify([codes, dose?.judged, dose?.fraction]);
}

const sameMeaning: Part = {
  tried(random) {
    const before = random.chance(0.5) ? random.of(samples) : random.of(dangers).text;
    const text = rewritten(before, random);
    if (text === undefined) return undefined;
    const [a, b] = [meaningOf(before), caught(() => meaningOf(text)) ?? ''];
    return a === b ? undefined : { text, what: `${a}\n  is now ${b}` };
  },
};

const letters = Array.from('abcdefghijklmnopqrstuvwxyz-: ,');

/** Whether errors still say what one did, or that not all was judged, or what the slip was. */
function stillSaid(text: string, code: string, line: number): boolean {
  const { findings, dose } = check(readNote(text), { tables, today });
  const errors = findings.filter(({ severity }) => severity === 'error');
  if (
    errors.some((one) => one.code === code || one.code.startsWith('shape/') || one.code.startsWith('yaml/'))
  )
    return true;
  const lineOf = (at: number): number => text.slice(0, at).split('\n').length - 1;
  return (
    dose?.judged === false || findings.some(({ start, end }) => lineOf(start) <= line && line <= lineOf(end))
  );
}

const oneSlip: Part = {
  tried(random) {
    const { code, text } = random.of(dangers);
    const judged = check(readNote(text), { tables, today });
    const danger = judged.findings.find((one) => one.code === code && one.severity === 'error');
    if (danger === undefined) return undefined;
    const start = text.lastIndexOf('\n', danger.start - 1) + 1;
    const stop = text.indexOf('\n', danger.end);
    const at = start + random.below((stop < 0 ? text.length : stop) - start);
    // Another number is another record, and a comment is one.
    if (/[\d#.%]/.test(text.slice(Math.max(0, at - 1), at + 2))) return undefined;
    const [from, put] = random.of([
      [at, random.of(letters)],
      [at + 1, ''],
      [at + 1, random.of(letters)],
    ] as const);
    const slipped = text.slice(0, at) + put + text.slice(from);
    // Another unit is another record too.
    if (/\d ?uL\b/.test(slipped)) return undefined;
    const line = text.slice(0, at).split('\n').length - 1;
    return stillSaid(slipped, code, line)
      ? undefined
      : { text: slipped, what: `nothing says ${code} or the slip in line ${line + 1}` };
  },
};

/** What is wrong after a fix or a completion was put in. */
function wrongAfter(analysis: Analysis, random: Random): string | undefined {
  const { text, judgement } = analysis;
  for (const { start, end } of judgement.findings.slice(0, 12))
    for (const { edits, title } of fixesAt(analysis, start, end)) {
      const wrong = caught(() => wrongIn(applyEdits(text, edits)));
      if (wrong !== undefined) return `after “${title}”: ${wrong}`;
    }
  const once = applyEdits(text, fixAll(analysis));
  const twice = applyEdits(once, fixAll(analysisOf(once)));
  if (once !== twice) return 'fix all changes more when done twice';
  for (let left = 4; left > 0; left--) {
    const at = random.below(text.length + 1);
    hoverAt(analysis, at);
    completionsAt(text, at, { tables, today, shapes: noteIndex, root: 'note' });
  }
  if (analysis.note !== null) outlineOf(analysis.note);
  return undefined;
}

const service: Part = {
  tried(random) {
    const text = random.chance(0.3) ? random.of(samples) : mutated(random.of(samples), random);
    const seed = random.below(2 ** 31);
    return failing(text, (other) => wrongAfter(analysisOf(other), new Random(seed)));
  },
};

/** The parts of a campaign by their names. */
export const parts: Readonly<Record<string, Part>> = {
  texts,
  'same meaning': sameMeaning,
  'one slip': oneSlip,
  service,
};

/** A smaller text that fails in the same way: lines are left out, then characters, as long as it still does. */
export function smallest({ text, again }: Failure): string {
  if (again === undefined) return text;
  let now = text;
  for (let size = Math.ceil(now.length / 2); size > 0; size = size === 1 ? 0 : Math.ceil(size / 2))
    for (let at = 0; at < now.length;) {
      const shorter = now.slice(0, at) + now.slice(at + size);
      if (again(shorter)) now = shorter;
      else at += size;
    }
  return now;
}

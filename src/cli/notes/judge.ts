import { check, checkOf, checkPractice, messageOf, type Judgement } from '../../checks/index.ts';
import { together } from '../../checks/together.ts';
import type { DayDoses } from '../../dose/day-doses.ts';
import type { DoseJudgement } from '../../dose/judge.ts';
import type { Finding, Severity } from '../../note/tree/finding.ts';
import type { Note } from '../../note/generated/types.ts';
import { Lines, type Position } from '../../note/text/lines.ts';
import { readNote, type Source } from '../../note/read.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { citation } from '../../reference/sources/index.ts';
import { referenceTables, type Tables } from '../../practice/tables.ts';
import type { Console } from '../terminal/console.ts';
import { isPractice, standardInput, unreadable, type FileFault } from './files.ts';
import { loadFrom } from './notes.ts';
import { usedPath, type PracticeFile, type Practices } from './practices.ts';

/** Lines and characters from 0, as editors count. */
export interface LineRange {
  readonly start: Position;
  readonly end: Position;
}

/** A finding with its words and its place. */
export interface Reported {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly sources: readonly string[];
  /** For each source how it is cited. */
  readonly citations: readonly string[];
  readonly range: LineRange;
  readonly related: readonly { readonly message: string; readonly range: LineRange }[];
  readonly accepted?: NonNullable<Finding['accepted']>;
}

/** A file that was checked, as every form of report needs it. */
export interface Checked {
  /** As the user named it, `-` for standard input. */
  readonly path: string;
  readonly kind: 'note' | 'practice';
  /** The practice file that was laid under a note. */
  readonly practice?: string;
  readonly findings: readonly Reported[];
  /** The findings as a person reads them: what is missing at once is one. */
  readonly shown: () => readonly Reported[];
  /** Null where there is no note that can be read. */
  readonly dose: DoseJudgement | null;
  /** The line of a line, for showing it. */
  readonly row: (line: number) => string;
}

/** A note that was read, with all that is needed to judge it and to write about it. */
export interface Opened {
  readonly source: Source<Note>;
  readonly judgement: Judgement;
  readonly tables: Tables;
  readonly practice: PracticeFile | undefined;
}

/** Reads and judges a note, or says in plain words why it can't be read. */
export async function openNote(
  path: string,
  today: IsoDate,
  console: Console,
  practices: Practices,
  days?: DayDoses,
): Promise<Opened | { readonly fault: FileFault }> {
  const loaded = await loadFrom(path, console);
  if ('fault' in loaded) return loaded;
  const practice = practices.of(path === standardInput ? 'note' : path);
  const tables = practice?.tables ?? referenceTables;
  const source = readNote(loaded.text);
  // What comes by standard input is none of the files.
  const others = path === standardInput ? undefined : days?.elsewhere(path, source.value);
  const context = { tables, today, ...(others === undefined ? {} : { elsewhere: others }) };
  return { source, judgement: check(source, context), tables, practice };
}

/** Checks one file, whatever it holds. Never throws for what is in it. */
export async function checkFile(
  path: string,
  today: IsoDate,
  console: Console,
  practices: Practices,
  days?: DayDoses,
): Promise<Checked> {
  if (isPractice(path)) return checkPracticeFile(path, practices.of(path));
  const opened = await openNote(path, today, console, practices, days);
  if ('fault' in opened) return notRead(path, 'note', opened.fault);
  const { source, judgement, practice } = opened;
  const lines = new Lines(source.text);
  const used = usedPath(practice);
  return {
    path,
    kind: 'note',
    ...(used === undefined ? {} : { practice: used }),
    findings: judgement.findings.map((finding) => reported(finding, lines)),
    shown: () => together(judgement.findings, source.value).map((finding) => reported(finding, lines)),
    dose: judgement.dose,
    row: (line) => lines.row(line),
  };
}

/** The practice file's own faults. */
export function checkPracticeFile(path: string, practice: PracticeFile | undefined): Checked {
  if (practice === undefined)
    return notRead(path, 'practice', { code: unreadable, words: 'it is not there; a link may lead nowhere' });
  if ('fault' in practice.loaded) return notRead(path, 'practice', practice.loaded.fault);
  const lines = new Lines(practice.source.text);
  const findings = checkPractice(practice.source, practice.trust).map((finding) => reported(finding, lines));
  return {
    path,
    kind: 'practice',
    findings,
    shown: () => findings,
    dose: null,
    row: (line) => lines.row(line),
  };
}

function notRead(path: string, kind: Checked['kind'], { code, words }: FileFault): Checked {
  const place = { line: 0, character: 0 };
  const finding: Reported = {
    code,
    severity: 'error',
    message: `This file can't be read: ${words}. Nothing in it was checked.`,
    sources: [],
    citations: [],
    range: { start: place, end: place },
    related: [],
  };
  return { path, kind, findings: [finding], shown: () => [finding], dose: null, row: () => '' };
}

function reported(finding: Finding, lines: Lines): Reported {
  const { code, severity, accepted } = finding;
  const sources = (checkOf(code)?.sources ?? []).map(({ source }) => source);
  return {
    code,
    severity,
    message: messageOf(finding),
    sources,
    citations: sources.map(citation),
    range: rangeOf(finding, lines),
    related: finding.related.map((related) => ({
      message: messageOf({ ...related, code }),
      range: rangeOf(related, lines),
    })),
    ...(accepted === undefined ? {} : { accepted }),
  };
}

const rangeOf = ({ start, end }: Range, lines: Lines): LineRange => ({
  start: lines.at(start),
  end: lines.at(end),
});

import { judgeDose, type DoseJudgement } from '../dose/judge.ts';
import type { Finding, Problem, Severity } from '../note/finding.ts';
import type { Note } from '../note/generated/types.ts';
import type { Source } from '../note/read.ts';
import { readSite, type SiteReading } from '../note/site.ts';
import type { IsoDate } from '../note/values.ts';
import type { Tables } from '../practice/tables.ts';
import { shapeProblems } from '../schema/validate.ts';
import type { Check, Report, Subject } from './check.ts';

export interface Context {
  readonly tables: Tables;
  readonly today: IsoDate | undefined;
}

export interface Judgement {
  /** In the order of the text. */
  readonly findings: readonly Finding[];
  /** Null only where the note can't be read. */
  readonly dose: DoseJudgement | null;
}

/** Runs checks over a note that was read. Never throws. */
export function runChecks(catalogue: readonly Check[], source: Source<Note>, context: Context): Judgement {
  const subject = subjectOf(source, context);
  const findings = catalogue.flatMap((check) =>
    Array.from(check.find(subject), (report) => findingOf(check, report)),
  );
  findings.sort((a, b) => a.start - b.start || a.end - b.end);
  return { findings, dose: source.value === null ? null : subject.dose };
}

const emptyNote: Note = { start: 0, end: 0, head: { start: 0, end: 0 }, keys: new Map(), path: [] };

function subjectOf(source: Source<Note>, context: Context): Subject {
  const note = source.value ?? emptyNote;
  const byCode = new Map<string, Problem[]>();
  for (const problem of [...source.problems, ...shapeProblems(source)]) {
    const same = byCode.get(problem.code);
    if (same === undefined) byCode.set(problem.code, [problem]);
    else same.push(problem);
  }
  const sites = new Map<string, SiteReading | undefined>();
  let dose: DoseJudgement | undefined;
  return {
    note,
    source,
    ...context,
    get dose() {
      return (dose ??= judgeDose(note, context.tables));
    },
    siteOf(procedure) {
      const text = procedure.site?.value;
      if (text === undefined) return undefined;
      if (!sites.has(text)) sites.set(text, readSite(text, context.tables.sites));
      return sites.get(text);
    },
    problems: (code) => byCode.get(code) ?? [],
  };
}

function findingOf(check: Check, report: Report): Finding {
  const severity: Severity = report.severity ?? check.severity;
  return {
    code: check.code,
    severity,
    start: report.at.start,
    end: report.at.end,
    form: report.form ?? 'main',
    args: report.args ?? {},
    related: report.related ?? [],
    ...(report.data === undefined ? {} : { data: report.data }),
  };
}

import type { Elsewhere } from '../../dose/types.ts';
import { dangerUnder } from '../unread.ts';
import { judgeDose, unjudged, type DoseJudgement } from '../../dose/judge.ts';
import type { Finding, Problem, Report, Severity } from '../../note/tree/finding.ts';
import { byGravity } from '../../note/tree/severity.ts';
import type { Note, Procedure } from '../../note/generated/types.ts';
import type { Range } from '../../note/tree/tree.ts';
import { noteIndex, type Source } from '../../note/read.ts';
import { readSite, type SiteReading } from '../../note/words/site.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Tables } from '../../practice/tables.ts';
import { shapeProblems } from '../../schema/validate.ts';
import { bounded } from '../bounded.ts';
import { acceptancesOf, withAcceptance } from '../acceptance.ts';
import type { Check, Subject } from '../check.ts';
import { oncePerValue } from '../for-all.ts';
import { familyOf, isDanger, isFixed, refusals } from '../danger.ts';
import { withMissingParts } from './missing-part.ts';
import { checkFailed, moreFindings } from '../record/judging.ts';

export interface Context {
  readonly tables: Tables;
  readonly today: IsoDate | undefined;
  /** What other notes of the same patient say was given on a day; absent where nobody looked at them. */
  readonly elsewhere?: Elsewhere;
}

/** A fault in Wheal itself that stopped a check. */
export interface Failure {
  /** Code of the check, or the work that several checks ask for. */
  readonly check: string;
  readonly error: unknown;
}

export interface Judgement {
  /** In the order of the text. */
  readonly findings: readonly Finding[];
  /** Null only where the note can't be read. */
  readonly dose: DoseJudgement | null;
  /** What stopped a check; each is a finding too, without the technical words. */
  readonly failures: readonly Failure[];
}

/** As many findings of one note as anybody reads. */
export const maxFindings = 500;

/**
 * Runs checks over a note that was read. Never throws.
 * @param some those of the catalogue that are asked, in a list that is kept: what has to be known of it is worked out once
 */
export function runChecks(
  catalogue: readonly Check[],
  source: Source<Note>,
  context: Context,
  some: readonly Check[] = catalogue,
): Judgement {
  const failures: Failure[] = [];
  const problems = attempt('shape', [], failures, () => shapeProblems(source));
  const byCode = grouped([...source.problems, ...problems]);
  const subject = new Asking(source, byCode, context, catalogue);
  const refused = source.value === null || [...refusals].some((code) => byCode.has(code));
  const found = reports(refused ? stillAsked(some, byCode) : some, byCode, subject, failures);
  const dose = refused ? null : attempt('dose', notJudged, failures, () => subject.dose);
  const severities = context.tables.severities;
  const accepts = !refused && source.said.has('accepted');
  const acceptances = accepts ? attempt('accepted', [], failures, () => acceptancesOf(subject.note)) : [];
  const findings: Finding[] = [];
  for (const finding of found) {
    const graded = severities.size === 0 ? finding : withSeverity(finding, severities.get(finding.code));
    if (graded !== undefined) findings.push(withAcceptance(graded, acceptances));
  }
  for (const { check } of failures)
    findings.push(findingOf(checkFailed, { at: { start: 0, end: 0 }, args: { check } }));
  const whole = pairs.test(source.text) ? findings.map((one) => withWholePairs(one, source.text)) : findings;
  const shown = capped(oncePerValue(whole.sort(inOrder), subject.note));
  const note = { root: source.root, shapes: noteIndex, kind: 'note' } as const;
  return { findings: withMissingParts(shown, askedOf(catalogue).byCode, note), dose, failures };
}

/** The first half of a character of two units. */
const pairs = /[\ud800-\udbff]/;

const splitsPair = (text: string, at: number): boolean =>
  pairs.test(text[at - 1] ?? '') && /[\udc00-\udfff]/.test(text[at] ?? '');

/** A finding whose places cut no character of two units. */
function withWholePairs(finding: Finding, text: string): Finding {
  const whole = <Place extends Range>(place: Place): Place => ({
    ...place,
    start: place.start - (splitsPair(text, place.start) ? 1 : 0),
    end: place.end + (splitsPair(text, place.end) ? 1 : 0),
  });
  return { ...whole(finding), related: finding.related.map(whole) };
}

/** What a severity of the practice makes of a finding: undefined where the practice has turned it off. */
export function withSeverity(finding: Finding, wanted: Severity | 'off' | undefined): Finding | undefined {
  if (wanted === undefined || isFixed(finding)) return finding;
  return wanted === 'off' ? undefined : { ...finding, severity: wanted };
}

const noProblems: readonly Problem[] = [];

const emptyNote: Note = { start: 0, end: 0, head: { start: 0, end: 0 }, keys: new Map() };

const notJudged = unjudged('a fault in Wheal stopped the sum');

const inOrder = (a: Finding, b: Finding): number => a.start - b.start || a.end - b.end;

function attempt<T>(check: string, otherwise: T, failures: Failure[], work: () => T): T {
  try {
    return work();
  } catch (error) {
    failures.push({ check, error });
    return otherwise;
  }
}

function grouped(problems: readonly Problem[]): ReadonlyMap<string, readonly Problem[]> {
  const byCode = new Map<string, Problem[]>();
  for (const problem of problems) {
    const same = byCode.get(problem.code);
    if (same === undefined) byCode.set(problem.code, [problem]);
    else same.push(problem);
  }
  return byCode;
}

/** The checks that still have something to say about a file that is no note: why, or else how it is written. */
function stillAsked(
  catalogue: readonly Check[],
  byCode: ReadonlyMap<string, readonly Problem[]>,
): readonly Check[] {
  const reasons = catalogue.filter(({ code }) => refusals.has(code) && byCode.has(code));
  return reasons.length > 0 ? reasons : catalogue.filter(({ code }) => /^(yaml|shape)$/.test(familyOf(code)));
}

/** The checks of a list by how they report. */
interface Asked {
  readonly finders: readonly Finder[];
  /** Those that only give words to what reading noticed, by their code. */
  readonly words: ReadonlyMap<string, Check>;
  readonly byCode: ReadonlyMap<string, Check>;
}

/** A check that looks for itself. All are made alike, since the engine is slow with objects that are not. */
interface Finder {
  readonly check: Check;
  readonly find: NonNullable<Check['find']>;
}

const asked = new WeakMap<readonly Check[], Asked>();

function askedOf(checks: readonly Check[]): Asked {
  let own = asked.get(checks);
  if (own === undefined) {
    const words = checks
      .filter(({ find }) => find === undefined)
      .map((check) => [check.code, check] as const);
    const finders = checks.flatMap((check) =>
      check.find === undefined ? [] : [{ check, find: check.find }],
    );
    own = { finders, words: new Map(words), byCode: new Map(checks.map((check) => [check.code, check])) };
    asked.set(checks, own);
  }
  return own;
}

function reports(
  checks: readonly Check[],
  byCode: ReadonlyMap<string, readonly Problem[]>,
  subject: Subject,
  failures: Failure[],
): Finding[] {
  const { finders, words } = askedOf(checks);
  const found: Finding[] = [];
  for (const [code, problems] of byCode) {
    const check = words.get(code);
    if (check !== undefined) for (const problem of problems) found.push(findingOf(check, problem));
  }
  for (const { check, find } of finders) {
    try {
      const reported = find(subject);
      // Most report nothing, and even to walk over nothing costs as much as some of them do.
      if (reported.length === 0) continue;
      for (const report of reported) found.push(findingOf(check, report));
    } catch (error) {
      failures.push({ check: check.code, error });
    }
  }
  return found;
}

/** What checks may ask of one note; what several ask is worked out once. */
class Asking implements Subject {
  readonly note: Note;
  readonly tables: Tables;
  readonly today: IsoDate | undefined;
  readonly answers = new Map<unknown, object>();
  private judged: DoseJudgement | undefined;

  constructor(
    readonly source: Source<Note>,
    private readonly byCode: ReadonlyMap<string, readonly Problem[]>,
    private readonly context: Context,
    private readonly catalogue: readonly Check[],
  ) {
    this.note = source.value ?? emptyNote;
    this.tables = context.tables;
    this.today = context.today;
  }

  get dose(): DoseJudgement {
    const { elsewhere } = this.context;
    return (this.judged ??= judgeDose(this.note, this.tables, elsewhere, hiddenBy(this, this.byCode)));
  }

  get codes(): readonly string[] {
    return this.catalogue.map(({ code }) => code);
  }

  readonly siteOf = ({ site }: Procedure): SiteReading | undefined => {
    return site?.value === undefined ? undefined : readSite(site.value, this.tables.sites);
  };

  readonly problems = (code: string): readonly Problem[] => this.byCode.get(code) ?? noProblems;
}

/** Problems under which a part of the note may be that nobody counts. */
const hiding: readonly string[] = ['yaml/duplicate-key', 'yaml/several-documents', 'quantity/not-understood'];

/** Why part of what was given may not be counted: the reader could not take in all that was typed. */
function hiddenBy(
  { source: { damage, unread }, tables }: Pick<Subject, 'source' | 'tables'>,
  byCode: ReadonlyMap<string, readonly Problem[]>,
): string | undefined {
  const hides =
    damage.length > 0 ||
    hiding.some((code) => byCode.has(code)) ||
    unread.some((entry) => dangerUnder(entry, tables) !== undefined);
  return hides ? 'part of the note cannot be read' : undefined;
}

/** A check's report as a finding. */
export function findingOf(check: Check, report: Report): Finding {
  const form = report.form ?? 'main';
  const own: Severity = report.severity ?? check.milder?.[form] ?? check.severity;
  const severity = report.rests === undefined ? own : bounded(own, report.rests.mark);
  return {
    code: check.code,
    severity,
    start: report.at.start,
    end: report.at.end,
    form,
    args: report.args ?? {},
    related: report.related ?? [],
    ...(report.data === undefined ? {} : { data: report.data }),
    ...(report.rests === undefined
      ? {}
      : { rests: { source: report.rests.source, mark: report.rests.mark } }),
  };
}

/** Dangers and the gravest findings where there are too many, and one that says how many more; as grave as the gravest left out. */
function capped(findings: readonly Finding[]): readonly Finding[] {
  if (findings.length <= maxFindings) return findings;
  const gravest = [...findings].sort(
    (a, b) => Number(isDanger(b)) - Number(isDanger(a)) || byGravity(a.severity, b.severity),
  );
  const shown = gravest.slice(0, maxFindings).sort(inOrder);
  const more = findings.length - maxFindings;
  const severity = gravest[maxFindings]!.severity;
  const at = { start: 0, end: 0 };
  return [findingOf(moreFindings, { at, severity, args: { shown: maxFindings, more } }), ...shown];
}

import { percentText } from '../dose/words.ts';
import { isOver } from '../dose/arithmetic.ts';
import type { DoseJudgement } from '../dose/judge.ts';
import { messageOf } from '../checks/index.ts';
import { refusals } from '../checks/danger.ts';
import type { Finding, Severity } from '../note/tree/finding.ts';
import type { Analysis } from './analysis/analysis.ts';

/** The visit in a few words. */
export interface Status {
  /** What the status item shows: `3.1% of limit · 2 open`. */
  readonly text: string;
  /** A sentence more. */
  readonly detail: string;
  /** The same in whole words, for a screen reader. */
  readonly spoken: string;
  readonly severity: 'error' | 'warning' | 'none';
  /** All findings by severity; those that were accepted are counted as what they are shown as. */
  readonly counts: Readonly<Record<Severity, number>>;
  /** Share of the limit; null where there is no dose or it can't be judged. */
  readonly fraction: number | null;
  /** Version of the format as typed; undefined where none is typed. */
  readonly format: string | undefined;
  readonly judged: boolean;
  /** Why the dose, or the whole note, was not judged. */
  readonly why: string | undefined;
}

/** How the visit is: share of the limit, open findings, version of the format. */
export function statusOf(analysis: Analysis): Status {
  const { note, judgement } = analysis;
  const counts = countsOf(judgement.findings);
  const why = whyNot(analysis);
  const fraction = judgement.dose?.fraction ?? null;
  const limit = limitWords(judgement.dose, why);
  const open = openWords(judgement.findings);
  const format = note?.wheal?.text;
  const version = format === undefined ? '' : ` Format version ${format}.`;
  return {
    text: [...(limit === undefined ? [] : [limit]), open].join(' · '),
    detail: `${why === undefined ? '' : `Not judged: ${why}. `}${countWords(counts)}.${version}`,
    spoken: `${spokenDose(fraction, why)} ${countWords(counts)}.${version}`.trim(),
    severity: severityOf(counts, why),
    counts,
    fraction,
    format,
    judged: why === undefined,
    why,
  };
}

function countsOf(findings: readonly Finding[]): Record<Severity, number> {
  const counts = { error: 0, warning: 0, information: 0, hint: 0 };
  for (const { severity } of findings) counts[severity] += 1;
  return counts;
}

/** Why nothing, or not the dose, was judged. */
function whyNot({ kind, judgement }: Analysis): string | undefined {
  const refusal = judgement.findings.find(({ code }) => refusals.has(code));
  if (refusal !== undefined) return messageOf(refusal).replace(/\.$/, '');
  if (kind === 'practice') return undefined;
  return judgement.dose === null ? 'the note can’t be read' : judgement.dose.why;
}

function severityOf({ error, warning }: Status['counts'], why: string | undefined): Status['severity'] {
  if (error > 0) return 'error';
  return warning > 0 || why !== undefined ? 'warning' : 'none';
}

function limitWords(dose: DoseJudgement | null, why: string | undefined): string | undefined {
  if (why !== undefined)
    return dose !== null && isOver(dose.atLeast, 1) ? 'over the limit' : 'dose not judged';
  if (dose === null || dose.given.length === 0) return undefined;
  return `${percentText(dose.atLeast)}% of limit`;
}

/** Findings that nobody has accepted yet, hints aside. */
export function openWords(findings: readonly Finding[]): string {
  const open = findings.filter(({ severity, accepted }) => severity !== 'hint' && accepted === undefined);
  return open.length === 0 ? 'nothing open' : `${open.length} open`;
}

const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

function countWords({ error, warning, information }: Status['counts']): string {
  const parts = [
    ...(error > 0 ? [plural(error, 'error')] : []),
    ...(warning > 0 ? [plural(warning, 'warning')] : []),
    ...(information > 0 ? [`${information} to look at`] : []),
  ];
  return parts.length === 0 ? 'No findings' : parts.join(', ');
}

function spokenDose(fraction: number | null, why: string | undefined): string {
  if (why !== undefined) return `Not judged: ${why}.`;
  return fraction === null ? '' : `The visit’s dose is ${percentText(fraction)} percent of its limit.`;
}

import { messageOf } from '../checks/index.ts';
import type { Severity } from '../note/tree/finding.ts';
import { Lines } from '../note/text/lines.ts';
import type { Analysis } from './analysis/analysis.ts';

/** What somebody should know before signing a note. */
export interface BeforeSigning {
  /** How many values are still `??`. */
  readonly pending: number;
  /** Findings of each severity, those about `??` aside. */
  readonly findings: Readonly<Record<Severity, number>>;
  /** A line of words for each, the gravest first. */
  readonly rows: readonly string[];
}

const severities: readonly Severity[] = ['error', 'warning', 'information', 'hint'];

/** What is not yet known in a note, and what is found in it: hints and what was accepted are left out. */
export function beforeSigning({ text, judgement }: Analysis): BeforeSigning {
  const lines = new Lines(text);
  const findings = { error: 0, warning: 0, information: 0, hint: 0 };
  let pending = 0;
  const told = judgement.findings.filter(
    ({ severity, accepted }) => severity !== 'hint' && (accepted === undefined || severity === 'error'),
  );
  for (const { code, severity } of told)
    if (code === 'shape/pending') pending += 1;
    else findings[severity] += 1;
  const rows = [...told]
    .sort((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity) || a.start - b.start)
    .map((finding) => `line ${lines.at(finding.start).line + 1}: ${messageOf(finding)}`);
  return { pending, findings, rows };
}

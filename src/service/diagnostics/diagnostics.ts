import { checkOf, messageOf } from '../../checks/index.ts';
import { together } from '../../checks/together.ts';
import type { Finding, Severity } from '../../note/tree/finding.ts';
import { Lines, type Position } from '../../note/text/lines.ts';
import type { Analysis } from '../analysis/analysis.ts';

export interface LineRange {
  readonly start: Position;
  readonly end: Position;
}

/** A finding as an editor shows it: plain data, with lines and characters from 0. */
export interface Diagnostic {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly range: LineRange;
  readonly related: readonly { readonly message: string; readonly range: LineRange }[];
}

/**
 * The findings of a file, as people are shown them: what is missing at once is one.
 * @param whileWriting whether the file is being written, so that each part has to say for itself what it lacks
 */
export const shownFindings = ({ judgement, note }: Analysis, whileWriting = false): readonly Finding[] =>
  together(judgement.findings, note, whileWriting);

/** Findings in a text, as an editor shows them. */
export function diagnosticsOf(text: string, findings: readonly Finding[]): readonly Diagnostic[] {
  const lines = new Lines(text);
  const place = ({ start, end }: { start: number; end: number }): LineRange => ({
    start: lines.at(start),
    end: lines.at(end),
  });
  return findings
    .filter(({ code }) => checkOf(code) !== undefined)
    .map((finding) => ({
      code: finding.code,
      severity: finding.severity,
      message: wordsOf(finding),
      range: place(finding),
      related: finding.related.map((related) => ({
        message: messageOf({ ...related, code: finding.code }),
        range: place(related),
      })),
    }));
}

/** The words of a finding, and who accepted it and why: it shows for as long as it is, so that nobody overlooks either. */
function wordsOf(finding: Finding): string {
  const message = messageOf(finding);
  const { accepted } = finding;
  return accepted === undefined
    ? message
    : `${message} Accepted by ${accepted.by || 'nobody named'}: ${accepted.reason}`;
}

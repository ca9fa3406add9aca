import { checkOf, messageOf } from '../../checks/index.ts';
import { Lines } from '../../note/lines.ts';
import type { Checked } from './checked.ts';

/** The findings and doses of notes as one JSON text. Lines and characters count from 0. */
export function jsonReport(checked: readonly Checked[]): string {
  const files = checked.map(({ path, source, judgement }) => {
    const lines = new Lines(source.text);
    return {
      path,
      findings: judgement.findings.map((finding) => ({
        code: finding.code,
        severity: finding.severity,
        message: messageOf(finding),
        sources: (checkOf(finding.code)?.sources ?? []).map(({ source: key }) => key),
        range: { start: lines.at(finding.start), end: lines.at(finding.end) },
      })),
      dose: judgement.dose && {
        judged: judgement.dose.judged,
        fraction: judgement.dose.fraction,
        epinephrineMicrograms: judgement.dose.epinephrineMicrograms,
        agents: judgement.dose.agents.map(
          ({ agent, epinephrine, mg, mgPerKg, limitMg, boundBy, fraction }) => ({
            agent,
            epinephrine,
            mg,
            mgPerKg,
            limitMg,
            boundBy,
            fraction,
          }),
        ),
      },
    };
  });
  return `${JSON.stringify({ wheal: 1, files }, null, 2)}\n`;
}

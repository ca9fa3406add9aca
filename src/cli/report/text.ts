import { messageOf } from '../../checks/index.ts';
import { Lines } from '../../note/lines.ts';
import type { Checked } from './checked.ts';

/** The findings of notes as a person reads them. */
export function textReport(checked: readonly Checked[], color: boolean): string {
  const rows = checked.flatMap(({ path, source, judgement }) => {
    const lines = new Lines(source.text);
    return judgement.findings.map((finding) => {
      const { line, character } = lines.at(finding.start);
      const place = `${path}:${line + 1}:${character + 1}`;
      return `${color ? `\u001b[1m${place}\u001b[0m` : place}: ${finding.severity}: ${messageOf(finding)} [${finding.code}]`;
    });
  });
  return rows.map((row) => `${row}\n`).join('');
}

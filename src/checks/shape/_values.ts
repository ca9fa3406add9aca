import type { Report, Severity } from '../../note/tree/finding.ts';
import type { Check, Subject } from '../check.ts';
import { format } from '../sources.ts';

export const sources: Check['sources'] = [format];

/** As reading noticed it, with the severity that its form asks for. */
export const graded = (code: string, byForm: Readonly<Record<string, Severity>>) =>
  function ({ problems }: Subject): readonly Report[] {
    const found: Report[] = [];
    for (const problem of problems(code)) {
      const severity = byForm[problem.form ?? 'main'];
      found.push(severity === undefined ? problem : { ...problem, severity });
    }
    return found;
  };

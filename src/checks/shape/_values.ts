import type { Severity } from '../../note/tree/finding.ts';
import type { Check, Report, Subject } from '../check.ts';
import { format } from '../sources.ts';

export const sources: Check['sources'] = [format];

/** As reading noticed it, with the severity that its form asks for. */
export const graded = (code: string, byForm: Readonly<Record<string, Severity>>) =>
  function ({ problems }: Subject): readonly Report[] {
    const found: Report[] = [];
    for (const { start, end, ...rest } of problems(code)) {
      const severity = byForm[rest.form ?? 'main'];
      found.push({ at: { start, end }, ...rest, ...(severity === undefined ? {} : { severity }) });
    }
    return found;
  };

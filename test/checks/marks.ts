import type { Check } from '../../src/checks/index.ts';
import type { Severity } from '../../src/note/tree/finding.ts';
import { severities } from '../../src/note/tree/severity.ts';
import type { Mark } from '../../src/reference/types.ts';

/** How loud a check may be by what it rests on. */
const loudest: Readonly<Record<Mark, Severity>> = {
  Q: 'error',
  format: 'error',
  Q2: 'warning',
  M: 'information',
  common: 'information',
};

/** Whether a severity is louder than the surest source of a check allows. */
export function isTooLoud(severity: Severity, { sources }: Check): boolean {
  const allowed = Math.min(...sources.map(({ mark }) => severities.indexOf(loudest[mark])));
  return severities.indexOf(severity) < allowed;
}

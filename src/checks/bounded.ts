import type { Severity } from '../note/tree/finding.ts';
import { byGravity } from '../note/tree/severity.ts';
import type { Mark } from '../reference/types.ts';

const loudest: Readonly<Record<Mark, Severity>> = {
  Q: 'error',
  Q2: 'warning',
  M: 'information',
  common: 'information',
  format: 'error',
};

/** A severity, no louder than the mark of the value allows. */
export const bounded = (severity: Severity, mark: Mark): Severity =>
  byGravity(severity, loudest[mark]) >= 0 ? severity : loudest[mark];

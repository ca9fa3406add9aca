import type { Severity } from '../note/tree/finding.ts';
import type { Mark } from '../reference/types.ts';

const loudest: Readonly<Record<Mark, Severity>> = {
  Q: 'error',
  Q2: 'warning',
  M: 'information',
  common: 'information',
  format: 'error',
};
const order: readonly Severity[] = ['hint', 'information', 'warning', 'error'];

/** A severity, no louder than the mark of the value behind it allows. */
export const bounded = (severity: Severity, mark: Mark): Severity =>
  order.indexOf(severity) <= order.indexOf(loudest[mark]) ? severity : loudest[mark];

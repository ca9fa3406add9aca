import type { Severity } from './finding.ts';

/** From the gravest to the least. */
export const severities: readonly Severity[] = ['error', 'warning', 'information', 'hint'];

const gravity: Readonly<Record<Severity, number>> = { error: 0, warning: 1, information: 2, hint: 3 };

/** Orders severities, the gravest first. */
export const byGravity = (a: Severity, b: Severity): number => gravity[a] - gravity[b];

import type { Practice } from '../note/generated/types.ts';
import { agents } from '../reference/agents.ts';
import { limits } from '../reference/limits.ts';
import type { AgentRow, LimitRow } from '../reference/types.ts';
import { WordTable } from './word-table.ts';
import type { Severity } from '../note/finding.ts';

/** All that is known for judging a note: the reference tables with the practice's file laid over them. */
export interface Tables {
  readonly agents: WordTable<AgentRow>;
  readonly limits: readonly LimitRow[];
  /** The authority whose limits are the ceiling. */
  readonly authority: string;
  readonly severities: ReadonlyMap<string, Severity | 'off'>;
}

/** The tables of a practice without a file of its own. */
export const referenceTables: Tables = {
  agents: new WordTable(agents),
  limits,
  authority: 'US prescribing information',
  severities: new Map(),
};

/** The tables with a practice's file laid over them. */
export function tablesOf(practice: Practice | null): Tables {
  return practice === null
    ? referenceTables
    : { ...referenceTables, authority: practice.authority?.value ?? referenceTables.authority };
}

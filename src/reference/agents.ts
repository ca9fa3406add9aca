import type { WordRow } from './types.ts';

export interface AgentRow extends WordRow {
  readonly class: 'amide' | 'ester' | 'none';
}

export const agents: readonly AgentRow[] = [
  { name: 'lidocaine', synonyms: ['lignocaine', 'lido'], class: 'amide' },
];

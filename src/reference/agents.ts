import type { AgentRow } from './types.ts';

export const agents: readonly AgentRow[] = [
  { name: 'lidocaine', synonyms: ['lignocaine', 'lido'], class: 'amide' },
];

import type { WordRow } from './types.ts';

/** What a note says of who helps with a wound at home, where that is nobody. */
export const helpers: readonly WordRow[] = [
  {
    name: 'none',
    synonyms: [
      'no',
      'nobody',
      'no one',
      'no-one',
      'no helper',
      'no help',
      'alone',
      'lives alone',
      'on their own',
      'self',
      'patient',
      'patient only',
    ],
  },
];

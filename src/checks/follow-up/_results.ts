import type { SourcesDiffer } from '../check.ts';

export const sourcesDiffer: SourcesDiffer = {
  how: 'A published practice tells patients benign results within a day and cancers on the same day; others take longer. The days are those of the practice, or else working days of this tool.',
  settings: ['overdue.telling', 'overdue.cancer'],
};

export const loop = { source: 'closed-loop', mark: 'Q' } as const;

/** From how many days past its limit on an open end is an error. */
export const far = 28;

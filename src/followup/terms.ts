import type { IsoDate } from '../note/values/values.ts';
import type { ClosedDays } from '../practice/closed-days.ts';
import type { Term } from '../reference/follow-up.ts';
import { addDays } from '../note/values/days.ts';
import { addWorkingDays } from './working-days.ts';

/** The last day within a term that begins on a date. */
export const endOf = (
  from: IsoDate,
  { count, unit }: Pick<Term, 'count' | 'unit'>,
  closed: ClosedDays,
): IsoDate => (unit === 'days' ? addDays(from, count) : addWorkingDays(from, count, closed));

/** A term in words: `10 working days`, `1 day`. */
export const termText = ({ count, unit }: Pick<Term, 'count' | 'unit'>): string =>
  `${count} ${count === 1 ? unit.replace(/s$/, '') : unit}`;

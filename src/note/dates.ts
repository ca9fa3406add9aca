import { isValid, parseISO } from 'date-fns';
import type { Reading } from './reading.ts';
import type { Moment } from './values.ts';

/** Reads YYYY-MM-DD, with HH:MM behind it if wanted. */
export function readMoment(text: string): Reading<Moment> {
  const match = /^(\d{4}-\d{2}-\d{2})(?:[ T](\d{1,2}):(\d{2}))?$/.exec(text.trim());
  if (!match || !isValid(parseISO(match[1]!)))
    return { value: undefined, remarks: [{ code: 'quantity/no-such-date' }] };
  const minutes = match[2] === undefined ? undefined : Number(match[2]) * 60 + Number(match[3]);
  return { value: { date: match[1]!, minutes }, remarks: [] };
}

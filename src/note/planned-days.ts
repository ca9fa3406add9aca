import type { Note, Procedure } from './generated/types.ts';
import { dayAfter, wholeInterval } from './values/intervals.ts';
import type { IsoDate } from './values/values.ts';

/** The note with the days that it plans by an interval, `sutures-due: in 1 week`, counted from the visit. */
export function withPlannedDays(note: Note): Note {
  const visit = note.visit?.value?.date;
  const { procedures } = note;
  if (visit === undefined || procedures?.some(isCounted) !== true) return note;
  return { ...note, procedures: procedures.map((one) => (isCounted(one) ? counted(one, visit) : one)) };
}

const isCounted = ({ suturesDue }: Procedure): boolean =>
  suturesDue !== undefined &&
  suturesDue.value === undefined &&
  !suturesDue.pending &&
  wholeInterval(suturesDue.text) !== undefined;

function counted(procedure: Procedure, visit: IsoDate): Procedure {
  const { suturesDue } = procedure;
  const interval = suturesDue && wholeInterval(suturesDue.text);
  if (suturesDue === undefined || interval === undefined) return procedure;
  return { ...procedure, suturesDue: { ...suturesDue, value: dayAfter(interval, visit) } };
}

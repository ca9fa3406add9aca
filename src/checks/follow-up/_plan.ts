import { dutiesOf, type DueKind, type Planned } from '../../followup/schedule.ts';
import { daysBetween } from '../../note/values/days.ts';
import { stateOn } from '../../followup/due.ts';
import type { Report, Severity } from '../../note/tree/finding.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Subject } from '../check.ts';
import { shared } from '../shared.ts';

/** Something that a day finds overdue, with the days that it is late. */
export interface Late {
  readonly item: Planned;
  readonly days: number;
  readonly today: IsoDate;
}

/**
 * What is overdue on the day of a check. Nothing where no day is known, nor where part of the note can't be read:
 * what seems open may be there.
 */
const lateIn = shared((subject: Subject): readonly Late[] => {
  const { note, tables, today, source, siteOf } = subject;
  const late =
    today === undefined ||
    source.damage.length > 0 ||
    note.visit?.value === undefined ||
    note.visit.value.date >= today
      ? []
      : dutiesOf(note, tables, siteOf, today).flatMap((item) =>
          stateOn(item, today) === 'overdue' && !item.unclear
            ? [{ item, days: daysBetween(item.until, today), today }]
            : [],
        );
  return late;
});

/** Whether anything is overdue. */
export const isAnyLate = (subject: Subject): boolean => lateIn(subject).length > 0;

/** What of one kind is overdue. */
export const lateOf = (subject: Subject, kind: DueKind): readonly Late[] =>
  lateIn(subject).filter(({ item }) => item.kind === kind);

/** Whether two items are about one container: its label may be missing, its place in the note is its own. */
export const sameSpecimen = (a: Planned, b: Planned): boolean => a.at.start === b.at.start;

/** What a message calls the specimen or the site. */
export function nameOf({ label, site }: Planned): string {
  if (label !== undefined) return `specimen ${label}`;
  return site === undefined ? 'this specimen' : `the specimen from ${site}`;
}

/** A report on what is overdue: its days, its last day in order, and its words. */
export const lateReport = (
  { item, days }: Late,
  more: { readonly form?: string; readonly args?: Report['args']; readonly severity?: Severity } = {},
): Report => ({
  ...more,
  at: item.at,
  args: {
    name: nameOf(item),
    late: days === 1 ? '1 day' : `${days} days`,
    to: item.until,
    what: item.what ?? '',
    ...more.args,
  },
});

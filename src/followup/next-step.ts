import type { Result } from '../note/generated/types.ts';
import type { Interval } from '../note/values/intervals.ts';
import type { IsoDate } from '../note/values/values.ts';
import { understand } from '../note/words/understood.ts';
import { qualifiersOf } from '../practice/qualifiers.ts';
import type { Tables } from '../practice/tables.ts';
import { dayNotSaid, planned, type Place, type Planned } from './due.ts';
import { arrivalOf, type Loop } from './loops.ts';
import { nextKind } from './next-words.ts';
import { endOf } from './terms.ts';
import { intervalPlanned, recallDay, timeIn } from './times.ts';

/** Whether the words of a next step ask for nothing but to look again. */
function isRecall(next: string, { followUp, qualifiers }: Tables): boolean {
  const { rows, unknown } = understand(followUp.recalls, next, qualifiersOf(qualifiers, 'recalls'));
  return (rows.length > 0 && unknown.length === 0) || nextKind(next) === 'recall';
}

/** The days from which an interval may be counted. */
export interface StepDays {
  readonly visit: IsoDate | undefined;
  /** When the result came. */
  readonly came: IsoDate;
}

/** The day of a visit to look again, counted from the visit; from the result where it would be before that. */
function recallFrom(next: string, { visit = '', came }: StepDays): IsoDate | undefined {
  const day = visit === '' ? undefined : recallDay(next, visit);
  return day === undefined || day <= came ? recallDay(next, came) : day;
}

/** A next step that is planned by an interval: its words in the text, and the day that they mean. */
export interface Counted {
  readonly interval: Interval;
  readonly day: IsoDate;
}

/** What the words of a next step count, from the visit for a visit to look again, and from the result for a step. */
export function countedStep(
  { next, ...result }: Result,
  visit: IsoDate,
  tables: Tables,
): Counted | undefined {
  const text = next?.value;
  if (text === undefined) return undefined;
  const recalled = isRecall(text, tables);
  const interval = intervalPlanned(text, recalled);
  if (interval === undefined || nextKind(text) === 'nothing') return undefined;
  const received = arrivalOf(result);
  const days = { visit, came: received === undefined || received === dayNotSaid ? visit : received };
  const day = recalled ? recallFrom(text, days) : timeIn(text, days.came);
  return day === undefined ? undefined : { interval, day };
}

/** The step that the note plans; undefined for a visit to look again some day, where the result asks for nothing. */
function stepItem(
  { needsPlan, result, which, done, urgent }: Loop,
  next: string,
  since: IsoDate,
  place: Place,
  days: StepDays,
  tables: Tables,
): Planned | undefined {
  const { step, stepUrgent } = tables.followUp.terms;
  const recalled = isRecall(next, tables);
  const day = recalled ? recallFrom(next, days) : timeIn(next, days.came);
  if (recalled && day === undefined && !needsPlan) return undefined;
  const term = urgent ? stepUrgent : step;
  const from = day ?? since;
  const to = endOf(from, term, tables.closedDays);
  return planned(place, {
    kind: 'next step',
    urgent,
    done,
    from,
    to,
    proposed: from,
    until: to,
    begins: days.came,
    what: next,
    which,
    reason: `Planned after the result: ${next}.`,
    source: term.source,
    mark: term.mark,
    at: result.next ?? result.head,
  });
}

/** The step that the note plans, or the plan that a grave diagnosis still wants once the patient knows it. */
export function nextItem(loop: Loop, place: Place, days: StepDays, tables: Tables): Planned | undefined {
  const { next, needsPlan, nothingNext, told, result, done, urgent } = loop;
  const since = told === undefined || told === dayNotSaid ? days.came : told;
  const { plan, planUrgent } = tables.followUp.terms;
  if (next !== undefined) return stepItem(loop, next, since, place, days, tables);
  if (nothingNext || !needsPlan || told === undefined) return undefined;
  const term = urgent ? planUrgent : plan;
  const to = endOf(since, term, tables.closedDays);
  return planned(place, {
    kind: 'next step',
    urgent,
    done,
    from: since,
    to,
    proposed: since,
    until: to,
    begins: since,
    what: 'plan what happens next',
    which: loop.which,
    unplanned: true,
    reason: 'This diagnosis asks for a plan, and the note has none.',
    source: term.source,
    mark: term.mark,
    at: result.diagnosis ?? result.head,
  });
}

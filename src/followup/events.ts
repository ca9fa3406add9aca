import type { Event, Note } from '../note/generated/types.ts';
import { plainWord } from '../note/words/word-table.ts';
import type { IsoDate } from '../note/values/values.ts';
import type { Tables } from '../practice/tables.ts';
import { addDays } from '../note/values/days.ts';
import { dayNotSaid, planned, type Place, type Planned, type Undated } from './due.ts';
import { endOf, termText } from './terms.ts';
import { timeIn } from './times.ts';
import { nextOpenDay } from './working-days.ts';
import { rowsIn } from '../note/words/understood.ts';

/** An event with its row in the table of events and its day. */
export interface Happened {
  readonly event: Event;
  /** Name of its kind in the table; undefined for a word that is not known. */
  readonly kind: string | undefined;
  readonly on: IsoDate | undefined;
  /** What it concerns, in plain form; empty where the note does not say. */
  readonly concerns: string;
}

/** The events of a note by day; those of one day, and those without one, in the order of the note. */
export function eventsOf({ events }: Note, tables: Tables): readonly Happened[] {
  if (events === undefined) return [];
  return events
    .map((event) => ({
      event,
      kind: rowsIn(tables.events, event.kind)[0]?.name,
      on: event.on?.value?.date,
      concerns: plainWord(event.procedure?.value ?? ''),
    }))
    .sort((a, b) => compare(a.on ?? '', b.on ?? ''));
}

const compare = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1);

const stillOpen =
  /^(?:ongoing|continuing|pending|open|not yet|unknown|unclear|to be seen|awaiting|awaited|tbd|waiting|see next|n\/a)\b/i;

/** Whether words about how something ended say that it did. */
export const saysEnded = (words: string): boolean => words.trim() !== '' && !stillOpen.test(words.trim());

/** Whether the note says how an event ended. */
const hasOutcome = ({ outcome }: Event): boolean => outcome?.value !== undefined && saysEnded(outcome.value);

const returning =
  /\b(?:returns?|returning|recheck|re-check|check|review|see again|seen again|come back|comes back|follow[- ]?up|appointment|revisit|visit|look again)\b/i;
const asNeeded = /\b(?:if|as needed|prn|when needed|only when|unless)\b/i;

interface Later {
  /** The next later event that mentions an outcome, by what it concerns. */
  readonly ended: ReadonlyMap<string, IsoDate>;
  /** The same, whatever it concerns. */
  readonly anyEnded: IsoDate | undefined;
}

/** What falls due after events: that they come to an end, and the visits for which the patient is to come back. */
export function eventItems(
  happened: readonly Happened[],
  placeOf: (concerns: string) => Place,
  tables: Tables,
): { readonly planned: readonly Planned[]; readonly undated: readonly Undated[] } {
  const planned: Planned[] = [];
  const undated: Undated[] = [];
  const ended = new Map<string, IsoDate>();
  let anyEnded: IsoDate | undefined;
  for (let at = happened.length - 1; at >= 0; at--) {
    const one = happened[at]!;
    const place = placeOf(one.concerns);
    const outcome = outcomeItem(one, place, { ended, anyEnded }, tables);
    if (outcome !== undefined) {
      if ('why' in outcome) undated.push(outcome);
      else planned.push(outcome);
    }
    const visit = returnItem(one, at, happened, place, tables);
    if (visit !== undefined) planned.push(visit);
    if (one.on !== undefined && hasOutcome(one.event)) {
      ended.set(one.concerns, one.on);
      anyEnded = one.on;
    }
  }
  return { planned: planned.reverse(), undated: undated.reverse() };
}

function outcomeItem(
  { event, kind, on, concerns }: Happened,
  place: Place,
  later: Later,
  { followUp, closedDays }: Tables,
): Planned | Undated | undefined {
  const term = kind === undefined ? undefined : followUp.eventTerms.get(kind);
  if (kind === undefined || term === undefined) return undefined;
  const own = hasOutcome(event);
  if (on === undefined)
    return own
      ? undefined
      : { ...place, kind: 'event outcome', why: `no day is known of: ${kind}`, at: event.head };
  const to = endOf(on, term, closedDays);
  const elsewhere = concerns === '' ? later.anyEnded : (later.ended.get(concerns) ?? later.ended.get(''));
  return planned(place, {
    kind: 'event outcome',
    from: on,
    to,
    proposed: nextOpenDay(addDays(on, 1), closedDays),
    until: to,
    begins: on,
    done: own ? dayNotSaid : elsewhere,
    what: kind,
    which: `${kind} ${on}`,
    reason: `After ${kind} on ${on} the note says within ${termText(term)} how it ended.`,
    source: 'format',
    mark: 'format',
    at: event.kind ?? event.head,
  });
}

/** How many days before the planned one a visit still counts as the one that was planned. */
const early = 3;

function returnItem(
  { event, on }: Happened,
  at: number,
  happened: readonly Happened[],
  place: Place,
  { followUp, closedDays }: Tables,
): Planned | undefined {
  if (on === undefined) return undefined;
  const leaf = [event.outcome, event.action, event.signs].find(
    (one) => one?.value !== undefined && returning.test(one.value) && !asNeeded.test(one.value),
  );
  const day = leaf?.value === undefined ? undefined : timeIn(leaf.value, on);
  if (leaf?.value === undefined || day === undefined || day <= on) return undefined;
  const term = followUp.terms.return;
  const until = endOf(day, term, closedDays);
  return planned(place, {
    kind: 'return visit',
    from: day,
    to: day,
    proposed: day,
    until,
    begins: on,
    done: firstFrom(happened, at + 1, addDays(day, -early)),
    what: leaf.value,
    which: on,
    reason: `Planned on ${on}: ${leaf.value}.`,
    source: term.source,
    mark: term.mark,
    at: leaf,
  });
}

/** The day of the first event from an index on that is on or after a date. */
function firstFrom(happened: readonly Happened[], from: number, date: IsoDate): IsoDate | undefined {
  let [low, high] = [from, happened.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((happened[middle]!.on ?? '') < date) low = middle + 1;
    else high = middle;
  }
  return happened[low]?.on;
}

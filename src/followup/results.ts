import type { Note, Specimen } from '../note/generated/types.ts';
import { rowsIn } from '../note/words/understood.ts';
import { daysBetween } from '../note/values/days.ts';
import type { IsoDate } from '../note/values/values.ts';
import { usualOverdue, type Overdue } from '../practice/settings.ts';
import type { Tables } from '../practice/tables.ts';
import type { Term } from '../reference/follow-up.ts';
import type { Sourced } from '../reference/types.ts';
import { dayNotSaid, isUnclear, planned, type Day, type Place, type Planned, type Undated } from './due.ts';
import { loopsOf, type Loop } from './loops.ts';
import { nextItem } from './next-step.ts';
import { endOf, termText } from './terms.ts';

/** A list of what falls due for one specimen. */
export interface Falling {
  readonly planned: Planned[];
  readonly undated: Undated[];
}

/** A day by which as many results have to be there as limits are up to it. */
interface Limit extends Sourced {
  readonly term: Pick<Term, 'count' | 'unit'>;
  readonly test: string;
}

/** The limits of the tests that are asked for, each once: ordinary ones, and the slow cultures on their own. */
function limitsOf(specimen: Specimen, { tests, followUp, overdue }: Tables): readonly Limit[] {
  const slow = new Map<keyof Overdue, Limit>();
  let ordinary = false;
  for (const { name } of (specimen.tests ?? []).flatMap((leaf) => rowsIn(tests, leaf))) {
    const key = followUp.slowTests.get(name);
    if (key === undefined) ordinary = true;
    else {
      const term = { count: overdue[key], unit: 'days' } as const;
      slow.set(key, { term, test: name, source: 'format', mark: 'format' });
    }
  }
  // The leaflets are no source for another term that a practice chose.
  const origin: Sourced =
    overdue.result === usualOverdue.result
      ? { source: 'result-leaflets', mark: 'Q' }
      : { source: 'practice-file', mark: 'format' };
  const usual: Limit = {
    term: { count: overdue.result, unit: 'working days' },
    test: 'the result',
    ...origin,
  };
  const slowest = [...slow.values()].sort((a, b) => a.term.count - b.term.count);
  return ordinary || slow.size === 0 ? [usual, ...slowest] : slowest;
}

/** Which of the things that fall due are wanted, by the day on which they were done. */
type Wanted = (done: Day | undefined) => boolean;

/**
 * What falls due for a specimen: that it leaves, that its results come, are told, and lead to what they should.
 * @param unlessDoneBy what was done by this day is left out; nothing is where it is absent
 */
export function specimenItems(
  note: Note,
  specimen: Specimen,
  place: Place,
  tables: Tables,
  unlessDoneBy?: IsoDate,
): Falling {
  const falling: Falling = { planned: [], undated: [] };
  if (specimen.notSent !== undefined && !specimen.notSent.pending) return falling;
  const wanted: Wanted = (done) => unlessDoneBy === undefined || done === undefined || done > unlessDoneBy;
  const visit = note.visit?.value?.date;
  const loops = loopsOf(specimen, tables, note);
  const base = specimen.sent?.value ?? visit;
  const { planned, undated } = falling;
  if (base !== undefined) addUntilResults(planned, specimen, place, visit ?? base, loops, wanted, tables);
  else if (loops.length === 0)
    undated.push({ ...place, kind: 'result', why: 'the note has no day of the visit', at: specimen.head });
  const otherwise = base ?? '0001-01-01';
  for (const loop of loops) addAfterResult(planned, loop, place, { visit, otherwise }, wanted, tables);
  return falling;
}

/** That a specimen leaves, and its results come. */
function addUntilResults(
  items: Planned[],
  specimen: Specimen,
  place: Place,
  visit: IsoDate,
  loops: readonly Loop[],
  wanted: Wanted,
  tables: Tables,
): void {
  const arrived = loops.map(({ received }) => received).sort();
  const sent = specimen.sent?.value;
  const left = sent ?? arrived[0];
  if (wanted(left)) items.push(sendingItem(specimen, place, visit, left, tables));
  const base = sent ?? visit;
  const limits = limitsOf(specimen, tables);
  const reported = areCultures(specimen, tables) ? arrived : [];
  for (const [index, limit] of limits.entries()) {
    const earlier = limits.slice(0, index).map(({ term }) => endOf(base, term, tables.closedDays));
    const done = arrived[index] ?? reported.find((day) => reportsAll(day, earlier, base, limit));
    if (wanted(done)) items.push(resultItem(specimen, place, base, limit, done, tables));
  }
}

/** Whether nothing is asked of a specimen but cultures, which a laboratory reports in one paper when the slowest is done. */
const areCultures = ({ tests = [] }: Specimen, tables: Tables): boolean =>
  tests.every((leaf) => rowsIn(tables.tests, leaf).every(({ name }) => name.endsWith('culture')));

/** Whether a report of cultures came so late that it is that of a slow one too: the faster ones were due before. */
const reportsAll = (day: Day, earlier: readonly IsoDate[], base: IsoDate, { term }: Limit): boolean =>
  day !== dayNotSaid &&
  term.unit === 'days' &&
  earlier.every((end) => end < day) &&
  daysBetween(base, day) * 2 >= term.count;

/** That the patient hears a result, and what follows from it. */
function addAfterResult(
  items: Planned[],
  loop: Loop,
  place: Place,
  { visit, otherwise }: { readonly visit: IsoDate | undefined; readonly otherwise: IsoDate },
  wanted: Wanted,
  tables: Tables,
): void {
  const came = loop.received === dayNotSaid ? otherwise : loop.received;
  if (wanted(loop.told)) items.push(tellingItem(loop, place, came, tables));
  const next = wanted(loop.done) ? nextItem(loop, place, { visit, came }, tables) : undefined;
  if (next !== undefined) items.push(next);
}

function sendingItem(
  { sent, head }: Specimen,
  place: Place,
  visit: IsoDate,
  done: Day | undefined,
  { followUp, closedDays }: Tables,
): Planned {
  const term = followUp.terms.sending;
  const to = endOf(visit, term, closedDays);
  return planned(place, {
    kind: 'specimen to send',
    from: visit,
    to,
    proposed: visit,
    until: to,
    done,
    unclear: isUnclear(sent),
    reason: 'Tissue was taken; the note says when it left.',
    source: term.source,
    mark: term.mark,
    at: sent ?? head,
  });
}

function resultItem(
  specimen: Specimen,
  place: Place,
  base: IsoDate,
  { term, test, source, mark }: Limit,
  done: Day | undefined,
  { closedDays, followUp }: Tables,
): Planned {
  const to = endOf(base, term, closedDays);
  const usually = term.unit === 'days' ? to : endOf(base, followUp.terms.expected, closedDays);
  return planned(place, {
    kind: 'result',
    from: usually < to ? usually : to,
    to,
    proposed: to,
    until: to,
    done,
    unclear: specimen.results?.some(({ received }) => isUnclear(received)) ?? false,
    what: test === 'the result' ? undefined : test,
    which: test,
    reason: `${test === 'the result' ? 'The result' : `The ${test}`} is overdue ${termText(term)} after ${base}.`,
    source,
    mark,
    at: specimen.sent ?? specimen.head,
  });
}

function tellingItem(loop: Loop, place: Place, came: IsoDate, tables: Tables): Planned {
  const { urgent, unsure, result, received, takenBack } = loop;
  const told = result.told?.filter((one) => !takenBack.includes(one)) ?? [];
  const mistake = takenBack.length === 0 ? '' : ' It was marked told by mistake, as an addendum says.';
  const term = tellingTerm(urgent, tables);
  const to = endOf(came, term, tables.closedDays);
  const { begins, said } =
    received === dayNotSaid
      ? { begins: undefined, said: 'a day that the note does not say' }
      : { begins: came, said: came };
  return planned(place, {
    kind: 'telling the patient',
    from: came,
    to,
    proposed: came,
    until: to,
    begins,
    urgent,
    done: loop.told,
    unclear: unsure.length > 0 || told.some(({ on }) => isUnclear(on)),
    what: triesText(loop, tables),
    which: loop.which,
    reason: `The result came on ${said}; the patient hears it within ${termText(term)}${urgent ? ', since this diagnosis cannot wait' : ''}.${mistake}`,
    source: term.source,
    mark: term.mark,
    at: told[0] ?? result.attempts?.[0] ?? result.received ?? result.head,
  });
}

function tellingTerm(urgent: boolean, { followUp, overdue }: Tables): Term {
  const own = urgent ? overdue.cancer : overdue.telling;
  if (own !== undefined) return { count: own, unit: 'working days', source: 'practice-file', mark: 'format' };
  return urgent ? followUp.terms.tellingUrgent : followUp.terms.telling;
}

/** What was tried, in the words of a list; undefined where nothing was. */
function triesText({ tried, unsure }: Loop, { overdue }: Tables): string | undefined {
  const days = tried.flatMap(({ on }) => on?.value ?? []).sort();
  const last = days.at(-1);
  const doubt = unsure.at(-1)?.how?.value;
  const parts = [
    ...(tried.length === 0
      ? []
      : [`tried ${times(tried.length)}${last === undefined ? '' : `, last on ${last}`}`]),
    ...(tried.length < overdue.attempts ? [] : ['send a letter']),
    ...(doubt === undefined ? [] : [`“${doubt}” does not say that the patient heard it`]),
  ];
  return parts.length === 0 ? undefined : parts.join('; ');
}

const times = (count: number): string => (count === 1 ? 'once' : `${count} times`);

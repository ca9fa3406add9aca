import { readDate } from '../note/values/dates.ts';
import type { Attempt, Result, Specimen, Told } from '../note/generated/types.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import { rowsIn, understand } from '../note/words/understood.ts';
import { daysBetween } from '../note/values/days.ts';
import type { IsoDate } from '../note/values/values.ts';
import { qualifiersOf } from '../practice/qualifiers.ts';
import type { Overdue } from '../practice/settings.ts';
import type { Tables } from '../practice/tables.ts';
import type { Term } from '../reference/follow-up.ts';
import type { Sourced } from '../reference/types.ts';
import { dayNotSaid, isUnclear, planned, type Day, type Place, type Planned, type Undated } from './due.ts';
import { nextKind } from './next-words.ts';
import { asksOf } from './report.ts';
import { tellingsOf } from './telling.ts';
import { endOf, termText } from './terms.ts';
import { recallDay, timeIn } from './times.ts';

/** What became of one result. */
export interface Loop {
  readonly result: Result;
  readonly received: Day;
  /** Whether the diagnosis can't wait. */
  readonly urgent: boolean;
  /** Whether the diagnosis asks for a plan. */
  readonly needsPlan: boolean;
  /** The first time that the patient heard it. */
  readonly told: Day | undefined;
  /** Times that somebody tried without reaching the patient, or told somebody else. */
  readonly tried: readonly (Told | Attempt)[];
  /** Times of which the words do not say whether the patient heard it, where the result asks for a step. */
  readonly unsure: readonly Told[];
  /** What is to be done next, in the words of the note; undefined where nothing is, or nobody said. */
  readonly next: string | undefined;
  /** Whether the note says that nothing is to be done. */
  readonly nothingNext: boolean;
  readonly done: Day | undefined;
}

/** A list of what falls due for one specimen. */
export interface Falling {
  readonly planned: Planned[];
  readonly undated: Undated[];
}

/** Whether the words about the next step say that there is none. */
export const saysNothing = (next: string): boolean => nextKind(next) === 'nothing';

const notDone = /^(?:no|not|n|false|pending|open|planned|not yet)\b/i;

/** What became of each result that came, in the order of the note. A result without a word in it has not come. */
export function loopsOf(specimen: Specimen, tables: Tables): readonly Loop[] {
  const loops: Loop[] = [];
  for (const result of specimen.results ?? []) {
    const received = arrivalOf(result);
    if (received !== undefined) loops.push(loopOf(result, received, tables));
  }
  return loops;
}

function loopOf(result: Result, received: Day, tables: Tables): Loop {
  const { diagnosis, next, done } = result;
  const findings = asksOf(diagnosis?.value ?? '', tables);
  const nothingNext = next?.value !== undefined && saysNothing(next.value);
  const { heard, tried, unsure } = tellingsOf(result, findings.length > 0, tables);
  return {
    result,
    received,
    urgent: findings.some(({ urgent }) => urgent),
    needsPlan: findings.length > 0,
    told: earliest(heard),
    tried,
    unsure,
    next: nothingNext ? undefined : next?.value?.trim(),
    nothingNext,
    done: doneOn(done),
  };
}

/** A result without a day of receipt has come where it says what was found. */
function arrivalOf({ received, diagnosis }: Result): Day | undefined {
  if (received?.value !== undefined) return received.value;
  return diagnosis?.value === undefined ? undefined : dayNotSaid;
}

/** Any word that does not deny it says that a step was done; a date in it says when. */
function doneOn(done: Leaf<string> | undefined): Day | undefined {
  const text = done?.value?.trim();
  if (text === undefined || text === '' || notDone.test(text)) return undefined;
  const date = /\d{4}-\d{2}-\d{2}/.exec(text)?.[0];
  return (date === undefined ? undefined : readDate(date).value) ?? dayNotSaid;
}

/** The earliest day. */
export const earliest = (days: readonly Day[]): Day | undefined =>
  days.length < 2 ? days[0] : [...days].sort()[0];

/** A day by which as many results have to be there as limits lie up to it. */
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
  const usual: Limit = {
    term: { count: overdue.result, unit: 'working days' },
    test: 'the result',
    source: 'result-leaflets',
    mark: 'Q',
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
  specimen: Specimen,
  place: Place,
  visit: IsoDate | undefined,
  tables: Tables,
  unlessDoneBy?: IsoDate,
): Falling {
  const falling: Falling = { planned: [], undated: [] };
  if (specimen.notSent !== undefined && !specimen.notSent.pending) return falling;
  const wanted: Wanted = (done) => unlessDoneBy === undefined || done === undefined || done > unlessDoneBy;
  const loops = loopsOf(specimen, tables);
  const base = specimen.sent?.value ?? visit;
  const { planned, undated } = falling;
  if (base !== undefined) addUntilResults(planned, specimen, place, visit ?? base, loops, wanted, tables);
  else if (loops.length === 0)
    undated.push({ ...place, kind: 'result', why: 'the note has no day of the visit', at: specimen.head });
  for (const loop of loops) addAfterResult(planned, loop, place, base ?? '0001-01-01', wanted, tables);
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
  otherwise: IsoDate,
  wanted: Wanted,
  tables: Tables,
): void {
  const came = loop.received === dayNotSaid ? otherwise : loop.received;
  if (wanted(loop.told)) items.push(tellingItem(loop, place, came, tables));
  const next = wanted(loop.done) ? nextItem(loop, place, came, tables) : undefined;
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
  const { urgent, unsure, result, received } = loop;
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
    unclear: unsure.length > 0 || (result.told?.some(({ on }) => isUnclear(on)) ?? false),
    what: triesText(loop, tables),
    which: received,
    reason: `The result came on ${said}; the patient hears it within ${termText(term)}${urgent ? ', since this diagnosis cannot wait' : ''}.`,
    source: term.source,
    mark: term.mark,
    at: result.told?.[0] ?? result.attempts?.[0] ?? result.received ?? result.head,
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

/** Whether the words of a next step ask for nothing but to look again. */
function isRecall(next: string, { followUp, qualifiers }: Tables): boolean {
  const { rows, unknown } = understand(followUp.recalls, next, qualifiersOf(qualifiers, 'recalls'));
  return (rows.length > 0 && unknown.length === 0) || nextKind(next) === 'recall';
}

/** The step that the note plans; undefined for a visit to look again some day, where the result asks for nothing. */
function stepItem(
  { needsPlan, result, received, done, urgent }: Loop,
  next: string,
  since: IsoDate,
  place: Place,
  came: IsoDate,
  tables: Tables,
): Planned | undefined {
  const { step, stepUrgent } = tables.followUp.terms;
  const recalled = isRecall(next, tables);
  const day = recalled ? recallDay(next, came) : timeIn(next, came);
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
    begins: came,
    what: next,
    which: received,
    reason: `Planned after the result: ${next}.`,
    source: term.source,
    mark: term.mark,
    at: result.next ?? result.head,
  });
}

/** The step that the note plans, or the plan that a grave diagnosis still wants once the patient knows it. */
function nextItem(loop: Loop, place: Place, came: IsoDate, tables: Tables): Planned | undefined {
  const { next, needsPlan, nothingNext, told, result, done, urgent } = loop;
  const since = told === undefined || told === dayNotSaid ? came : told;
  const { plan, planUrgent } = tables.followUp.terms;
  if (next !== undefined) return stepItem(loop, next, since, place, came, tables);
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
    which: loop.received,
    unplanned: true,
    reason: 'This diagnosis asks for a plan, and the note has none.',
    source: term.source,
    mark: term.mark,
    at: result.diagnosis ?? result.head,
  });
}

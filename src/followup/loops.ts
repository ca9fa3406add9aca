import { readDate } from '../note/values/dates.ts';
import type { Attempt, Note, Result, Specimen, Told } from '../note/generated/types.ts';
import { once } from '../note/text/once.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import type { Tables } from '../practice/tables.ts';
import { dayNotSaid, type Day } from './due.ts';
import { nextKind } from './next-words.ts';
import { asksOf } from './report.ts';
import { takenBack } from './taken-back.ts';
import { tellingsOf } from './telling.ts';

/** What became of one result. */
export interface Loop {
  readonly result: Result;
  readonly received: Day;
  /** Which of the specimen's results it is: the day on which it came, with a number from the second of a day on. */
  readonly which: string;
  /** Whether the diagnosis can't wait. */
  readonly urgent: boolean;
  /** Whether the diagnosis asks for a plan. */
  readonly needsPlan: boolean;
  /** The first time that the patient heard it. */
  readonly told: Day | undefined;
  /** Times that were marked told by mistake, as an addendum says. */
  readonly takenBack: readonly Told[];
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

/** Whether the words about the next step say that there is none. */
export const saysNothing = (next: string): boolean => nextKind(next) === 'nothing';

const notDone = /^(?:no|not|n|false|pending|open|planned|not yet)\b/i;

/** What became of each result that came, in the order of the note. A result without a word in it has not come. */
export function loopsOf(specimen: Specimen, tables: Tables, note: Note): readonly Loop[] {
  const known = readings(tables);
  let loops = known.get(specimen);
  if (loops === undefined) known.set(specimen, (loops = readLoops(specimen, tables, note)));
  return loops;
}

/** Several checks and documents ask for the loops of one specimen, which belongs to one note. */
const readings = once<Tables, WeakMap<Specimen, readonly Loop[]>>(() => new WeakMap());

function readLoops(specimen: Specimen, tables: Tables, note: Note): readonly Loop[] {
  const loops: Loop[] = [];
  for (const result of specimen.results ?? []) {
    const received = arrivalOf(result);
    if (received === undefined) continue;
    const sameDay = loops.filter((one) => one.received === received).length;
    const which = sameDay === 0 ? received : `${received} ${sameDay + 1}`;
    loops.push({ ...loopOf(result, received, tables, note), which });
  }
  return loops;
}

function loopOf(result: Result, received: Day, tables: Tables, note: Note): Omit<Loop, 'which'> {
  const { diagnosis, next, done } = result;
  const findings = asksOf(diagnosis?.value ?? '', tables);
  const nothingNext = next?.value !== undefined && saysNothing(next.value);
  const back = takenBack(note);
  const told = result.told?.filter((one) => !back.has(one)) ?? [];
  const { heard, tried, unsure } = tellingsOf({ ...result, told }, findings.length > 0, tables);
  return {
    result,
    received,
    urgent: findings.some(({ urgent }) => urgent),
    needsPlan: findings.length > 0,
    told: earliest(heard),
    takenBack: (result.told ?? []).filter((one) => back.has(one)),
    tried,
    unsure,
    next: nothingNext ? undefined : next?.value?.trim(),
    nothingNext,
    done: doneOn(done),
  };
}

/** A result without a day of receipt has come where it says what was found. */
export function arrivalOf({ received, diagnosis }: Result): Day | undefined {
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

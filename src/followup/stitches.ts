import type { Event, Note, Procedure, SuturesOut } from '../note/generated/types.ts';
import type { SiteReading } from '../note/words/site.ts';
import type { Range } from '../note/tree/tree.ts';
import type { IsoDate } from '../note/values/values.ts';
import type { Tables } from '../practice/tables.ts';
import { dayNotSaid, isUnclear, planned, type Day, type Place, type Planned, type Undated } from './due.ts';
import type { Happened } from './events.ts';
import { earliest } from './loops.ts';
import {
  removableStitches,
  sutureDay,
  sutureRemoval,
  windowWord,
  type SutureRemoval,
  type SutureWindow,
} from './sutures.ts';

/** When the stitches of a procedure come out; undefined where none have to, or a finding asks about the closure. */
export function stitchesItem(
  note: Note,
  procedure: Procedure,
  place: Place,
  happened: readonly Happened[],
  reading: SiteReading | undefined,
  tables: Tables,
): Planned | Undated | undefined {
  const removal = sutureRemoval(note, procedure, reading, tables);
  if (removal.kind === 'none') return undefined;
  const wanted = procedure.suturesDue?.value;
  const at = placeOf(procedure);
  const unclear = procedure.suturesOut?.some(({ on }) => isUnclear(on)) ?? false;
  const left = stitchesLeft(procedure, tables);
  const done = removedOn(procedure, place, happened, note.procedures?.length === 1, left);
  if (removal.kind === 'window')
    return planned(place, {
      ...inWindow(removal, wanted, left, tables),
      kind: 'suture removal',
      done,
      unclear,
      at,
    });
  if (wanted !== undefined)
    return planned(place, { ...asPlanned(wanted), what: left, kind: 'suture removal', done, unclear, at });
  if (done !== undefined || (removal.why === 'closure' && !isSewnToStop(procedure))) return undefined;
  return noWindow(removal, place, at);
}

/** Whether stitches are only named for the bleeding, so that no check asks about the closure. */
const isSewnToStop = ({ closure }: Procedure): boolean => closure === undefined;

/** How many of the stitches are still in, where fewer came out than were put in: `2 of 5 stitches still in`. */
export function stitchesLeft(procedure: Procedure, tables: Tables): string | undefined {
  const counts = (procedure.suturesOut ?? []).map(({ count }) => count?.value);
  const all = removableStitches(procedure, tables);
  if (counts.length === 0 || counts.includes(undefined) || all === undefined) return undefined;
  const out = counts.reduce<number>((sum, count) => sum + (count ?? 0), 0);
  if (out >= all) return undefined;
  return `${all - out} of ${all} stitches still in`;
}

type When = Pick<
  Planned,
  'from' | 'to' | 'proposed' | 'until' | 'fixed' | 'source' | 'mark' | 'steps' | 'reason' | 'what'
>;

function inWindow(
  { from, to, source, mark, steps, reason, kindOfDays }: SutureWindow,
  wanted: IsoDate | undefined,
  left: string | undefined,
  { closedDays }: Tables,
): When {
  const proposed = wanted ?? sutureDay({ from, to }, closedDays).day;
  const named = kindOfDays === 'usual' ? undefined : windowWord[kindOfDays];
  const what = [named, left].filter((part) => part !== undefined).join('; ');
  return {
    ...{ from, to, proposed, until: to, fixed: wanted !== undefined, source, mark, steps, reason },
    what: what === '' ? undefined : what,
  };
}

const asPlanned = (wanted: IsoDate): When => ({
  ...{ from: wanted, to: wanted, proposed: wanted, until: wanted, fixed: true, what: undefined },
  ...{ source: 'format', mark: 'format', steps: [] },
  reason: 'Planned in the note; no window is known for this site.',
});

const placeOf = ({ suturesDue, closure, head }: Procedure): Range => suturesDue ?? closure?.[0]?.head ?? head;

const unknownBecause: Readonly<Record<Extract<SutureRemoval, { kind: 'unknown' }>['why'], string>> = {
  closure: 'a suture stopped the bleeding, and the note says nothing of the closure',
  visit: 'the note has no day of the visit',
  site: 'no window is known for this site',
  'no source': 'no window is known for this site',
};

function noWindow({ why }: Extract<SutureRemoval, { kind: 'unknown' }>, place: Place, at: Range): Undated {
  return { ...place, kind: 'suture removal', why: unknownBecause[why], at };
}

const partial =
  /\b(?:partial(?:ly)?|every other|every second|alternate|half|some of|remaining|rest (?:stays?|left|in))\b/i;

/** Whether an event says that only some of the stitches came out. */
const isPartial = ({ action, outcome, signs }: Event): boolean =>
  [action, outcome, signs].some((leaf) => partial.test(leaf?.value ?? ''));

/** The last of the days on which stitches came out; undefined where one of them can't be read. */
function lastDay(outs: readonly SuturesOut[]): Day | undefined {
  if (outs.some(({ on }) => on !== undefined && on.value === undefined)) return undefined;
  return outs
    .map(({ on }) => on?.value ?? dayNotSaid)
    .sort()
    .at(-1);
}

/** When the stitches came out: as the procedure says, or an event that can only mean them. */
function removedOn(
  { suturesOut }: Procedure,
  { procedure = 0 }: Place,
  happened: readonly Happened[],
  only: boolean,
  left: string | undefined,
): Day | undefined {
  if (left !== undefined) return undefined;
  // A word that is no date may well say that they are still in.
  if (suturesOut !== undefined && suturesOut.length > 0) return lastDay(suturesOut);
  const number = String(procedure + 1);
  return earliest(
    happened.flatMap(({ event, kind, concerns, on }) =>
      kind === 'suture removal' &&
      !isPartial(event) &&
      (only || concerns === number || concerns === `procedure ${number}`)
        ? [on ?? dayNotSaid]
        : [],
    ),
  );
}

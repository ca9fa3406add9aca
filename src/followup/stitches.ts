import type { Note, Procedure } from '../note/generated/types.ts';
import type { SiteReading } from '../note/words/site.ts';
import type { Range } from '../note/tree/tree.ts';
import type { IsoDate } from '../note/values/values.ts';
import type { Tables } from '../practice/tables.ts';
import { dayNotSaid, isUnclear, planned, type Day, type Place, type Planned, type Undated } from './due.ts';
import type { Happened } from './events.ts';
import { earliest } from './results.ts';
import { sutureDay, sutureRemoval, type SutureRemoval, type SutureWindow } from './sutures.ts';

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
  const unclear = isUnclear(procedure.suturesOut?.on);
  const done = removedOn(procedure, place, happened, note.procedures?.length === 1);
  if (removal.kind === 'window')
    return planned(place, {
      ...inWindow(removal, wanted, tables),
      kind: 'suture removal',
      done,
      unclear,
      at,
    });
  if (wanted !== undefined)
    return planned(place, { ...asPlanned(wanted), kind: 'suture removal', done, unclear, at });
  return removal.why === 'closure' || done !== undefined ? undefined : noWindow(removal, place, at);
}

type When = Pick<Planned, 'from' | 'to' | 'proposed' | 'until' | 'source' | 'mark' | 'steps' | 'reason'>;

function inWindow(
  { from, to, source, mark, steps }: SutureWindow,
  wanted: IsoDate | undefined,
  { closedDays }: Tables,
): When {
  const proposed = wanted ?? sutureDay({ from, to }, closedDays).day;
  const until = proposed > to ? proposed : to;
  return { from, to, proposed, until, source, mark, steps, reason: `${steps[0]!.text}.` };
}

const asPlanned = (wanted: IsoDate): When => ({
  ...{ from: wanted, to: wanted, proposed: wanted, until: wanted },
  ...{ source: 'format', mark: 'format', steps: [] },
  reason: 'Planned in the note; no window is known for this site.',
});

const placeOf = ({ suturesDue, closure, head }: Procedure): Range => suturesDue ?? closure?.[0]?.head ?? head;

function noWindow({ why }: Extract<SutureRemoval, { kind: 'unknown' }>, place: Place, at: Range): Undated {
  const reason = why === 'visit' ? 'the note has no day of the visit' : 'no window is known for this site';
  return { ...place, kind: 'suture removal', why: reason, at };
}

/** When the stitches came out: as the procedure says, or an event that can only mean them. */
function removedOn(
  { suturesOut }: Procedure,
  { procedure = 0 }: Place,
  happened: readonly Happened[],
  only: boolean,
): Day | undefined {
  // A word that is no date may well say that they are still in.
  if (suturesOut !== undefined) return suturesOut.on === undefined ? dayNotSaid : suturesOut.on.value;
  const number = String(procedure + 1);
  return earliest(
    happened.flatMap(({ kind, concerns, on }) =>
      kind === 'suture removal' && (only || concerns === number || concerns === `procedure ${number}`)
        ? [on ?? dayNotSaid]
        : [],
    ),
  );
}

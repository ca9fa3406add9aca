import type { Leaf } from '../note/tree/leaf.ts';
import type { Range } from '../note/tree/tree.ts';
import type { IsoDate } from '../note/values/values.ts';
import type { Sourced } from '../reference/types.ts';
import type { WindowStep } from './sutures.ts';

/** Stands for a day where the note says that something was done, and not when: earlier than every date. */
export const dayNotSaid = '';

/** A date, or `dayNotSaid`. */
export type Day = IsoDate;

export type DueKind =
  | 'dressing change'
  | 'washing'
  | 'suture removal'
  | 'specimen to send'
  | 'result'
  | 'telling the patient'
  | 'next step'
  | 'event outcome'
  | 'return visit'
  | 'scar check';

export type DueState = 'later' | 'due' | 'overdue' | 'done';

/** What a thing that falls due belongs to. */
export interface Place {
  /** Index of the procedure, from 0; undefined for what concerns the whole visit. */
  readonly procedure: number | undefined;
  /** As the note has it. */
  readonly site: string | undefined;
  /** Label of the specimen. */
  readonly label: string | undefined;
}

/** Something that falls due, as far as the note alone tells it; its state depends on the day. */
export interface Planned extends Place, Sourced {
  readonly kind: DueKind;
  /** First and last day on which it is in order. */
  readonly from: IsoDate;
  readonly to: IsoDate;
  /** The day on which it is best done: planned in the note, or else the first working day in time. */
  readonly proposed: IsoDate;
  /** Whether the note plans the proposed day. */
  readonly fixed: boolean;
  /** The last day before it is overdue: `to`, or a later day that some grace allows. */
  readonly until: IsoDate;
  /** The day from which it is known at all, such as that of the result that is to be told; undefined from the visit on. */
  readonly begins: IsoDate | undefined;
  readonly done: Day | undefined;
  /** Set for what cannot wait. */
  readonly urgent: boolean;
  /** Done by the patient at home: nobody writes down that it was, so it is over when its time is. */
  readonly atHome: boolean;
  /** Set where the step itself still has to be decided on. */
  readonly unplanned: boolean;
  /** Set where a word of the note about it can't be read, which is a fault of its own. */
  readonly unclear: boolean;
  /** What in particular, in the words of the note: the next step, how often it was tried. */
  readonly what: string | undefined;
  /**
   * What tells it from others of its kind and place, and stays the same while they move on: which test, which result,
   * which event. Undefined where there is only one.
   */
  readonly which: string | undefined;
  /** Why then, in a sentence. */
  readonly reason: string;
  readonly steps: readonly WindowStep[];
  /** The part of the note that it comes from. */
  readonly at: Range;
}

type Needed = 'kind' | 'from' | 'to' | 'proposed' | 'until' | 'reason' | 'source' | 'mark' | 'at';

/** What has to be said of an item that falls due; the rest is as usual where it is not said. */
export type PlannedOwn = Pick<Planned, Needed> & Partial<Omit<Planned, Needed | keyof Place>>;

const noSteps: Planned['steps'] = [];

/** An item that falls due. Each property is named, since every check of a note makes many and spreading is slow. */
export function planned(place: Place, own: PlannedOwn): Planned {
  return {
    procedure: place.procedure,
    site: place.site,
    label: place.label,
    kind: own.kind,
    from: own.from,
    to: own.to,
    proposed: own.proposed,
    until: own.until,
    fixed: own.fixed ?? false,
    begins: own.begins,
    done: own.done,
    urgent: own.urgent ?? false,
    atHome: own.atHome ?? false,
    unplanned: own.unplanned ?? false,
    unclear: own.unclear ?? false,
    what: own.what,
    which: own.which,
    reason: own.reason,
    steps: own.steps ?? noSteps,
    source: own.source,
    mark: own.mark,
    at: own.at,
  };
}

/** What concerns the visit as a whole. */
export const wholeVisit: Place = { procedure: undefined, site: undefined, label: undefined };

/** Something that falls due, in its state on one day. */
export interface DueItem extends Planned {
  readonly state: DueState;
}

/** Something that has to be done while nobody can say when. */
export interface Undated extends Place {
  readonly kind: DueKind;
  readonly why: string;
  readonly at: Range;
}

/**
 * What is said of the proposed day beside the days in order; undefined where it is the first of them. A day outside of
 * them is never the best one.
 */
export function dayWords({
  from,
  to,
  proposed,
  fixed,
}: Pick<Planned, 'from' | 'to' | 'proposed' | 'fixed'>): string | undefined {
  if (proposed < from || proposed > to)
    return fixed ? `planned for ${proposed}` : `closed on each of these days; open again on ${proposed}`;
  return proposed === from ? undefined : `best on ${proposed}`;
}

/** What a state is made of. */
export type Timed = Pick<Planned, 'from' | 'proposed' | 'until' | 'begins' | 'done' | 'atHome'>;

/** The state on a day; undefined where that day does not know of it yet, or it is over without a record. */
export function stateOn(
  { from, proposed, until, begins, done, atHome }: Timed,
  today: IsoDate,
): DueState | undefined {
  if (begins !== undefined && begins > today) return undefined;
  if (done !== undefined && done <= today) return 'done';
  if (today > until) return atHome ? undefined : 'overdue';
  return today < from && today < proposed ? 'later' : 'due';
}

/** Whether something is written that can't be read. */
export const isUnclear = (leaf: Leaf<unknown> | undefined): boolean =>
  leaf !== undefined && leaf.value === undefined && !leaf.pending;

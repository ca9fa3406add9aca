import type { Args } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Specimen } from '../../note/generated/types.ts';
import type { IsoDate, Moment, Occasion } from '../../note/values/values.ts';
import { within } from '../../note/tree/tree.ts';
import { readDate } from '../../note/values/dates.ts';
import type { Subject } from '../check.ts';
import { shared } from '../shared.ts';

/** A date of the note, the form of the messages about it, and what must have come before it. */
export interface Dated {
  readonly form:
    | 'visit'
    | 'out'
    | 'collected'
    | 'sent'
    | 'received'
    | 'reviewed'
    | 'told'
    | 'tried'
    | 'done'
    | 'event'
    | 'signed'
    | 'addendum';
  readonly date: IsoDate;
  readonly leaf: Leaf<unknown>;
  readonly after: Dated | undefined;
}

/** Walks the dates on which something is said to have happened, in the order of the note. */
export class Walk {
  readonly found: Dated[] = [];

  /** Adds a date; returns whichever is later, it or what came before it. */
  add(
    form: Dated['form'],
    leaf: Leaf<IsoDate> | Leaf<Moment> | Leaf<Occasion> | undefined,
    after: Dated | undefined,
  ): Dated | undefined {
    const value = leaf?.value;
    const date = typeof value === 'string' ? value : value?.date;
    if (leaf === undefined || date === undefined) return after;
    const one = { form, date, leaf, after };
    this.found.push(one);
    return after === undefined || one.date >= after.date ? one : after;
  }

  addSpecimen({ collected, sent, results }: Specimen, visit: Dated | undefined): void {
    const left = this.add('sent', sent, this.add('collected', collected, visit));
    for (const { received, reviewed, told, attempts, done } of results ?? []) {
      const came = this.add('received', received, left);
      this.add('reviewed', dateIn(reviewed), came);
      for (const { on } of told ?? []) this.add('told', on, came);
      for (const { on } of attempts ?? []) this.add('tried', on, came);
      this.add('done', dateIn(done), came);
    }
  }
}

/** The first date among the words of a text. */
export function dateIn(leaf: Leaf<string> | undefined): Leaf<IsoDate> | undefined {
  const match = leaf?.value === undefined ? null : /\d{4}-\d{2}-\d{2}/.exec(leaf.value);
  const value = match === null ? undefined : readDate(match[0]).value;
  if (leaf === undefined || match === null || value === undefined) return undefined;
  const { start, end } = within(leaf.node, match.index, match.index + match[0].length);
  return { ...leaf, start, end, value };
}

/** The dates of a note, the visit first; read once for a note. */
export const datesOf = shared(({ note }: Subject): readonly Dated[] => {
  const walk = new Walk();
  const visit = walk.add('visit', note.visit, undefined);
  for (const { specimen, suturesOut } of note.procedures ?? []) {
    for (const one of specimen ?? []) walk.addSpecimen(one, visit);
    // That stitches come out after the visit is a matter of closure.
    for (const { on } of suturesOut ?? []) walk.add('out', on, undefined);
  }
  for (const { on } of note.events ?? []) walk.add('event', on, visit);
  walk.add('signed', note.signed?.at, visit);
  for (const { at } of note.addenda ?? []) walk.add('addendum', at, visit);
  return walk.found;
});

export const argsOf = ({ date }: Dated, other: IsoDate): Args => ({ date, other });

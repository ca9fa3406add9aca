import type { Args } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Specimen } from '../../note/generated/types.ts';
import type { IsoDate, Moment } from '../../note/values/values.ts';
import type { Check, Report, Subject } from '../check.ts';
import { shared } from '../shared.ts';

/** A date of the note, the form of the messages about it, and what must have come before it. */
interface Dated {
  readonly form: 'visit' | 'out' | 'sent' | 'received' | 'told' | 'event' | 'signed' | 'addendum';
  readonly date: IsoDate;
  readonly leaf: Leaf<unknown>;
  readonly after: Dated | undefined;
}

/** Walks the dates on which something is said to have happened, in the order of the note. */
class Walk {
  readonly found: Dated[] = [];

  /** Adds a date; answers whichever lies later, it or what came before it. */
  add(
    form: Dated['form'],
    leaf: Leaf<IsoDate> | Leaf<Moment> | undefined,
    after: Dated | undefined,
  ): Dated | undefined {
    const value = leaf?.value;
    if (leaf === undefined || value === undefined) return after;
    const one = { form, date: typeof value === 'string' ? value : value.date, leaf, after };
    this.found.push(one);
    return after === undefined || one.date >= after.date ? one : after;
  }

  addSpecimen({ sent, results }: Specimen, visit: Dated | undefined): void {
    const left = this.add('sent', sent, visit);
    for (const { received, told } of results ?? []) {
      const came = this.add('received', received, left);
      for (const { on } of told ?? []) this.add('told', on, came);
    }
  }
}

/** The dates of a note, the visit first; read once for a note. */
const datesOf = shared(({ note }: Subject): readonly Dated[] => {
  const walk = new Walk();
  const visit = walk.add('visit', note.visit, undefined);
  for (const { specimen, suturesOut } of note.procedures ?? []) {
    for (const one of specimen ?? []) walk.addSpecimen(one, visit);
    // That stitches come out after the visit is a matter of closure.
    walk.add('out', suturesOut?.on, undefined);
  }
  for (const { on } of note.events ?? []) walk.add('event', on, visit);
  walk.add('signed', note.signed?.at, visit);
  for (const { at } of note.addenda ?? []) walk.add('addendum', at, visit);
  return walk.found;
});

const argsOf = ({ date }: Dated, other: IsoDate): Args => ({ date, other });

export const checks: readonly Check[] = [
  {
    code: 'record/dates-out-of-order',
    severity: 'error',
    title: 'Something is dated before what it follows from',
    why: 'A specimen cannot be sent before the visit, nor a patient told before the result came. Due dates and the whole course are reckoned from these dates.',
    sources: [
      { source: 'format', mark: 'format' },
      { source: 'closed-loop', mark: 'Q' },
    ],
    messages: {
      sent: 'The specimen is said to have been sent on {date}, before {other}. Check both dates.',
      received: 'The result is said to have come on {date}, before {other}. Check both dates.',
      told: 'The patient is said to have been told on {date}, before {other}. Check both dates.',
      event: 'This event is dated {date}, before the visit on {other}. Check both dates.',
      signed:
        'The note is said to have been signed on {date}, before the visit on {other}. Check both dates.',
      addendum: 'This addition is dated {date}, before the visit on {other}. Check both dates.',
      'before-visit': 'the visit',
      'before-sent': 'when the specimen was sent',
      'before-received': 'when the result came',
    },
    find(subject) {
      const found: Report[] = [];
      for (const one of datesOf(subject)) {
        const { leaf, after, form, date } = one;
        if (after === undefined || date >= after.date) continue;
        const { start, end } = after.leaf;
        const related = [{ start, end, form: `before-${after.form}`, args: {} }];
        found.push({ at: leaf, form, args: argsOf(one, after.date), related });
      }
      return found;
    },
  },
  {
    code: 'record/date-in-future',
    severity: 'warning',
    title: 'A date that is still to come',
    why: 'A note records what has happened. A date in the future is most often a slip in the year or the month, and hides what is overdue.',
    sources: [{ source: 'format', mark: 'format' }],
    messages: {
      visit: 'The visit is dated {date}, and today is {other}. Check the date.',
      out: 'The stitches are said to have come out on {date}, and today is {other}. Check the date.',
      sent: 'The specimen is said to have been sent on {date}, and today is {other}. Check the date.',
      received: 'The result is said to have come on {date}, and today is {other}. Check the date.',
      told: 'The patient is said to have been told on {date}, and today is {other}. Check the date.',
      event:
        'This event is dated {date}, and today is {other}. Check the date, or take it out until it has happened.',
      signed: 'The note is said to have been signed on {date}, and today is {other}. Check the date.',
      addendum: 'This addition is dated {date}, and today is {other}. Check the date.',
    },
    find(subject) {
      const { today } = subject;
      if (today === undefined) return [];
      const ahead = datesOf(subject).filter(({ date }) => date > today);
      // Where the visit itself lies in the future, all that follows does too.
      const shown = ahead[0]?.form === 'visit' ? ahead.slice(0, 1) : ahead;
      return shown.map((one) => ({ at: one.leaf, form: one.form, args: argsOf(one, today) }));
    },
  },
];

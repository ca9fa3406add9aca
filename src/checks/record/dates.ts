import type { Args } from '../../note/finding.ts';
import type { Leaf } from '../../note/leaf.ts';
import type { Note, Result, Specimen } from '../../note/generated/types.ts';
import type { IsoDate, Moment } from '../../note/values.ts';
import type { Check } from '../check.ts';

/** A date of the note, the form of the messages about it, and what must have come before it. */
interface Dated {
  readonly form: 'visit' | 'sent' | 'received' | 'told' | 'event' | 'signed' | 'addendum';
  readonly date: IsoDate;
  readonly leaf: Leaf<unknown>;
  readonly after: Dated | undefined;
}

function dated(
  form: Dated['form'],
  leaf: Leaf<IsoDate> | Leaf<Moment> | undefined,
  after: Dated | undefined,
): Dated[] {
  const value = leaf?.value;
  if (leaf === undefined || value === undefined) return [];
  return [{ form, date: typeof value === 'string' ? value : value.date, leaf, after }];
}

/** Of two dates the later one: what comes next must not lie before it. */
const later = (one: Dated | undefined, other: Dated | undefined): Dated | undefined =>
  one === undefined || (other !== undefined && other.date > one.date) ? other : one;

function resultDates({ received, told = [] }: Result, before: Dated | undefined): readonly Dated[] {
  const came = dated('received', received, before);
  const last = later(before, came[0]);
  return [...came, ...told.flatMap(({ on }) => dated('told', on, last))];
}

function specimenDates({ sent, results = [] }: Specimen, visit: Dated | undefined): readonly Dated[] {
  const left = dated('sent', sent, visit);
  const last = later(visit, left[0]);
  return [...left, ...results.flatMap((result) => resultDates(result, last))];
}

/** The dates on which something is said to have happened, the visit first. */
function datesOf(note: Note): readonly Dated[] {
  const first = dated('visit', note.visit, undefined);
  const [visit] = first;
  return [
    ...first,
    ...(note.procedures ?? []).flatMap(({ specimen = [] }) =>
      specimen.flatMap((one) => specimenDates(one, visit)),
    ),
    ...(note.events ?? []).flatMap(({ on }) => dated('event', on, visit)),
    ...dated('signed', note.signed?.at, visit),
    ...(note.addenda ?? []).flatMap(({ at }) => dated('addendum', at, visit)),
  ];
}

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
    find: ({ note }) =>
      datesOf(note).flatMap((one) => {
        const { leaf, after, form } = one;
        if (after === undefined || one.date >= after.date) return [];
        const { start, end } = after.leaf;
        const related = [{ start, end, form: `before-${after.form}`, args: {} }];
        return [{ at: leaf, form, args: argsOf(one, after.date), related }];
      }),
  },
  {
    code: 'record/date-in-future',
    severity: 'warning',
    title: 'A date that is still to come',
    why: 'A note records what has happened. A date in the future is most often a slip in the year or the month, and hides what is overdue.',
    sources: [{ source: 'format', mark: 'format' }],
    messages: {
      visit: 'The visit is dated {date}, and today is {other}. Check the date.',
      sent: 'The specimen is said to have been sent on {date}, and today is {other}. Check the date.',
      received: 'The result is said to have come on {date}, and today is {other}. Check the date.',
      told: 'The patient is said to have been told on {date}, and today is {other}. Check the date.',
      event:
        'This event is dated {date}, and today is {other}. Check the date, or take it out until it has happened.',
      signed: 'The note is said to have been signed on {date}, and today is {other}. Check the date.',
      addendum: 'This addition is dated {date}, and today is {other}. Check the date.',
    },
    find({ note, today }) {
      if (today === undefined) return [];
      const ahead = datesOf(note).filter(({ date }) => date > today);
      // Where the visit itself lies in the future, all that follows does too.
      const shown = ahead[0]?.form === 'visit' ? ahead.slice(0, 1) : ahead;
      return shown.map((one) => ({ at: one.leaf, form: one.form, args: argsOf(one, today) }));
    },
  },
];

import { countedStep } from '../../followup/next-step.ts';
import type { Report } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { within, type Range } from '../../note/tree/tree.ts';
import { wholeInterval } from '../../note/values/intervals.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Note } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check } from '../check.ts';
import { format } from '../sources.ts';

/** A day that the note plans by an interval. */
interface Counted {
  readonly at: Range;
  readonly day: IsoDate;
  /** What may be written instead; undefined where the words say more than one day. */
  readonly instead: string | undefined;
}

/** The days that a note plans by an interval: of stitches and of next steps. */
export function countedDays(note: Note, tables: Tables): readonly Counted[] {
  const visit = note.visit?.value?.date;
  if (visit === undefined) return [];
  return (note.procedures ?? []).flatMap(({ suturesDue, specimen = [] }) => [
    ...stitchesDay(suturesDue),
    ...specimen.flatMap(({ results = [] }) =>
      results.flatMap((result): readonly Counted[] => {
        const step = result.next === undefined ? undefined : countedStep(result, visit, tables);
        if (step === undefined) return [];
        const { interval, day } = step;
        const { node } = result.next!;
        const writable = interval.exact && node.inner >= 0;
        return [
          { at: within(node, interval.from, interval.to), day, instead: writable ? `on ${day}` : undefined },
        ];
      }),
    ),
  ]);
}

function stitchesDay(due: Leaf<IsoDate> | undefined): readonly Counted[] {
  if (due?.value === undefined) return [];
  const interval = wholeInterval(due.text);
  if (interval === undefined) return [];
  const { start, end, value: day } = due;
  return [{ at: { start, end }, day, instead: interval.exact ? day : undefined }];
}

const reportOf = ({ at, day, instead }: Counted): Report => ({
  at: { start: at.start, end: at.end },
  args: { day },
  ...(instead === undefined ? {} : { data: { instead } }),
});

export const check: Check = {
  code: 'quantity/relative-day',
  severity: 'hint',
  title: 'A planned day that is counted from another',
  why: 'A time such as in 1 week is read as a day: of stitches and visits counted from the visit, of a step from its result. A written date stays the same when a date before it is corrected.',
  sources: [format],
  messages: { main: 'This is read as {day}.' },
  find: ({ note, tables }) => countedDays(note, tables).map(reportOf),
  fix({ text }, { start, end, data }) {
    const instead = (data as { readonly instead: string } | undefined)?.instead;
    if (instead === undefined) return [];
    const quote = /^["']/.exec(text.slice(start, end))?.[0] ?? '';
    const edit = { start, end, text: quote + instead + quote };
    return [{ title: `Write ${instead}`, kind: 'spelling', sure: true, edits: [edit] }];
  },
};

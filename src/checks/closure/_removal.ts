import { sutureRemoval, type SutureWindow } from '../../followup/sutures.ts';
import type { Args } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Check, SourcesDiffer, Subject } from '../check.ts';

export const sourcesDiffer: SourcesDiffer = {
  how: 'Days to removal differ by site up to fourfold. One leaflet on punch biopsies gives the usual days, and only a day outside of every source is a warning.',
  settings: ['suture-windows'],
};

export type Kind = 'due' | 'out';

/** The days that a procedure names for its stitches: planned, and done. */
export function daysIn({ suturesDue, suturesOut }: Procedure): readonly (readonly [Kind, Leaf<IsoDate>])[] {
  const days: (readonly [Kind, Leaf<IsoDate>])[] = [];
  if (suturesDue?.value !== undefined) days.push(['due', suturesDue]);
  for (const { on } of suturesOut ?? []) if (on?.value !== undefined) days.push(['out', on]);
  return days;
}

export interface Day {
  readonly kind: Kind;
  readonly leaf: Leaf<IsoDate>;
  readonly date: IsoDate;
  readonly visit: IsoDate;
  readonly window: SutureWindow;
}

export function daysWithWindow(subject: Subject): readonly Day[] {
  const found: Day[] = [];
  const { note, tables } = subject;
  const visit = note.visit?.value?.date;
  if (visit === undefined) return found;
  for (const procedure of note.procedures ?? []) {
    const days = daysIn(procedure);
    if (days.length === 0) continue;
    const window = sutureRemoval(note, procedure, subject.siteOf(procedure), tables);
    if (window.kind !== 'window') continue;
    for (const [kind, leaf] of days)
      // A day before the visit has a finding of its own.
      if (leaf.value !== undefined && leaf.value >= visit)
        found.push({ kind, leaf, date: leaf.value, visit, window });
  }
  return found;
}

const daysWord = {
  usual: 'the usual days',
  lengthened: 'the lengthened days',
  own: 'the practice’s own days',
} as const;

export const argsOf = ({ date, window: { from, to, kindOfDays } }: Day): Args => ({
  ...{ date, from, to },
  days: daysWord[kindOfDays],
});

export const sources: Check['sources'] = [
  { source: 'punch-leaflet', mark: 'Q' },
  { source: 'suture-handbook', mark: 'Q' },
  { source: 'clinical-handbook', mark: 'Q' },
  { source: 'suture-chart', mark: 'Q' },
  { source: 'plastic-surgery-text', mark: 'Q' },
  { source: 'family-practice-guide', mark: 'Q' },
  { source: 'closure-removal-text', mark: 'Q' },
  { source: 'vulval-biopsy-page', mark: 'Q' },
];

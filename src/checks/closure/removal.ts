import { addDays } from '../../note/values/days.ts';
import { sutureRemoval, type SutureWindow } from '../../followup/sutures.ts';
import { isClosed, nextOpenDay } from '../../followup/working-days.ts';
import type { Args } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { bounded } from '../bounded.ts';
import type { Check, Report, Subject } from '../check.ts';

type Kind = 'due' | 'out';

/** The days that a procedure names for its stitches: planned, and done. */
function daysIn({ suturesDue, suturesOut }: Procedure): readonly (readonly [Kind, Leaf<IsoDate>])[] {
  const days: (readonly [Kind, Leaf<IsoDate>])[] = [];
  if (suturesDue?.value !== undefined) days.push(['due', suturesDue]);
  if (suturesOut?.on?.value !== undefined) days.push(['out', suturesOut.on]);
  return days;
}

interface Day {
  readonly kind: Kind;
  readonly leaf: Leaf<IsoDate>;
  readonly date: IsoDate;
  readonly visit: IsoDate;
  readonly window: SutureWindow;
}

function daysWithWindow(subject: Subject): readonly Day[] {
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

const argsOf = ({ date, window: { from, to } }: Day): Args => ({ date, from, to });

function early(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysWithWindow(subject)) {
    const { kind, leaf, date, visit, window } = day;
    if (date < addDays(visit, window.widest.from))
      found.push({ at: leaf, form: kind, severity: bounded('warning', window.mark), args: argsOf(day) });
    else if (kind === 'due' && window.lengthened && date < window.from)
      found.push({ at: leaf, form: 'slow', severity: 'information', args: argsOf(day) });
  }
  return found;
}

function late(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysWithWindow(subject)) {
    const { kind, leaf, date, visit, window } = day;
    if (date <= addDays(visit, window.widest.to)) continue;
    const severity = kind === 'due' ? bounded('warning', window.mark) : 'information';
    found.push({ at: leaf, form: kind, severity, args: argsOf(day) });
  }
  return found;
}

function onClosedDays({ note, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const { suturesDue, suturesOut } of note.procedures ?? []) {
    const date = suturesDue?.value;
    if (suturesDue === undefined || date === undefined || suturesOut !== undefined) continue;
    if (isClosed(date, tables.closedDays))
      found.push({ at: suturesDue, args: { date, next: nextOpenDay(date, tables.closedDays) } });
  }
  return found;
}

const sources: Check['sources'] = [
  { source: 'punch-leaflet', mark: 'Q' },
  { source: 'suture-handbook', mark: 'Q' },
  { source: 'clinical-handbook', mark: 'Q' },
  { source: 'suture-chart', mark: 'Q' },
  { source: 'plastic-surgery-text', mark: 'Q' },
  { source: 'family-practice-guide', mark: 'Q' },
  { source: 'closure-removal-text', mark: 'Q' },
  { source: 'vulval-biopsy-page', mark: 'Q' },
];

export const checks: readonly Check[] = [
  {
    code: 'closure/removal-early',
    about: ['sutures-due', 'sutures-out'],
    severity: 'warning',
    title: 'Stitches out before any source would take them out',
    why: 'A wound whose stitches come out too soon gapes. Sources differ by site, some up to fourfold: only a day before the earliest of them, or of the practice’s own window, is a warning. With what slows healing, such as diabetes or steroids, a day before the lengthened window is information.',
    sources,
    messages: {
      due: 'The stitches are due on {date}, earlier than any source takes them out here; the usual days are {from} to {to}. Check the date.',
      out: 'The stitches came out on {date}, earlier than any source takes them out here; the usual days are {from} to {to}. Check the date, or look at the wound again.',
      slow: 'The stitches are due on {date}, and what this patient or site has makes wounds hold late: {from} to {to} is usual then.',
    },
    find: early,
  },
  {
    code: 'closure/removal-late',
    about: ['sutures-due', 'sutures-out'],
    severity: 'warning',
    title: 'Stitches out later than any source leaves them in',
    why: 'Stitches that stay too long leave tracks, on the face from about the seventh day on. Sources differ by site: only a day after the latest of them, or of the practice’s own window, is found. Once they are out it is information.',
    sources,
    messages: {
      due: 'The stitches are due on {date}, later than any source leaves them in here; the usual days are {from} to {to}. Check the date.',
      out: 'The stitches came out on {date}, later than any source leaves them in here; the usual days were {from} to {to}. Check the date.',
    },
    find: late,
  },
  {
    code: 'closure/removal-on-closed-day',
    about: ['sutures-due'],
    severity: 'information',
    title: 'Stitches due on a day on which the practice is closed',
    why: 'A patient who comes to a closed door comes late, or has the stitches taken out elsewhere. Closed are Saturday and Sunday where the practice file does not say otherwise.',
    sources: [{ source: 'format', mark: 'format' }],
    messages: {
      main: 'The practice is closed on {date}. The next open day is {next}.',
    },
    find: onClosedDays,
  },
];

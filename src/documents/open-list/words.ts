import type { OpenGroup, OpenItem } from '../../followup/caseload.ts';
import { dayWords } from '../../followup/due.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { joined } from '../from-note.ts';
import type { NotRead } from '../not-read.ts';
import { plain } from '../one-line.ts';

/** What is open over many notes on one day. */
export interface OpenList {
  readonly asOf: IsoDate;
  /** How many notes were looked at. */
  readonly notes: number;
  readonly items: readonly OpenItem[];
  /** Notes that could not be looked at, at all or in full; none where nothing is said. */
  readonly notRead?: readonly NotRead[];
}

/** What is to be done, as a list is headed. */
export const openHeadings: Readonly<Record<OpenGroup, string>> = {
  look: 'Notes to look at',
  tell: 'Patients to be told',
  results: 'Results outstanding',
  send: 'Specimens to be sent',
  next: 'Next steps',
  stitches: 'Stitches to come out',
  calls: 'Calls and checks',
};

/** An open item in one row of words, without the patient. */
export function openText(item: OpenItem): string {
  return plain(
    joined(
      [
        joined([item.label === undefined ? undefined : `specimen ${item.label}`, item.site], ', '),
        item.what,
        whenText(item),
        item.urgent ? 'cannot wait' : undefined,
      ],
      '; ',
    ) ?? item.kind,
  );
}

/** An open item in the fewest words, for a narrow place: first what is loud, then what it is about. */
export function openBrief(item: OpenItem): string {
  if (item.state !== 'overdue') return openText(item);
  const days = `${item.overdue} ${item.overdue === 1 ? 'day' : 'days'} overdue`;
  const about = openText({ ...item, to: undefined, urgent: false });
  return `${item.urgent ? `cannot wait, ${days}` : days}; ${about}`;
}

const inWindow: ReadonlySet<OpenItem['kind']> = new Set(['suture removal', 'return visit', 'scar check']);

function whenText(item: OpenItem): string | undefined {
  const { kind, state, from, to, proposed, fixed, overdue } = item;
  if (to === undefined) return undefined;
  if (state === 'overdue') return `overdue since ${to}, ${overdue} ${overdue === 1 ? 'day' : 'days'}`;
  if (kind === 'result') return `expected from ${from ?? to}, overdue after ${to}`;
  if (!inWindow.has(kind)) return `by ${to}`;
  return windowText({ from: from ?? to, to, proposed: proposed ?? to, fixed });
}

function windowText(days: Parameters<typeof dayWords>[0]): string {
  const { from, to, proposed } = days;
  const span = from === to ? to : `${from} to ${to}`;
  const day = proposed === to ? undefined : dayWords(days);
  return day === undefined ? span : `${span}, ${day}`;
}

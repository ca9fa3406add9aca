import { safeJson } from '../safe-json.ts';
import { groupOrder, type OpenGroup, type OpenItem } from '../../followup/caseload.ts';
import { dayWords } from '../../followup/due.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { csvOf, type CsvLook } from '../csv.ts';
import type { Format, Records } from '../format.ts';
import { notReadJson, notReadText, type NotRead } from '../not-read.ts';
import { plain } from '../one-line.ts';
import { joined } from '../from-note.ts';

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

/** The list as text: grouped by what to do, what is long overdue marked louder. */
function openListText({ asOf, notes, items }: OpenList): string {
  const looked = `${notes} ${notes === 1 ? 'note' : 'notes'}`;
  if (items.length === 0) return `Nothing is open in ${looked} as of ${asOf}.\n`;
  const sections = groupOrder.flatMap((group) => {
    const own = items.filter((item) => item.group === group);
    return own.length === 0 ? [] : [`${openHeadings[group]} (${own.length})\n${own.map(rowOf).join('')}`];
  });
  return `Open as of ${asOf}: ${items.length} in ${looked}.\n\n${sections.join('\n')}`;
}

function rowOf(item: OpenItem): string {
  const mark = '!'.repeat(item.loudness).padEnd(3);
  const who = plain(item.patient ?? 'no chart number');
  return `${mark} ${who}: ${openText(item)}\n      ${plain(item.path)}:${item.line + 1}\n`;
}

const columns = [
  'group',
  'patient',
  'visit',
  'kind',
  'site',
  'label',
  'what',
  'from',
  'to',
  'proposed',
  'state',
  'overdue days',
  'urgent',
  'note',
  'row',
] as const;

/** The list as a table for a spreadsheet. */
const openListCsv = ({ items }: OpenList, look?: CsvLook): string =>
  csvOf(
    columns,
    items.map((item) => [
      openHeadings[item.group],
      item.patient,
      item.visit,
      item.kind,
      item.site,
      item.label,
      item.what,
      item.from,
      item.to,
      item.proposed,
      item.state,
      item.overdue,
      item.urgent ? 'yes' : 'no',
      item.path,
      item.line + 1,
    ]),
    ['patient', 'label'],
    look,
  );

/** The list as data; lines count from 0. */
export const openListData = ({ items, notRead = [] }: OpenList): Records<'items' | 'notRead'> => ({
  items: items.map(entryOf),
  notRead: notReadJson(notRead),
});

const openListJson = (list: OpenList): string =>
  `${safeJson({ wheal: 1, asOf: list.asOf, notes: list.notes, ...openListData(list) }, 2)}\n`;

const entryOf = (item: OpenItem): object => ({
  note: item.path,
  line: item.line,
  patient: item.patient ?? null,
  visit: item.visit ?? null,
  ...{ group: item.group, kind: item.kind, site: item.site ?? null, label: item.label ?? null },
  ...{
    what: item.what ?? null,
    from: item.from ?? null,
    to: item.to ?? null,
    proposed: item.proposed ?? null,
  },
  ...{ state: item.state, overdueDays: item.overdue, urgent: item.urgent, loudness: item.loudness },
});

const missingFrom = ({ notRead = [] }: OpenList): string =>
  notRead.length === 0 ? '' : `\n${notReadText(notRead)}`;

/** The forms of the list, the usual one first. */
export const openListFormats: Readonly<
  Record<'text' | 'json' | 'csv', Format<[list: OpenList, look?: CsvLook]>>
> = {
  text: { write: (list) => `${openListText(list)}${missingFrom(list)}`, ending: 'txt', title: 'Text' },
  json: { write: openListJson, ending: 'json', title: 'JSON' },
  csv: { write: openListCsv, ending: 'csv', title: 'Table' },
};

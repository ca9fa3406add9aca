import { safeJson } from '../safe-json.ts';
import { groupOrder, type OpenItem } from '../../followup/caseload.ts';
import { csvOf, type CsvLook } from '../csv.ts';
import type { Format, Records } from '../format.ts';
import { notReadJson, notReadText } from '../not-read.ts';
import { plain } from '../one-line.ts';
import { openListHtml } from './html.ts';
import { openHeadings, openText, type OpenList } from './words.ts';

export { openBrief, openHeadings, openText, type OpenList } from './words.ts';

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
  Record<'text' | 'json' | 'csv' | 'html', Format<[list: OpenList, look?: CsvLook]>>
> = {
  text: { write: (list) => `${openListText(list)}${missingFrom(list)}`, ending: 'txt', title: 'Text' },
  json: { write: openListJson, ending: 'json', title: 'JSON' },
  csv: { write: openListCsv, ending: 'csv', title: 'Table' },
  html: { write: openListHtml, ending: 'html', title: 'Page for printing' },
};

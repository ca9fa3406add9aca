import { groupOrder, type OpenGroup, type OpenItem } from '../../followup/caseload.ts';
import { daysBetween } from '../../note/values/days.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { escapedHtml, htmlPage, listHtml, tag } from '../html.ts';
import { plain } from '../one-line.ts';
import { element } from '../svg.ts';
import { openHeadings, openText, type OpenList } from './words.ts';

/** The parts of the page, what is overdue first. */
const parts: readonly (readonly [state: OpenItem['state'], heading: string])[] = [
  ['overdue', 'Overdue'],
  ['due', 'Due now'],
  ['later', 'Later'],
];

const rule = (name: string, shown: string, all: string): string =>
  `body:has(#${name}-${shown}:checked) .${all}:not(.${shown}) { display: none; }`;

/** The filters are rules of the page alone: it runs nothing, and asks nobody. */
const style = [
  'fieldset { border: 1px solid #888; margin: 0 0 0.5em; padding: 0.3em 0.6em; } label { margin-right: 1em; white-space: nowrap; }',
  'h3 { font-size: 1em; margin: 0.7em 0 0.2em; break-after: avoid; } thead { display: table-header-group; }',
  'table { table-layout: fixed; } th:nth-child(1) { width: 17%; } th:nth-child(2) { width: 13%; } th:nth-child(4) { width: 18%; } th:nth-child(5) { width: 15%; }',
  'td.done { border-left: 1px solid #888; } td svg { margin: 0; } td small { color: #444; }',
  '@media print { fieldset { display: none; } body { font-size: 10pt; line-height: 1.25; } }',
  ...parts.map(([state]) => rule('state', state, 'part')),
  ...groupOrder.map((group) => rule('group', group, 'group')),
].join('\n');

/** The list as a page: what is overdue first, by what is to be done, with a time line for each; prints as a call list. */
export function openListHtml({ asOf, notes, items, notRead = [] }: OpenList): string {
  const title = `Open items as of ${asOf}`;
  const looked = `${items.length} in ${notes} ${notes === 1 ? 'note' : 'notes'}.`;
  const body = [
    '<main>',
    tag('h1', title),
    tag('p', items.length === 0 ? `Nothing is open. ${looked}` : looked),
    ...(items.length === 0 ? [] : filtersOf(items)),
    ...parts.flatMap(([state, heading]) => partOf(state, heading, items, asOf)),
    ...(notRead.length === 0
      ? []
      : [
          tag('h2', 'Notes that were not looked at in full'),
          listHtml(notRead.map(({ path, why }) => plain(`${path}: ${why}`))),
        ]),
    '</main>',
  ];
  return htmlPage(title, 'en', body.join('\n'), { foot: title, style });
}

function filtersOf(items: readonly OpenItem[]): readonly string[] {
  const states = parts.filter(([state]) => items.some((item) => item.state === state));
  const groups = groupOrder.filter((group) => items.some((item) => item.group === group));
  return [
    choice('state', 'When', states),
    choice(
      'group',
      'What',
      groups.map((group) => [group, openHeadings[group]] as const),
    ),
  ];
}

function choice(
  name: string,
  legend: string,
  choices: readonly (readonly [id: string, words: string])[],
): string {
  const inputs = [['all', 'All'] as const, ...choices].map(
    ([id, words]) =>
      `<label><input type="radio" name="${name}" id="${name}-${id}"${id === 'all' ? ' checked' : ''}> ${words}</label>`,
  );
  return `<fieldset>\n<legend>${legend}</legend>\n${inputs.join('\n')}\n</fieldset>`;
}

function partOf(
  state: OpenItem['state'],
  heading: string,
  all: readonly OpenItem[],
  asOf: IsoDate,
): readonly string[] {
  const items = all.filter((item) => item.state === state);
  if (items.length === 0) return [];
  const sections = groupOrder.map((group) =>
    groupOf(
      group,
      items.filter((item) => item.group === group),
      asOf,
    ),
  );
  return [
    `<section class="part ${state}">\n${tag('h2', `${heading} (${items.length})`)}`,
    ...sections.filter((section) => section !== ''),
    '</section>',
  ];
}

const heads = ['Patient', 'Visit', 'What', 'Time line', 'Done, by'];

function groupOf(group: OpenGroup, items: readonly OpenItem[], asOf: IsoDate): string {
  if (items.length === 0) return '';
  return `<section class="group ${group}">
${tag('h3', `${openHeadings[group]} (${items.length})`)}
<table>
<thead><tr>${heads.map((head) => `<th scope="col">${head}</th>`).join('')}</tr></thead>
<tbody>
${items.map((item) => rowHtml(item, asOf)).join('\n')}
</tbody>
</table>
</section>`;
}

function rowHtml(item: OpenItem, asOf: IsoDate): string {
  const { patient = 'no chart number', visit = '', loudness, path, line } = item;
  const loud = loudness === 0 ? '' : `<b>${'!'.repeat(loudness)}</b> `;
  const cells = [
    `${loud}${escapedHtml(plain(patient))}`,
    `<span class="date">${escapedHtml(plain(visit))}</span>`,
    `${escapedHtml(openText(item))}<br><small>${escapedHtml(plain(`${path}:${line + 1}`))}</small>`,
    timeLine(item, asOf),
  ];
  return `<tr>${cells.map((cell) => `<td>${cell}</td>`).join('')}<td class="done"></td></tr>`;
}

const width = 110;
const height = 14;

/** From the visit to the last day in order, or to the day of the list where that is later; nothing without a day. */
function timeLine({ visit, from, to, proposed, state }: OpenItem, asOf: IsoDate): string {
  if (to === undefined) return '';
  const begin = from ?? to;
  const days = [visit ?? begin, begin, to, proposed ?? to, asOf].sort();
  const [first, last] = [days[0]!, days.at(-1)!];
  const whole = Math.max(1, daysBetween(first, last));
  const x = (day: IsoDate): number => 4 + ((width - 8) * daysBetween(first, day)) / whole;
  const shapes = [
    element('path', { d: `M0 7H${width}`, 'stroke-width': 0.6 }),
    element('rect', {
      ...{ x: x(begin) - 2, y: 3, width: x(to) - x(begin) + 4, height: 8 },
      fill: state === 'overdue' ? 'currentColor' : '#fff',
    }),
    element('path', {
      d: `M${Math.round(x(asOf))} 0V${height}`,
      'stroke-width': 1.5,
      'stroke-dasharray': '2 1',
    }),
  ];
  const words = `in order from ${begin} to ${to}, seen on ${asOf}`;
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      ...{ width, height, role: 'img', 'aria-label': words, fill: 'none', stroke: 'currentColor' },
    },
    ...shapes,
  );
}

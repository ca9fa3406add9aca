import { floorTo, isAtLeast, isOver, nearLimit } from '../../dose/arithmetic.ts';
import type { AgentDose, DoseJudgement } from '../../dose/judge.ts';
import { advisoryCeilings, rulesOf } from '../../dose/rules.ts';
import { authorityText, kindText, mgText, percentText } from '../../dose/words.ts';
import { plain } from '../one-line.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Tables } from '../../practice/tables.ts';
import { markGroup, svgOf, type Picture, type PictureOptions } from './picture.ts';
import { cutTo, element, hatching, paper, short, spread, widthOf, words } from '../svg.ts';

/** All in units of the picture. */
const width = 480;
const barHeight = 14;
const lineHeight = 15;
/** From this share on a bar is broken off; its number is beside it. */
const mostShown = 2;

/** A bar against its ceiling. */
interface Bar {
  readonly name: string;
  readonly amount: string;
  /** Whose ceiling it is. */
  readonly whose: string;
  readonly share: number;
  /** Shares of the ceiling of which the bar is made; one, but for the sum. */
  readonly parts: readonly number[];
  readonly marks: readonly AdvisoryMark[];
  readonly starts: readonly number[];
}

/** A published limit below the ceiling. */
interface AdvisoryMark {
  readonly share: number;
  readonly text: string;
}

/** The bars of one day, and the sentences below them. */
interface Day {
  readonly day: string | undefined;
  readonly bars: readonly Bar[];
  readonly lines: readonly string[];
}

/**
 * The dose of a visit, and of later days on which more was given: each agent's share of its ceiling, the sum, other
 * published limits that apply, and what is left in mL. Undefined where nothing was given that has a limit.
 */
export function dosePicture(
  dose: DoseJudgement,
  tables: Tables,
  { id = 'dose', linked = false }: PictureOptions = {},
): Picture | undefined {
  const days = [dose, ...dose.later]
    .filter(({ agents, noLimit }) => agents.length + noLimit.length > 0)
    .map((one) => dayOf(one, tables));
  if (days.length === 0) return undefined;
  const most = Math.max(...days.flatMap(({ bars }) => bars.map(({ share }) => share)), 1);
  const scale = (share: number): number =>
    (Math.min(share, mostShown) / Math.min(mostShown, most * 1.25)) * width;
  const { pattern, fill } = hatching(id);
  const canvas = { scale, linked, hatch: fill };
  const title = 'Dose of local anesthetic';
  const alternative = plain(days.map(sentenceOf).join(' '));
  let y = 4;
  const shapes = days.map((one) => {
    const drawn = drawDay(one, y, days.length > 1, canvas);
    y += drawn.height;
    return drawn.shapes;
  });
  return {
    title,
    alternative,
    svg: svgOf({ id, title, alternative, width, height: y, linked }, pattern + shapes.join('')),
    table: {
      head: ['Day', 'Anesthetic', 'Given and allowed', 'Ceiling of', 'Share of the ceiling', 'Other limits'],
      rows: days.flatMap(({ day, bars }) =>
        bars.map(({ name, amount, whose, share, marks }) => [
          day ?? 'not recorded',
          name,
          amount,
          whose,
          shareText(share),
          marks.map(({ text }) => text).join('; '),
        ]),
      ),
    },
    notDrawn: [],
  };
}

const shareText = (share: number): string => (share === 0 ? '–' : `${percentText(share)}%`);

function dayOf(dose: DoseJudgement, tables: Tables): Day {
  const { day, agents, noLimit, left, judged, why, atLeast } = dose;
  const bars = agents.map((agent) => agentBar(agent, dose, tables));
  const sum: Bar = {
    name: judged ? 'All together' : 'All together, at least',
    amount: '',
    whose: '',
    share: atLeast,
    parts: agents.map(({ fraction }) => fraction),
    marks: [],
    starts: [],
  };
  return {
    day,
    bars: agents.length > 1 ? [...bars, sum] : bars,
    lines: [
      ...verdictOf(dose),
      ...noLimit.map(
        ({ agent, epinephrine }) => `${kindText(agent, epinephrine)}: no limit is known for such a patient.`,
      ),
      ...(judged ? [] : [`Not judged: ${why ?? 'something is missing'}.`]),
      ...left.map(({ product, ml }) =>
        ml > 0 ? `Left: ${formatNumber(ml)} mL of ${product}` : `Left: nothing of ${product}`,
      ),
    ],
  };
}

function verdictOf({ atLeast, agents, facts }: DoseJudgement): readonly string[] {
  if (agents.length === 0 || facts.kg === undefined) return [];
  if (isOver(atLeast, 1)) return [`${percentText(atLeast)}% of the ceiling: over it.`];
  if (isAtLeast(atLeast, nearLimit)) return [`${percentText(atLeast)}% of the ceiling: near it.`];
  return [];
}

function agentBar(agent: AgentDose, { facts }: DoseJudgement, tables: Tables): Bar {
  const { limit, limitMg, boundBy, mg, fraction, given } = agent;
  const name = plain(kindText(agent.agent, agent.epinephrine));
  const starts = given.map(({ at }) => at.start);
  if (limitMg === Infinity)
    return {
      name,
      amount: `${mgText(mg)} mg; no weight, no ceiling`,
      whose: '',
      share: 0,
      parts: [],
      marks: [],
      starts,
    };
  return {
    name,
    amount: `${mgText(mg)} mg of ${formatNumber(floorTo(limitMg, 0.01))} mg`,
    whose: authorityText(limit, boundBy, tables.authority),
    share: fraction,
    parts: [fraction],
    marks: advisoryCeilings(rulesOf(tables), agent, facts, 'advisories', tables)
      .filter((one) => isOver(limitMg, one.limitMg))
      .map((one) => ({
        share: one.limitMg / limitMg,
        text: `${one.limitMg === 0 ? 'advised against' : `${formatNumber(floorTo(one.limitMg, 0.01))} mg`}, ${one.limit.authority}: ${isOver(mg, one.limitMg) ? 'passed' : 'not reached'}`,
      })),
    starts,
  };
}

function sentenceOf({ day, bars, lines }: Day): string {
  const each = bars.map(
    ({ name, amount, whose, share, marks }) =>
      `${[name, amount, whose, share === 0 ? '' : `${percentText(share)}% of the ceiling`].filter((part) => part !== '').join(', ')}${marks.map(({ text }) => `; ${text}`).join('')}.`,
  );
  return [
    ...(day === undefined ? [] : [`On ${day}:`]),
    ...each,
    ...lines.map((line) => line.replace(/\.?$/, '.')),
  ].join(' ');
}

interface Drawn {
  readonly shapes: string;
  readonly height: number;
}

/** What bars are drawn with. */
interface Canvas {
  readonly scale: (share: number) => number;
  readonly linked: boolean;
  /** Fill of what was given. */
  readonly hatch: string;
}

function drawDay({ day, bars, lines }: Day, top: number, named: boolean, canvas: Canvas): Drawn {
  const { scale } = canvas;
  let y = top;
  const shapes: string[] = [];
  if (named) {
    y += lineHeight;
    shapes.push(words(0, y, day ?? 'day not recorded', { 'font-weight': 'bold' }));
  }
  if (bars.some(({ share }) => share > 0)) {
    y += lineHeight;
    shapes.push(
      words(scale(nearLimit), y, 'near: 80%', { 'text-anchor': 'end' }),
      words(scale(1), y, 'ceiling'),
    );
  }
  for (const bar of bars) {
    const drawn = drawBar(bar, y, canvas);
    shapes.push(drawn.shapes);
    y += drawn.height;
  }
  for (const line of lines) {
    y += lineHeight;
    shapes.push(words(0, y, cutTo(line, width)));
  }
  return { shapes: shapes.join(''), height: y + 6 - top };
}

function drawBar(bar: Bar, top: number, canvas: Canvas): Drawn {
  const { scale, linked } = canvas;
  const { name, amount, share, marks, starts } = bar;
  const percent = share === 0 ? '' : `${percentText(share)}%`;
  const text = [name, amount].filter((part) => part !== '').join(': ');
  const y = top + lineHeight + 5;
  const shapes = [
    words(0, top + lineHeight, cutTo(text, width - widthOf(percent, true) - 8)),
    words(width, top + lineHeight, percent, { 'text-anchor': 'end', 'font-weight': 'bold' }),
    ...(share === 0 ? [] : [track(bar, y, canvas)]),
  ];
  const letters = spread(
    marks.map((one) => Math.max(4, scale(one.share))),
    9,
    4,
    width,
  );
  const below = y + barHeight;
  for (const [at, one] of marks.entries()) {
    const letter = String.fromCharCode(97 + at);
    const x = scale(one.share);
    shapes.push(
      element('path', { d: `M${short(x)} ${below}l-4 6h8z`, fill: 'currentColor', stroke: 'none' }),
      words(letters[at]!, below + 15, letter, { 'text-anchor': 'middle' }),
      words(0, below + 15 + lineHeight * (at + 1), cutTo(`${letter}: ${one.text}`, width)),
    );
  }
  const height = below - top + (marks.length === 0 ? 0 : 17 + lineHeight * marks.length);
  const mark = {
    start: starts[0],
    procedure: undefined,
    name: `${text}${percent === '' ? '' : `, ${percent}`}`,
  };
  return { shapes: markGroup(mark, linked, shapes.join('')), height };
}

/** The bar itself: up to the ceiling hatched, above it solid, and the lines of the ceiling and of what is near it. */
function track({ share, parts }: Bar, y: number, { scale, hatch }: Canvas): string {
  const ends = parts.map((_, at) => parts.slice(0, at + 1).reduce((sum, part) => sum + part, 0));
  const borders = ends.slice(0, -1).map((end) => `M${short(scale(end))} ${y}v${barHeight}`);
  const full = scale(Math.min(share, 1));
  const over = scale(share) - full;
  const box = { y, height: barHeight };
  return [
    element('rect', { x: 0.5, ...box, width: scale(1) - 0.5, fill: paper, 'stroke-width': 0.8 }),
    element('rect', { class: 'wheal-bar', x: 0.5, ...box, width: Math.max(1, full - 0.5), fill: hatch }),
    isOver(share, 1)
      ? element('rect', {
          class: 'wheal-over',
          x: full,
          ...box,
          width: Math.max(2, over),
          fill: 'currentColor',
        })
      : '',
    element('path', {
      d: `M${short(scale(nearLimit))} ${y - 3}v${barHeight + 6}`,
      'stroke-dasharray': '2 2',
    }),
    element('path', {
      d: `M${short(scale(1))} ${y - 3}v${barHeight + 6}${borders.join('')}`,
      'stroke-width': 2,
    }),
    share > mostShown
      ? words(width - 4, y + 11, '»', { 'text-anchor': 'end', fill: paper, 'font-weight': 'bold' })
      : '',
  ].join('');
}

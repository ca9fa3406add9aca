import { dayWords, stateOn, type DueState, type Planned } from '../../followup/due.ts';
import type { Plan } from '../../followup/schedule.ts';
import { daysBetween } from '../../note/values/days.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { joined } from '../from-note.ts';
import { plain } from '../one-line.ts';
import { markGroup, svgOf, type Picture, type PictureOptions } from './picture.ts';
import { cutTo, element, hatching, paper, widthOf, words } from '../svg.ts';

/** All in units of the picture. */
const width = 480;
const barHeight = 10;
const rowHeight = 34;
const headHeight = 34;

/** What falls due after one visit, as seen on a day. */
export interface TimeFacts {
  readonly visit: IsoDate | undefined;
  readonly plan: Plan;
  /** Undefined where nobody said: then nothing is due or overdue yet. */
  readonly today: IsoDate | undefined;
}

/** One thing that falls due, as it is drawn. */
export interface TimeRow extends Pick<
  Planned,
  'kind' | 'site' | 'label' | 'from' | 'to' | 'proposed' | 'until' | 'fixed' | 'done'
> {
  readonly state: DueState | undefined;
  readonly procedure: number | undefined;
  readonly start: number | undefined;
}

/** Nothing here can be told apart by its color: each state has a shape and a word. */
const stateWords: Readonly<Record<DueState, string>> = {
  done: 'done',
  overdue: 'overdue',
  due: 'due now',
  later: 'later',
};

/**
 * What falls due after a visit, from its day to the last of it: stitches, results, telling, calls, recalls. Care at
 * home is not in it. Undefined where the visit has no day, or nothing falls due.
 */
export function timePicture(
  { visit, plan, today }: TimeFacts,
  { id = 'time', linked = false }: PictureOptions = {},
): Picture | undefined {
  const rows = plan.planned.flatMap((one) => rowOf(one, today)).sort(byDay);
  const undated = plan.undated
    .filter(({ kind }) => kind !== 'dressing change')
    .map((one) => plain(`No day: ${joined([one.kind, placeOf(one)])}: ${one.why}.`));
  if (visit === undefined || rows.length + undated.length === 0) return undefined;
  const title = 'What falls due';
  const alternative = [
    `Visit on ${visit}${today === undefined ? '' : `, seen on ${today}`}.`,
    ...rows.map((row) => `${joined([row.kind, placeOf(row)])}: ${whenText(row)}.`),
    ...undated,
  ].join(' ');
  const axis = axisOf(visit, today, rows);
  const { pattern, fill } = hatching(id);
  const height = headHeight + rows.length * rowHeight + 4;
  const shapes = [
    pattern,
    drawAxis(axis, height),
    ...rows.map((row, at) => drawRow(row, headHeight + at * rowHeight, axis, fill, linked)),
  ];
  return {
    title,
    alternative,
    svg: svgOf({ id, title, alternative, width, height, linked }, shapes.join('')),
    table: {
      head: ['What', 'Where', 'From', 'To', 'State'],
      rows: rows.map((row) => [row.kind, placeOf(row) ?? 'whole visit', row.from, row.to, whenText(row)]),
    },
    notDrawn: undated,
  };
}

/** A row of an item, in its state; none for care at home and for what the day does not know of yet. */
function rowOf(one: Planned, today: IsoDate | undefined): readonly TimeRow[] {
  if (one.atHome) return [];
  const state = today === undefined ? undefined : stateOn(one, today);
  if (today !== undefined && state === undefined) return [];
  const { kind, site, label, from, to, proposed, until, fixed, procedure, at } = one;
  const done = state === undefined || state === 'done' ? one.done : undefined;
  return [{ kind, site, label, from, to, proposed, until, fixed, done, procedure, state, start: at.start }];
}

const byDay = (a: TimeRow, b: TimeRow): number => (a.from === b.from ? 0 : a.from < b.from ? -1 : 1);

const placeOf = ({ site, label }: Pick<TimeRow, 'site' | 'label'>): string | undefined =>
  joined([site, label === undefined ? undefined : `specimen ${label}`].map((part) => part && plain(part)));

/** State and days of an item in words. */
function whenText(row: TimeRow): string {
  const { state, from, to, done, kind } = row;
  if (state === 'done') return done === '' || done === undefined ? 'done' : `done ${done}`;
  if (state === 'overdue') return `overdue since ${to}`;
  const span = from === to ? to : `${from} to ${to}`;
  const best = kind === 'result' ? undefined : dayWords(row);
  return joined([joined([state === undefined ? undefined : stateWords[state], span], ': '), best]) ?? span;
}

/** The same in few characters. */
function shortText({ state, from, to, done }: TimeRow): string {
  if (state === 'done') return done === '' || done === undefined ? 'done' : `done ${done}`;
  if (state === 'overdue') return `! overdue since ${to}`;
  const span = from === to ? to : `${from} to ${to}`;
  return state === undefined ? span : `${stateWords[state]}: ${span}`;
}

interface Axis {
  readonly visit: IsoDate;
  readonly last: IsoDate;
  readonly today: IsoDate | undefined;
  /** Place of a day; of one outside, the nearest end. */
  readonly x: (day: IsoDate) => number;
}

function axisOf(visit: IsoDate, today: IsoDate | undefined, rows: readonly TimeRow[]): Axis {
  const last = rows.reduce((latest, { to, proposed, until, done }) => {
    const days = [to, proposed, until, done ?? ''].filter((day) => day > latest).sort();
    return days.at(-1) ?? latest;
  }, visit);
  const whole = Math.max(1, daysBetween(visit, last));
  // Room for the shapes of the first and the last day.
  const x = (day: IsoDate): number =>
    6 + (width - 12) * Math.min(1, Math.max(0, daysBetween(visit, day) / whole));
  return { visit, last, today, x };
}

function drawAxis({ visit, last, today, x }: Axis, height: number): string {
  const ends = [
    words(0, 11, `visit ${visit}`),
    ...(last === visit ? [] : [words(width, 11, last, { 'text-anchor': 'end' })]),
    element('path', { d: `M0 16H${width}`, 'stroke-width': 0.6 }),
  ];
  if (today === undefined) return ends.join('');
  const text = today > last ? `today ${today} »` : `today ${today}`;
  const at = x(today);
  const half = widthOf(text, true) / 2;
  return [
    ...ends,
    element('path', {
      class: 'wheal-today',
      d: `M${Math.round(at)} 16V${height}`,
      'stroke-dasharray': '3 3',
    }),
    words(Math.min(width - half, Math.max(half, at)), 28, text, {
      'text-anchor': 'middle',
      'font-weight': 'bold',
      stroke: paper,
      'stroke-width': 4,
      'paint-order': 'stroke',
    }),
  ].join('');
}

function drawRow(row: TimeRow, top: number, { x }: Axis, hatch: string, linked: boolean): string {
  const { from, to, until, proposed, done, state, procedure, start } = row;
  const when = shortText(row);
  const name = `${procedure === undefined ? '' : `${procedure + 1}. `}${joined([row.kind, placeOf(row)]) ?? ''}`;
  const y = top + 16;
  const left = x(from) - 3;
  const right = x(to) + 3;
  const middle = y + barHeight / 2;
  const grace =
    until > to
      ? [element('path', { d: `M${right} ${middle}H${x(until) + 3}`, 'stroke-dasharray': '2 2' })]
      : [];
  const bar = element('rect', {
    class: 'wheal-bar',
    x: left,
    y,
    width: right - left,
    height: barHeight,
    fill: state === 'done' ? paper : state === 'overdue' ? 'currentColor' : hatch,
  });
  const halo = { stroke: paper, 'stroke-width': 4, 'paint-order': 'stroke' };
  const shapes = [
    words(0, top + 11, cutTo(name, width - widthOf(when, state === 'overdue') - 8), halo),
    words(width, top + 11, when, {
      'text-anchor': 'end',
      ...halo,
      ...(state === 'overdue' ? { 'font-weight': 'bold' } : {}),
    }),
    ...grace,
    bar,
    ...(done === undefined || done === '' ? [diamond(x(proposed), middle, state)] : [tick(x(done), middle)]),
  ];
  return markGroup({ start, procedure, name: `${name}: ${whenText(row)}` }, linked, shapes.join(''));
}

/** The day on which it is best done. */
const diamond = (x: number, y: number, state: DueState | undefined): string =>
  state === 'done'
    ? ''
    : element('path', { d: `M${Math.round(x)} ${y - 6}l5 6l-5 6l-5-6z`, fill: paper, 'stroke-width': 1.4 });

/** The day on which it was done. */
const tick = (x: number, y: number): string =>
  element('path', { d: `M${Math.round(x) - 5} ${y}l4 5l7-11`, 'stroke-width': 2 });

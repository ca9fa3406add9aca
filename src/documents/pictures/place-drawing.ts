import type { Language } from '../../note/words/language.ts';
import { edgeOf, type Area } from './body/areas.ts';
import type { Point } from './body/spline.ts';
import { drawnView, views, type View, type ViewName } from './body/views.ts';
import { markGroup, svgOf, type MarkOf } from './picture.ts';
import { placeWordings } from './place-words.ts';
import { element, hatching, paper, short, spread, widthOf, words } from '../svg.ts';

/** All in units of the picture. */
const mostWidth = 480;
const badge = 8;
const badgeGap = 18;
/** Beside each drawing, for the numbers. */
const column = 21;
const headHeight = 32;
const between = 5;
const betweenRows = 12;

/** Areas of one procedure on one drawing, on one side of it. */
export interface Spot {
  /** Index of the procedure, from 0. */
  readonly procedure: number;
  readonly view: ViewName;
  /** Whose hand, ear …; undefined for a view of both sides. */
  readonly of: 'left' | 'right' | undefined;
  /** As they are on the drawing: in a view of both sides from its midline to the right. */
  readonly areas: readonly Omit<Area, 'view'>[];
}

interface PlaceDrawing {
  readonly id: string;
  readonly linked: boolean;
  readonly language: Language;
  readonly title: string;
  readonly alternative: string;
  /** Of the procedures. */
  readonly marks: readonly (MarkOf & { readonly number: number })[];
}

/** One drawing with all that is marked on it. */
interface Figure {
  readonly view: View;
  readonly name: ViewName;
  readonly of: Spot['of'];
  readonly spots: readonly Spot[];
}

/** The drawings that the spots need, side by side in rows, with a number beside each. */
export function drawPlaces(spots: readonly Spot[], drawing: PlaceDrawing): string {
  const figures = figuresOf(spots);
  const { pattern, fill } = hatching(drawing.id);
  const shapes: string[] = [];
  let [x, y, rowHeight, used] = [0, 0, 0, 1];
  for (const figure of figures) {
    const size = sizeOf(figure);
    const taken = Math.max(
      size.width,
      widthOf(placeWordings[drawing.language].viewOf(figure.name, figure.of), true),
    );
    if (x > 0 && x + taken > mostWidth) {
      y += rowHeight + betweenRows;
      [x, rowHeight] = [0, 0];
    }
    shapes.push(drawFigure(figure, size, [x + (taken - size.width) / 2, y], fill, drawing));
    x += taken + between;
    used = Math.max(used, x - between);
    rowHeight = Math.max(rowHeight, size.height);
  }
  return svgOf({ ...drawing, width: used, height: Math.max(1, y + rowHeight) }, pattern + shapes.join(''));
}

function figuresOf(spots: readonly Spot[]): readonly Figure[] {
  return (Object.keys(views) as ViewName[]).flatMap((name) =>
    ([undefined, 'right', 'left'] as const).flatMap((of) => {
      const own = spots.filter((spot) => spot.view === name && spot.of === of);
      return own.length === 0 ? [] : [{ view: views[name], name, of, spots: own }];
    }),
  );
}

interface Size {
  readonly width: number;
  readonly height: number;
}

function sizeOf({ view, spots }: Figure): Size {
  const numbers = Math.ceil(spots.length / 2) * badgeGap;
  return {
    width: view.width * view.scale + 2 * column,
    height: headHeight + Math.max(view.height * view.scale, numbers) + 2,
  };
}

function drawFigure(
  figure: Figure,
  size: Size,
  [left, top]: Point,
  hatch: string,
  { language, linked, marks }: PlaceDrawing,
): string {
  const { view, name, of } = figure;
  const wording = placeWordings[language];
  const middle = left + size.width / 2;
  const sides: readonly string[] =
    view.left === 1 ? [wording.right, wording.left] : [wording.left, wording.right];
  const labels =
    view.left === undefined
      ? []
      : [
          words(left + column, top + 25, sides[0]!),
          words(left + size.width - column, top + 25, sides[1]!, { 'text-anchor': 'end' }),
        ];
  return [
    words(middle, top + 11, wording.viewOf(name, of), { 'text-anchor': 'middle', 'font-weight': 'bold' }),
    ...labels,
    drawBody(figure, left + column, top + headHeight),
    ...inColumns(figure, size, [left, top]).map(({ spot, at }) => {
      const mark = marks.find(({ procedure }) => procedure === spot.procedure)!;
      const areas = spot.areas.map((area) => onPicture(area, view, left + column, top + headHeight));
      return markGroup(mark, linked, drawSpot(areas, at, mark.number, hatch));
    }),
  ].join('');
}

/** A drawing without marks; a line that goes on is cut at its edge. */
function drawBody({ view, of }: Figure, x: number, y: number): string {
  const { outline, lines } = drawnView(view);
  const mirrored = view.left === undefined && (of === 'right') !== (view.flipped ?? false);
  const middle = view.left === undefined ? 0 : view.width / 2;
  const thin = { 'vector-effect': 'non-scaling-stroke' };
  return element(
    'svg',
    {
      ...{ x, y, width: view.width * view.scale, height: view.height * view.scale },
      viewBox: `0 0 ${view.width} ${view.height}`,
    },
    element(
      'g',
      { transform: mirrored ? `matrix(-1 0 0 1 ${view.width} 0)` : `translate(${middle})` },
      ...outline.map((d) => element('path', { d, fill: paper, 'stroke-width': 1.2, ...thin })),
      element('path', { d: lines, 'stroke-width': 0.6, ...thin }),
    ),
  );
}

/** An area in units of the picture. */
function onPicture(area: Omit<Area, 'view'>, view: View, left: number, top: number): Omit<Area, 'view'> {
  const { scale } = view;
  const middle = view.left === undefined ? 0 : view.width / 2;
  return {
    ...{ x: left + (area.x + middle) * scale, y: top + area.y * scale },
    ...{ rx: area.rx * scale, ry: area.ry * scale, angle: area.angle },
  };
}

interface Numbered {
  readonly spot: Spot;
  /** Where its number is. */
  readonly at: Point;
}

/** The numbers in the columns left and right of a drawing, each near its area, and none over another. */
function inColumns({ view, spots }: Figure, size: Size, [left, top]: Point): readonly Numbered[] {
  const middle = view.left === undefined ? view.width / 2 : 0;
  const most = Math.floor((size.height - headHeight) / badgeGap);
  const byPlace = [...spots].sort((a, b) => a.areas[0]!.x - b.areas[0]!.x);
  const wanted = byPlace.filter(({ areas }) => areas[0]!.x < middle).length;
  const first = Math.min(most, Math.max(byPlace.length - most, wanted));
  const placed = (column: readonly Spot[], x: number): readonly Numbered[] => {
    const sorted = [...column].sort((a, b) => a.areas[0]!.y - b.areas[0]!.y || a.procedure - b.procedure);
    const min = top + headHeight + badge;
    const places = spread(
      sorted.map(({ areas }) => Math.max(min, top + headHeight + areas[0]!.y * view.scale)),
      badgeGap,
      min,
      top + size.height - badge - 1,
    );
    return sorted.map((spot, at) => ({ spot, at: [x, places[at]!] }));
  };
  return [
    ...placed(byPlace.slice(0, first), left + badge + 1),
    ...placed(byPlace.slice(first), left + size.width - badge - 1),
  ];
}

/** The areas of a procedure on one drawing, its number, and lines from one to the others. */
function drawSpot(
  areas: readonly Omit<Area, 'view'>[],
  [x, y]: Point,
  number: number,
  hatch: string,
): string {
  return [
    ...areas.map((area) =>
      element('ellipse', {
        ...{ cx: area.x, cy: area.y, rx: area.rx, ry: area.ry, fill: hatch },
        transform: area.angle === 0 ? undefined : `rotate(${area.angle} ${short(area.x)} ${short(area.y)})`,
      }),
    ),
    ...areas.map((area) => {
      const [toX, toY] = nearestTo([x, y], edgeOf(area));
      return element('path', {
        d: `M${short(x)} ${short(y)}L${short(toX)} ${short(toY)}`,
        'stroke-width': 0.8,
      });
    }),
    element('circle', { cx: x, cy: y, r: badge, fill: paper }),
    words(x, y + 3.6, String(number), { 'text-anchor': 'middle', 'font-weight': 'bold', 'font-size': 10 }),
  ].join('');
}

const nearestTo = ([x, y]: Point, points: readonly Point[]): Point =>
  points.reduce((best, point) =>
    Math.hypot(point[0] - x, point[1] - y) < Math.hypot(best[0] - x, best[1] - y) ? point : best,
  );

import { short } from '../../svg.ts';

/** A place, in units of its view. */
export type Point = readonly [x: number, y: number];

/** The points of a line that is written as `x y x y …`. */
export function pointsOf(text: string): readonly Point[] {
  const numbers = text.trim().split(/\s+/).map(Number);
  return Array.from({ length: numbers.length / 2 }, (_, at): Point => [
    numbers[2 * at]!,
    numbers[2 * at + 1]!,
  ]);
}

/** The other half of what is drawn right of the midline, so that both are one closed line. */
export const withOtherHalf = (points: readonly Point[]): readonly Point[] => [
  ...points,
  ...points
    .filter(([x]) => x !== 0)
    .reverse()
    .map(([x, y]): Point => [-x, y]),
];

/** A piece of a smooth line: two ends, and the two points that bend it. */
type Piece = readonly [Point, Point, Point, Point];

/** A smooth line through points; a point that is written twice is a corner. */
function piecesOf(points: readonly Point[], closed: boolean): readonly Piece[] {
  const at = (index: number): Point =>
    closed
      ? points[(index + points.length) % points.length]!
      : points[Math.min(points.length - 1, Math.max(0, index))]!;
  return Array.from({ length: closed ? points.length : points.length - 1 }, (_, index): Piece => {
    const [before, from, to, after] = [at(index - 1), at(index), at(index + 1), at(index + 2)];
    return [
      from,
      [from[0] + (to[0] - before[0]) / 6, from[1] + (to[1] - before[1]) / 6],
      [to[0] - (after[0] - from[0]) / 6, to[1] - (after[1] - from[1]) / 6],
      to,
    ];
  }).filter(([from, , , to]) => from[0] !== to[0] || from[1] !== to[1]);
}

/** The line as data of a path. */
export function pathOf(points: readonly Point[], closed: boolean): string {
  const pieces = piecesOf(points, closed);
  const start = pieces[0]?.[0] ?? [0, 0];
  const curves = pieces.map((piece) => `C${piece.slice(1).flat().map(short).join(' ')}`);
  return `M${start.map(short).join(' ')}${curves.join('')}${closed ? 'z' : ''}`;
}

/** The closed line as a polygon with so many corners for each piece. */
export const polygonOf = (points: readonly Point[], corners = 8): readonly Point[] =>
  piecesOf(points, true).flatMap(([a, b, c, d]) =>
    Array.from({ length: corners }, (_, step): Point => {
      const t = step / corners;
      const along = (axis: 0 | 1): number =>
        a[axis] * (1 - t) ** 3 +
        3 * b[axis] * t * (1 - t) ** 2 +
        3 * c[axis] * t * t * (1 - t) +
        d[axis] * t ** 3;
      return [along(0), along(1)];
    }),
  );

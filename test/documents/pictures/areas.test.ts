import assert from 'node:assert/strict';
import { areasOf, edgeOf, type Area } from '../../../src/documents/pictures/body/areas.ts';
import { polygonOf, type Point } from '../../../src/documents/pictures/body/spline.ts';
import { outlinesOf, views, type ViewName } from '../../../src/documents/pictures/body/views.ts';
import { sites } from '../../../src/reference/sites.ts';

/** Whether a place is within a closed line. */
function isWithin([x, y]: Point, line: readonly Point[]): boolean {
  let within = false;
  for (const [at, [x1, y1]] of line.entries()) {
    const [x2, y2] = line[(at + 1) % line.length]!;
    if (y1 > y !== y2 > y && x < ((x2 - x1) * (y - y1)) / (y2 - y1) + x1) within = !within;
  }
  return within;
}

const polygons = new Map(
  Object.entries(views).map(([name, view]) => [name, outlinesOf(view).map((line) => polygonOf(line))]),
);

const outside = (area: Area): readonly string[] =>
  edgeOf(area)
    .filter((place) => polygons.get(area.view)?.some((line) => isWithin(place, line)) !== true)
    .map(([x, y]) => `${area.view} ${x.toFixed(1)} ${y.toFixed(1)}`);

const isHalf = (view: ViewName): boolean => views[view].left !== undefined;

describe('the areas of the body', () => {
  for (const { name, side } of sites) {
    it(`has an area for ${name} within the outline`, () => {
      const areas = areasOf(name);
      assert.ok(areas.length > 0, 'it needs a line in src/documents/pictures/body/areas.ts');
      for (const area of areas) assert.deepEqual(outside(area), []);
      for (const { rx, ry } of areas) assert.ok(rx >= 1.5 && ry >= 1.5, 'an area, not a dot');
    });

    it(`has ${name} on its own side`, () => {
      for (const area of areasOf(name)) {
        if (!isHalf(area.view)) continue;
        if (side === 'never') assert.equal(area.x, 0, 'of the midline');
        else if (side === 'needed') assert.ok(area.x > 0 && Math.min(...edgeOf(area).map(([x]) => x)) > -1);
      }
    });
  }

  it('has the other side as a mirror image within the outline', () => {
    for (const { name } of sites)
      for (const area of areasOf(name).filter(({ view }) => isHalf(view)))
        assert.deepEqual(outside({ ...area, x: -area.x, angle: -area.angle }), [], name);
  });

  it('has a whole area where no side has to be said', () => {
    for (const { name, side } of sites)
      if (side === 'optional')
        for (const area of areasOf(name).filter(({ view }) => isHalf(view)))
          assert.deepEqual(outside({ ...area, x: 0, rx: area.x + area.rx, angle: 0 }), [], name);
  });
});

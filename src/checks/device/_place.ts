import { readSite, type SiteReading } from '../../note/words/site.ts';
import type { Tables } from '../../practice/tables.ts';
import type { SiteRegion } from '../../reference/sites.ts';

/** Where a device is relative to the site. */
export type Distance = 'near' | 'far' | 'unknown';

interface Area {
  /** Words for the place of a device that are no body sites. */
  readonly words: RegExp;
  readonly regions: ReadonlySet<SiteRegion>;
  /** Regions that are near whichever side they are on. */
  readonly near: ReadonlySet<SiteRegion>;
  /** Regions that are near on the side of the device, or where no side is known. */
  readonly nearOnSide: ReadonlySet<SiteRegion>;
}

/** Generators are under the collarbone or in the belly, with leads to the heart. */
const areas: readonly Area[] = [
  {
    words: /clavic|collarbone|pector|thora|chest/i,
    regions: new Set(['chest', 'breast', 'axilla', 'shoulder', 'neck']),
    near: new Set(['chest', 'breast', 'neck']),
    nearOnSide: new Set(['shoulder', 'axilla']),
  },
  {
    words: /abdom|belly|stomach/i,
    regions: new Set(['abdomen']),
    near: new Set(['abdomen', 'chest', 'breast']),
    nearOnSide: new Set(['groin']),
  },
];

/** How far a site is from a device whose place is given in free words. */
export function distanceTo(
  where: string | undefined,
  site: SiteReading | undefined,
  tables: Tables,
): Distance {
  if (where === undefined || site === undefined) return 'unknown';
  const place = readSite(where, tables.sites)?.base.region;
  const { region } = site.base;
  const area = areaOf(where, place);
  if (area === undefined) return place === undefined || place === region ? 'unknown' : 'far';
  if (area.near.has(region)) return 'near';
  return area.nearOnSide.has(region) && !otherSide(where, site) ? 'near' : 'far';
}

const areaOf = (where: string, place: SiteRegion | undefined): Area | undefined =>
  (place && areas.find(({ regions }) => regions.has(place))) ?? areas.find(({ words }) => words.test(where));

/** Whether device and site are said to be on different sides. */
function otherSide(where: string, site: SiteReading): boolean {
  const side = sideOf(where);
  return side !== undefined && (site.side === 'left' || site.side === 'right') && side !== site.side;
}

function sideOf(text: string): 'left' | 'right' | undefined {
  const left = /\b(?:left|l|lt)\b/i.test(text);
  const right = /\b(?:right|r|rt)\b/i.test(text);
  return left === right ? undefined : left ? 'left' : 'right';
}

import type { Report } from '../../note/tree/finding.ts';
import { isOver } from '../../dose/arithmetic.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Quantity } from '../../note/values/values.ts';
import type { SiteReading } from '../../note/words/site.ts';
import type { SiteVolumeRow, VolumePlace } from '../../reference/site-volumes.ts';
import type { SiteRow } from '../../reference/sites.ts';
import type { Check, Subject } from '../check.ts';

/** What was injected into one place, as far as the note can be read. */
interface Filled {
  readonly row: SiteVolumeRow;
  readonly site: string;
  readonly volumes: Leaf<Quantity>[];
}

const digitRegions: ReadonlySet<string> = new Set(['hand', 'foot', 'nail']);

const otherPlaces: ReadonlyMap<string, VolumePlace> = new Map([
  ['ear', 'ear'],
  ['genital', 'penis'],
]);

/** Which place a site belongs to; undefined for any other site. Its blood comes by end arteries. */
function placeOf({ name, region, endArtery }: SiteRow): VolumePlace | undefined {
  if (!endArtery) return undefined;
  if (!digitRegions.has(region)) return otherPlaces.get(region);
  if (region === 'foot' || name.includes('toe')) return 'toe';
  return name.includes('thumb') ? 'thumb' : 'finger';
}

/** Two procedures at one place count together; what names no digit or no side of an ear exactly is alone. */
function keyOf({ side, digit }: SiteReading, place: VolumePlace, index: number): string {
  const exact = place === 'penis' || (place === 'ear' ? side !== undefined : digit !== undefined);
  if (!exact) return `procedure ${index}`;
  const kind = place === 'thumb' ? 'finger' : place;
  return place === 'penis' ? kind : `${side ?? ''} ${kind} ${digit ?? ''}`;
}

function volumesOf({ anesthetic }: Procedure): readonly Leaf<Quantity>[] {
  const found: Leaf<Quantity>[] = [];
  for (const { volume } of anesthetic ?? []) if (volume?.value !== undefined) found.push(volume);
  return found;
}

const millilitersOf = (volumes: readonly Leaf<Quantity>[]): number =>
  volumes.reduce((sum, { value }) => sum + (value?.amount ?? 0), 0);

function filledIn(procedures: readonly Procedure[], subject: Subject): Iterable<Filled> {
  const found = new Map<string, Filled>();
  for (const [index, procedure] of procedures.entries()) {
    const volumes = volumesOf(procedure);
    const site = volumes.length === 0 ? undefined : subject.siteOf(procedure);
    const place = site && placeOf(site.base);
    const row = place && subject.tables.siteVolumes.find((one) => one.place === place);
    if (site === undefined || row === undefined) continue;
    const key = keyOf(site, row.place, index);
    const before = found.get(key);
    if (before === undefined)
      found.set(key, { row, site: procedure.site?.text ?? '', volumes: [...volumes] });
    else before.volumes.push(...volumes);
  }
  return found.values();
}

export const check: Check = {
  code: 'dose/volume-for-site',
  severity: 'information',
  title: 'More in one place than any source injects',
  why: 'A finger, a toe, an ear and a penis have little room, and too much volume cuts off their blood. Sources differ; only more than the largest volume that one of them injects to numb the whole part is reported. For other sites no maximum was found.',
  sources: [
    { source: 'digital-block-consult', mark: 'Q' },
    { source: 'digital-block-nsw', mark: 'Q' },
    { source: 'digital-block-family-notebook', mark: 'Q' },
    { source: 'ear-block-family-notebook', mark: 'Q' },
    { source: 'ear-block-wikem', mark: 'Q' },
    { source: 'penile-block-emergency-text', mark: 'Q' },
    { source: 'penile-block-circumcision', mark: 'Q' },
  ],
  messages: {
    main: '{ml} mL went into {site}; sources inject at most {most} mL to numb a whole {place}. Check the number, and the color of the {place} before the patient leaves.',
    also: 'Counts too.',
  },
  sourcesDiffer: {
    how: 'Sources inject 1 to 3 mL, 2 to 5 mL, or 4 mL into a finger and 6 mL into a toe; 8 to 12 mL around an ear; 6 to 10 mL or up to 20 mL around a penis. The greatest is followed.',
    settings: ['severities'],
  },
  find(subject) {
    const found: Report[] = [];
    const procedures = subject.note.procedures ?? [];
    let ml = 0;
    for (const procedure of procedures) ml += millilitersOf(volumesOf(procedure));
    if (!subject.tables.siteVolumes.some(({ maxMl }) => isOver(ml, maxMl))) return found;
    for (const { row, site, volumes } of filledIn(procedures, subject)) {
      const at = volumes.at(-1);
      const ml = millilitersOf(volumes);
      if (at === undefined || !isOver(ml, row.maxMl)) continue;
      const args = { ml: formatNumber(ml), most: row.maxMl, site, place: row.place };
      const related = volumes.slice(0, -1).map(({ start, end }) => ({ start, end, form: 'also', args: {} }));
      found.push({ at, args, related, rests: row });
    }
    return found;
  },
};

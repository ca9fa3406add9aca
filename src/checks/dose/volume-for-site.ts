import { isOver } from '../../dose/arithmetic.ts';
import { formatNumber } from '../../note/format.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/leaf.ts';
import type { Quantity } from '../../note/values.ts';
import type { SiteReading } from '../../note/site.ts';
import type { DigitVolumeRow } from '../../reference/digit-volumes.ts';
import type { SiteRow } from '../../reference/sites.ts';
import type { Check, Report, Subject } from '../check.ts';

/** What was injected into one digit, as far as the note can be read. */
interface Digit {
  readonly row: DigitVolumeRow;
  readonly site: string;
  readonly volumes: Leaf<Quantity>[];
}

const digitRegions: ReadonlySet<string> = new Set(['hand', 'foot', 'nail']);

/** Which kind of digit a site is; undefined for any other site. */
function digitOf({ name, region, endArtery }: SiteRow): DigitVolumeRow['digit'] | undefined {
  if (!endArtery || !digitRegions.has(region)) return undefined;
  if (region === 'foot' || name.includes('toe')) return 'toe';
  return name.includes('thumb') ? 'thumb' : 'finger';
}

/** Two procedures at one digit count together; what names no digit exactly stands alone. */
const keyOf = ({ base, side, digit }: SiteReading, index: number): string =>
  digit === undefined
    ? `procedure ${index}`
    : `${side ?? ''} ${base.region === 'foot' || base.name.includes('toe') ? 'toe' : 'finger'} ${digit}`;

const volumesOf = ({ anesthetic = [] }: Procedure): readonly Leaf<Quantity>[] =>
  anesthetic.flatMap(({ volume }) => (volume?.value === undefined ? [] : [volume]));

const millilitersOf = (volumes: readonly Leaf<Quantity>[]): number =>
  volumes.reduce((sum, { value }) => sum + (value?.amount ?? 0), 0);

function digitsOf(procedures: readonly Procedure[], subject: Subject): Iterable<Digit> {
  const found = new Map<string, Digit>();
  for (const [index, procedure] of procedures.entries()) {
    const volumes = volumesOf(procedure);
    const site = volumes.length === 0 ? undefined : subject.siteOf(procedure);
    const digit = site && digitOf(site.base);
    const row = subject.tables.digitVolumes.find((one) => one.digit === digit);
    if (site === undefined || row === undefined) continue;
    const key = keyOf(site, index);
    const before = found.get(key);
    if (before === undefined)
      found.set(key, { row, site: procedure.site?.text ?? '', volumes: [...volumes] });
    else before.volumes.push(...volumes);
  }
  return found.values();
}

export const checks: readonly Check[] = [
  {
    code: 'dose/volume-for-site',
    severity: 'information',
    title: 'More in one digit than any source injects',
    why: 'A finger or toe has little room, and a tight one has little blood. Sources differ: 1 to 3 mL, 2 to 5 mL, or 4 mL for a finger and 6 mL for a toe; the greatest is followed, and only more than that is told of. For other sites no figure was found.',
    sources: [
      { source: 'digital-block-consult', mark: 'Q' },
      { source: 'digital-block-nsw', mark: 'Q' },
      { source: 'digital-block-family-notebook', mark: 'Q' },
    ],
    messages: {
      main: '{ml} mL went into {site}; sources inject at most {most} mL to numb a {digit}. Check the number, and the color of the digit before the patient leaves.',
      also: 'Counts too.',
    },
    find(subject) {
      const found: Report[] = [];
      const procedures = subject.note.procedures ?? [];
      const least = Math.min(...subject.tables.digitVolumes.map(({ maxMl }) => maxMl));
      if (!isOver(millilitersOf(procedures.flatMap(volumesOf)), least)) return found;
      for (const { row, site, volumes } of digitsOf(procedures, subject)) {
        const at = volumes.at(-1);
        const ml = millilitersOf(volumes);
        if (at === undefined || !isOver(ml, row.maxMl)) continue;
        const args = { ml: formatNumber(ml), most: row.maxMl, site, digit: row.digit };
        const related = volumes
          .slice(0, -1)
          .map(({ start, end }) => ({ start, end, form: 'also', args: {} }));
        found.push({ at, args, related });
      }
      return found;
    },
  },
];

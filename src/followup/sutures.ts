import type { Closure, Note, Procedure } from '../note/generated/types.ts';
import { phrasesOf } from '../note/words/phrases.ts';
import type { SiteReading } from '../note/words/site.ts';
import type { IsoDate } from '../note/values/values.ts';
import type { ClosedDays } from '../practice/closed-days.ts';
import type { Tables } from '../practice/tables.ts';
import type { MaterialRow } from '../reference/materials.ts';
import type { SiteRow } from '../reference/sites.ts';
import type { Mark, Sourced } from '../reference/types.ts';
import { addDays } from '../note/values/days.ts';
import { nextOpenDay } from './working-days.ts';
import { rowsIn } from '../note/words/understood.ts';
import type { ClosureRow } from '../reference/closures.ts';

/** One line of how a window came about. */
export interface WindowStep {
  readonly text: string;
  /** Key of the table of sources, and how sure the line is of it. */
  readonly source?: string;
  readonly mark?: Mark;
}

/** Days from the procedure, both ends included. */
export interface DaySpan {
  readonly from: number;
  readonly to: number;
}

/** When the stitches of a wound come out. */
export interface SutureWindow extends Sourced {
  readonly kind: 'window';
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly days: DaySpan;
  /** The earliest and the latest day that any source or the practice gives, lengthened at its end. */
  readonly widest: DaySpan;
  /** Whose days they are: of a source, of a source and lengthened by what makes wounds hold late, or the practice's. */
  readonly kindOfDays: 'usual' | 'lengthened' | 'own';
  /** The days and how they came about, in one sentence. */
  readonly reason: string;
  readonly steps: readonly WindowStep[];
}

/**
 * What is to be done about the stitches of a procedure: nothing, because none stay or they are absorbed; something,
 * but nobody can say when; or removal in a window.
 */
export type SutureRemoval =
  | { readonly kind: 'none'; readonly why: 'no stitches' | 'absorbable' }
  | { readonly kind: 'unknown'; readonly why: 'closure' | 'site' | 'no source' | 'visit' }
  | SutureWindow;

/** Something that lengthens a window. */
export interface Lengthening extends Sourced {
  readonly name: string;
}

type Stitches = 'none' | 'absorbable' | 'removable' | 'unknown';

/** What is to be done about the stitches of a procedure. */
export function sutureRemoval(
  note: Note,
  procedure: Procedure,
  reading: SiteReading | undefined,
  tables: Tables,
): SutureRemoval {
  const stitches = stitchesOf(procedure, tables);
  if (stitches === 'none') return { kind: 'none', why: 'no stitches' };
  if (stitches === 'absorbable') return { kind: 'none', why: 'absorbable' };
  if (stitches === 'unknown') return { kind: 'unknown', why: 'closure' };
  if (reading === undefined) return { kind: 'unknown', why: 'site' };
  const visit = note.visit?.value?.date;
  if (visit === undefined) return { kind: 'unknown', why: 'visit' };
  const factors = [...siteFactors(reading.base), ...patientFactors(note, visit, tables)];
  return sutureWindow(visit, reading.base, factors, tables) ?? { kind: 'unknown', why: 'no source' };
}

/** Of several layers the first of these counts. */
const gravest: readonly Stitches[] = ['removable', 'absorbable', 'unknown', 'none'];

const isDeep = ({ layer }: Closure, { layers }: Tables): boolean =>
  layer !== undefined && layers.find(layer.value ?? '')?.name === 'deep';

/** What of a procedure's stitches has to be taken out. A material that is not named is taken for one that has to. */
export function stitchesOf(procedure: Procedure, tables: Tables): Stitches {
  let found: Stitches = 'none';
  for (const one of procedure.closure ?? []) {
    if (isDeep(one, tables)) continue;
    const kind = stitchesIn(one, tables);
    if (gravest.indexOf(kind) < gravest.indexOf(found)) found = kind;
  }
  return found === 'none' ? stitchesByHemostasis(procedure, tables) : found;
}

/** A suture that stopped the bleeding is none of the skin where the closure says how that was held. */
function stitchesByHemostasis({ closure, hemostasis }: Procedure, tables: Tables): Stitches {
  const sewn = hemostasis?.some((leaf) =>
    rowsIn(tables.hemostasis, leaf).some(({ name }) => name === 'suture'),
  );
  if (sewn !== true || isHeldOtherwise(closure, tables)) return 'none';
  return closure === undefined ? 'unknown' : 'removable';
}

/** Whether glue, strips or something else than stitches holds the skin. */
const isHeldOtherwise = (closure: readonly Closure[] | undefined, { closures }: Tables): boolean =>
  (closure ?? []).some(({ how }) =>
    rowsIn(closures, how).some(
      ({ stitched, name }) => !stitched && name !== 'none' && name !== 'second intention',
    ),
  );

/** How many stitches have to come out; undefined where the note does not count each of them. */
export function removableStitches({ closure = [] }: Procedure, tables: Tables): number | undefined {
  const rows = closure.filter((one) => !isDeep(one, tables) && !isGone(stitchesIn(one, tables)));
  let sum = 0;
  for (const one of rows) {
    if (one.count?.value === undefined || isRunning(one)) return undefined;
    sum += one.count.value;
  }
  return sum === 0 ? undefined : sum;
}

const isGone = (stitches: Stitches): boolean => stitches === 'none' || stitches === 'absorbable';

/** What a word for the closure says of stitches: of several words the one that has some. */
function wayIn(how: Closure['how'], { closures }: Tables): ClosureRow | undefined {
  const rows = rowsIn(closures, how);
  return rows.find(({ stitched }) => stitched) ?? rows[0];
}

function stitchesIn({ how, material, technique, count }: Closure, tables: Tables): Stitches {
  const way = wayIn(how, tables);
  // Without a material the word for the closure alone says enough; a longer text may name one.
  const named = tables.closures.find(how?.value ?? '') === undefined ? (material ?? how) : material;
  const used = materialIn(named?.value, tables);
  if (used !== undefined) return used.absorbable === true ? 'absorbable' : 'removable';
  if (way !== undefined) return way.stitched ? 'removable' : 'none';
  return [material?.value, technique, count].every((said) => said === undefined) ? 'unknown' : 'removable';
}

const running = /\b(?:running|continuous|subcuticular|locked|locking|whip|baseball)\b/i;

/** Whether a row of stitches is one thread: its count is no number of stitches. */
export const isRunning = ({
  technique,
}: {
  readonly technique?: Closure['technique'] | undefined;
}): boolean => running.test(technique?.value ?? '');

const materialIn = (text: string | undefined, { materials }: Tables): MaterialRow | undefined =>
  text === undefined ? undefined : (materials.find(text) ?? phrasesOf(materials).assertedIn(text)[0]);

const siteFactors = (site: SiteRow): readonly Lengthening[] =>
  site.slowHealing ? [{ name: 'a site below the knee', source: 'clinical-handbook', mark: 'Q' }] : [];

const onTheSkinOnly = /\b(topical|cream|ointment|lotion|inhaled|inhaler|nasal|drops)\b/i;

/** What in conditions, medications and age lengthens a window, each thing once. */
function patientFactors(note: Note, visit: IsoDate, { lengthening }: Tables): readonly Lengthening[] {
  const said = [...(note.patient?.conditions ?? []), ...(note.patient?.medications ?? [])].flatMap(
    ({ value }) =>
      value === undefined || onTheSkinOnly.test(value) ? [] : phrasesOf(lengthening).assertedIn(value),
  );
  const years = ageAt(note, visit);
  const aged = lengthening.rows.filter(
    ({ fromYears }) => fromYears !== undefined && (years ?? 0) >= fromYears,
  );
  return [...new Set([...said, ...aged])];
}

/** Completed years at the visit; undefined where neither age nor birth is known. */
function ageAt({ patient }: Note, visit: IsoDate): number | undefined {
  const born = patient?.born?.value;
  if (born !== undefined)
    return Number(visit.slice(0, 4)) - Number(born.slice(0, 4)) - (visit.slice(5) < born.slice(5) ? 1 : 0);
  const months = patient?.age?.value?.months;
  return months === undefined ? undefined : Math.floor(months / 12);
}

/**
 * The window of suture removal at a site: the practice's own where it has one, as it set it; otherwise the row that is
 * proposed for the site's group. Each of at most two steps of lengthening, one factor or several, starts the window where it
 * ended and adds the same days again at its end. Undefined where no source has a row.
 */
export function sutureWindow(
  visit: IsoDate,
  site: SiteRow,
  factors: readonly Lengthening[],
  tables: Tables,
): SutureWindow | undefined {
  const published = tables.sutureWindows.filter(({ group }) => group === site.group);
  const own = tables.practiceWindows.findLast((window) => isPartOf(site, window.site));
  const usual = own ?? published.find(({ proposed }) => proposed === true);
  if (usual === undefined) return undefined;
  const origin: Sourced =
    'mark' in usual
      ? { source: usual.source, mark: usual.mark }
      : { source: 'practice-file', mark: 'format' };
  const lengthens = own === undefined && (published[0]?.lengthens ?? true);
  const counted = lengthens ? factors.slice(0, 2) : [];
  const steps = counted.length;
  const days = lengthened(usual, steps, tables.lengtheningStep);
  const all: readonly DaySpan[] = [usual, ...published];
  return {
    kind: 'window',
    from: addDays(visit, days.from),
    to: addDays(visit, days.to),
    days,
    kindOfDays: own !== undefined ? 'own' : steps > 0 ? 'lengthened' : 'usual',
    widest: {
      from: Math.min(...all.map(({ from }) => from)),
      to: Math.max(...all.map(({ to }) => to)) + steps * tables.lengtheningStep,
    },
    ...originOf(origin, counted),
    reason: reasonOf(site, usual, days, factors.length > 0 && lengthens ? factors : [], own !== undefined),
    steps: stepsOf(site, usual, origin, { factors, lengthens, days, published, own: own !== undefined }),
  };
}

/** Where the days are from: those of a lengthened window are in neither source, since they are made of both. */
const originOf = (origin: Sourced, counted: readonly Lengthening[]): Sourced =>
  counted.length === 0 ? origin : { source: 'lengthened-window', mark: weakest([origin, ...counted]) };

function lengthened({ from, to }: DaySpan, steps: number, step: number): DaySpan {
  return steps === 0 ? { from, to } : { from: to + (steps - 1) * step, to: to + steps * step };
}

const marks: readonly Mark[] = ['M', 'common', 'Q2', 'Q', 'format'];

/** How sure the whole is: as sure as its least sure part. */
const weakest = (parts: readonly Sourced[]): Mark =>
  marks.find((mark) => parts.some((part) => part.mark === mark)) ?? 'M';

interface Working {
  readonly own: boolean;
  readonly factors: readonly Lengthening[];
  readonly lengthens: boolean;
  readonly days: DaySpan;
  readonly published: readonly (DaySpan & Sourced)[];
}

function stepsOf(
  site: SiteRow,
  usual: DaySpan,
  origin: Sourced,
  { factors, lengthens, days, published, own }: Working,
): readonly WindowStep[] {
  const whose = own ? ', the practice’s own window' : '';
  const base = { text: `${site.name}: stitches out ${span(usual)} after the procedure${whose}`, ...origin };
  const others = published.filter(({ from, to }) => from !== usual.from || to !== usual.to);
  const told = factors.map((factor) => ({
    text: own
      ? `${factor.name} makes the wound heal late; the practice’s own window is used as it is`
      : lengthens
        ? `${factor.name} makes the wound heal late`
        : `${factor.name} does not lengthen a window of the face, where late removal leaves tracks`,
    source: factor.source,
    mark: factor.mark,
  }));
  const result =
    lengthens && factors.length > 0
      ? [
          {
            text: `so lengthened to ${span(days)} after the procedure`,
            source: 'suture-handbook',
            mark: 'Q' as const,
          },
        ]
      : [];
  const differing = others.map((other) => ({
    text: `another source: ${span(other)}`,
    source: other.source,
    mark: other.mark,
  }));
  return [base, ...told, ...result, ...differing];
}

function reasonOf(
  site: SiteRow,
  usual: DaySpan,
  days: DaySpan,
  factors: readonly Lengthening[],
  own: boolean,
): string {
  const base = `${site.name}: stitches out ${span(days)} after the procedure`;
  if (own) return `${base}, the practice’s own window.`;
  if (factors.length === 0) return `${base}.`;
  const names = factors.map(({ name }) => name).join(' and ');
  return `${base}, lengthened from ${span(usual)} because of ${names}.`;
}

/** The word for a window, in front of its days. */
export const windowWord: Readonly<Record<SutureWindow['kindOfDays'], string>> = {
  usual: 'usual',
  lengthened: 'lengthened window',
  own: 'the practice’s own window',
};

const span = ({ from, to }: DaySpan): string =>
  from === to ? `${from} ${from === 1 ? 'day' : 'days'}` : `${from} to ${to} days`;

const inside = (...regions: readonly SiteRow['region'][]): ((site: SiteRow) => boolean) => {
  const wanted = new Set(regions);
  return ({ region }) => wanted.has(region);
};
const digitOf =
  (...regions: readonly SiteRow['region'][]): ((site: SiteRow) => boolean) =>
  ({ region, digit }) =>
    digit !== undefined && regions.includes(region);
const named = (...names: readonly string[]): ((site: SiteRow) => boolean) => {
  const wanted = new Set(names);
  return ({ name }) => wanted.has(name);
};

/** Sites whose parts have names of their own, that neither end in theirs nor share a region. */
const wholes: ReadonlyMap<string, (site: SiteRow) => boolean> = new Map([
  ['trunk', inside('chest', 'abdomen', 'back')],
  ['finger', digitOf('hand')],
  ['toe', digitOf('foot')],
  ['digit', digitOf('hand', 'foot')],
  ['fingernail', (site) => digitOf('nail')(site) && site.group === 'fingertip'],
  ['toenail', (site) => digitOf('nail')(site) && site.group === 'foot'],
  ['lower leg', named('shin', 'calf', 'fibular head')],
  ['ankle', named('medial malleolus', 'lateral malleolus', 'achilles')],
  ['penis', named('foreskin', 'coronal sulcus')],
]);

/** Whether a site is the place that a practice named, or a part of it: `malar cheek` of `cheek`, `shin` of `leg`. */
const isPartOf = (site: SiteRow, place: string): boolean =>
  site.name === place ||
  site.region === place ||
  site.group === place ||
  site.name.endsWith(` ${place}`) ||
  wholes.get(place)?.(site) === true;

/** A day for taking stitches out. */
export interface SutureDay {
  /** The first working day from the start of the window on. */
  readonly day: IsoDate;
  /** Whether that day is in the window; if not, the practice is closed on each of its days. */
  readonly inside: boolean;
}

/** The first working day of a window; never before the window, and said where none is inside. */
export function sutureDay(window: Pick<SutureWindow, 'from' | 'to'>, closed: ClosedDays): SutureDay {
  const day = nextOpenDay(window.from, closed);
  return { day, inside: day <= window.to };
}

import { readSite, type SiteReading } from '../../note/words/site.ts';
import type { Note, Procedure } from '../../note/generated/types.ts';
import type { Language } from '../../note/words/language.ts';
import type { Tables } from '../../practice/tables.ts';
import { said } from '../from-note.ts';
import { areasOf, type Area } from './body/areas.ts';
import { views } from './body/views.ts';
import { drawPlaces, type Spot } from './place-drawing.ts';
import { placeWordings, type NotPlaced } from './place-words.ts';
import type { Picture, PictureOptions } from './picture.ts';

/** What of a note is placed, and in whose words. */
export interface PlaceOptions extends PictureOptions {
  readonly language?: Language;
  /** Indices of the procedures that are shown, from 0; all where nothing is said. */
  readonly only?: readonly number[];
  /** Whether the genital and anal area is drawn; if not, what is there is not named either. */
  readonly intimate?: boolean;
  /** The number of a procedure by its index; its place in the note where nothing is said. */
  readonly numberOf?: (index: number) => number;
  /** What a site is called; as in the note where nothing is said. */
  readonly nameOf?: (index: number) => string | undefined;
}

type OneSide = 'left' | 'right';

interface Placed {
  readonly index: number;
  readonly name: string;
  readonly start: number;
  readonly spots: readonly Spot[];
  readonly why: NotPlaced | undefined;
}

/**
 * Where on the body the procedures of a note are: each a number at an area, never at a point. What the words of the
 * note leave open is shown wherever it may be; what can't be placed is named below. Undefined where nothing is shown.
 */
export function placePicture(note: Note, tables: Tables, options: PlaceOptions = {}): Picture | undefined {
  const { id = 'place', linked = false, language = 'en', only, intimate = true, nameOf } = options;
  const { numberOf = (index: number) => index + 1 } = options;
  const { title, hint, unnamed, head, not, viewOf } = placeWordings[language];
  const placed = (note.procedures ?? [])
    .map((procedure, index) => placedOf(procedure, index, tables))
    .map((one) => ({ ...one, name: nameOf?.(one.index) ?? (one.name === '' ? unnamed : one.name) }))
    .filter(({ index }) => only?.includes(index) !== false)
    .filter(({ spots }) => intimate || spots.every(({ view }) => view !== 'intimate'));
  if (placed.length === 0) return undefined;
  const shownOn = ({ spots, why }: Placed): string =>
    why === undefined ? [...new Set(spots.map(({ view, of }) => viewOf(view, of)))].join('; ') : not[why];
  const rows = placed.map((one) => [String(numberOf(one.index)), one.name, shownOn(one)]);
  const alternative = rows.map(([number, name, where]) => `${number}. ${name}: ${where}.`).join(' ');
  const marks = placed.map(({ index, name, start }) => ({
    ...{ procedure: index, start, number: numberOf(index) },
    name: `${numberOf(index)}. ${name}`,
  }));
  const spots = placed.flatMap((one) => one.spots);
  const drawing = { id, linked, language, title, alternative: `${hint} ${alternative}`, marks };
  return {
    title,
    hint,
    alternative: drawing.alternative,
    svg: spots.length === 0 ? '' : drawPlaces(spots, drawing),
    table: { head, rows },
    notDrawn: placed.flatMap((one) =>
      one.why === undefined ? [] : [`${numberOf(one.index)}. ${one.name}: ${not[one.why]}.`],
    ),
  };
}

function placedOf({ site, head }: Procedure, index: number, tables: Tables): Placed {
  const reading = site?.value === undefined ? undefined : readSite(site.value, tables.sites);
  const found = reading === undefined ? 'unknown' : spotsOf(reading, index);
  const placed = typeof found === 'string' ? { spots: [], why: found } : { spots: found, why: undefined };
  return { index, name: said(site) ?? '', start: (site ?? head).start, ...placed };
}

/** The spots of a site, or why it has none. */
function spotsOf(reading: SiteReading, procedure: number): readonly Spot[] | NotPlaced {
  const { base, side, contradiction } = reading;
  if (contradiction !== undefined) return 'contradiction';
  const areas = onMeantView(areasOf(base.name), reading);
  if (areas.length === 0) return 'not-drawn';
  const sides: readonly OneSide[] =
    side === 'both' ? ['left', 'right'] : side === 'left' || side === 'right' ? [side] : [];
  const spots =
    base.side === 'never'
      ? grouped(areas, procedure, undefined, (area) => area)
      : sides.length > 0
        ? sides.flatMap((one) => grouped(areas, procedure, one, (area) => onSide(area, one)))
        : grouped(
            areas.filter(({ view }) => views[view].left !== undefined),
            procedure,
            undefined,
            (area) => inMiddle(area, side === 'midline'),
          );
  if (side === undefined && base.side === 'needed') return 'no-side';
  return spots.length === 0 ? 'no-side' : spots;
}

/** Of several views the one that the words of the site say, where they say one. */
function onMeantView(areas: readonly Area[], { qualifiers }: SiteReading): readonly Area[] {
  const meant = areas.filter(({ view }) => views[view].surfaces.some((word) => qualifiers.includes(word)));
  return meant.length === 0 ? areas : meant;
}

function grouped(
  areas: readonly Area[],
  procedure: number,
  side: OneSide | undefined,
  placed: (area: Area) => Area,
): readonly Spot[] {
  const names = [...new Set(areas.map(({ view }) => view))];
  return names.map((view) => ({
    ...{ procedure, view },
    of: views[view].left === undefined ? side : undefined,
    areas: areas.filter((area) => area.view === view).map(placed),
  }));
}

/** An area as it is on the drawing for one side of the patient. */
function onSide(area: Area, side: OneSide): Area {
  const { left, width, flipped = false } = views[area.view];
  if (left === undefined)
    return (side === 'right') === flipped ? area : { ...area, x: width - area.x, angle: -area.angle };
  return (side === 'left') === (left === 1) ? area : { ...area, x: -area.x, angle: -area.angle };
}

/** An area of both sides together; of the midline alone where that is what the words say. */
const inMiddle = (area: Area, narrow: boolean): Area => ({
  ...area,
  ...{ x: 0, rx: narrow ? area.rx : area.x + area.rx, angle: 0 },
});

import { sutureRemoval, sutureWindow, type SutureWindow } from '../../followup/sutures.ts';
import type { Note, Procedure } from '../../note/generated/types.ts';
import { readSite, type SiteReading } from '../../note/words/site.ts';
import type { Tables } from '../../practice/tables.ts';
import type { SiteRow } from '../../reference/sites.ts';
import type { Sourced } from '../../reference/types.ts';
import type { Row, Section } from './section.ts';

const dressable: Readonly<Record<SiteRow['dressable'], string | undefined>> = {
  yes: undefined,
  hair: 'Hair: an ordinary dressing does not hold; ointment does.',
  fold: 'A fold: a dressing comes loose and the skin stays damp.',
  no: 'Wet or open: no dressing holds.',
};

/** What follows from a site, whoever the patient is. */
const traits: readonly ((site: SiteRow, sources: Tables['advice']['sites']) => Row | undefined)[] = [
  ({ dressable: how }, sources) => row(dressable[how], sources.dressable),
  ({ friction }, sources) =>
    row(friction === undefined ? undefined : `Rubbed by: ${friction}.`, sources.friction),
  ({ slowHealing }) =>
    row(slowHealing ? 'Below the knee: heals slowly, and stitches stay longer.' : undefined, {
      source: 'clinical-handbook',
      mark: 'Q',
    }),
  // The source does not name the jawline, which is from memory.
  ({ keloidProne, region }, sources) =>
    row(
      keloidProne ? 'Raised scars are common here.' : undefined,
      region === 'face' ? {} : sources.keloidProne,
    ),
  ({ danger }) => row(danger && `Close under the skin: ${danger.structure}.`, danger),
  ({ nearEye }, sources) =>
    row(nearEye ? 'Near the eye: a chemical can run into it.' : undefined, sources.nearEye),
  ({ vague }) => row(vague ? 'A large area: say more, so that the place is found again.' : undefined),
];

const row = (text: string | undefined, { source, mark }: Partial<Sourced> = {}): Row | undefined =>
  text === undefined ? undefined : { text, source, mark };

/** What follows from the words of a site; undefined where no base site is known in them. */
export function siteSections(
  text: string,
  note: Note | null,
  procedure: Procedure | undefined,
  tables: Tables,
): readonly Section[] {
  const reading = readSite(text, tables.sites);
  if (reading === undefined) return [];
  const { base, side } = reading;
  const said = side === undefined && base.side === 'needed' ? '; the side is not said' : '';
  const rows = traits.flatMap((trait) => trait(base, tables.advice.sites) ?? []);
  return [
    { title: `${base.name} (${base.region}${said})`, rows },
    ...(base.endArtery
      ? [{ title: 'Epinephrine where end arteries supply the skin', rows: tables.advice.endArtery }]
      : []),
    ...stitches(note, procedure, reading, tables),
  ];
}

function stitches(
  note: Note | null,
  procedure: Procedure | undefined,
  reading: SiteReading,
  tables: Tables,
): readonly Section[] {
  const own = windowOf(note, procedure, reading, tables);
  const window = own ?? sutureWindow('2000-01-01', reading.base, [], tables);
  if (window === undefined) return [];
  const dates =
    own === undefined
      ? []
      : [{ text: `here from ${own.from} to ${own.to}`, source: own.source, mark: own.mark }];
  return [{ title: 'Stitches', rows: [...window.steps, ...dates] }];
}

/** The window of stitches that this procedure has; undefined where it has none, or not all is known. */
export function windowOf(
  note: Note | null,
  procedure: Procedure | undefined,
  reading: SiteReading | undefined,
  tables: Tables,
): SutureWindow | undefined {
  if (note === null || procedure === undefined) return undefined;
  const removal = sutureRemoval(note, procedure, reading, tables);
  return removal.kind === 'window' ? removal : undefined;
}

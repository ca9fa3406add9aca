import type { Note, Procedure } from '../note/generated/types.ts';
import { readSite } from '../note/words/site.ts';
import type { SiteReading } from '../note/words/site.ts';
import type { IsoDate } from '../note/values/values.ts';
import { plainWord } from '../note/words/word-table.ts';
import type { Tables } from '../practice/tables.ts';
import { stateOn, type DueItem, type Place, type Planned, type Undated } from './due.ts';
import { eventItems, eventsOf, type Happened } from './events.ts';
import { homeItems, scarItems } from './home-care.ts';
import { specimenItems } from './results.ts';
import { stitchesItem } from './stitches.ts';

export type { DueItem, DueKind, Planned, Undated } from './due.ts';

/** All that falls due after a visit, whatever the day. */
export interface Plan {
  readonly planned: readonly Planned[];
  /** What has to be done, and nobody can say when. */
  readonly undated: readonly Undated[];
}

/** What falls due after a visit, on one day. */
export interface Schedule {
  readonly items: readonly DueItem[];
  readonly undated: readonly Undated[];
}

export type SiteOf = (procedure: Procedure) => SiteReading | undefined;

/** Everything that falls due after a visit, in its state on a day, in the order of time. */
export function scheduleOf(note: Note, tables: Tables, today: IsoDate): Schedule {
  const { planned, undated } = planOf(note, tables);
  return { items: onDay(planned, today), undated };
}

/** What a day knows of, in the order of time. */
function onDay(planned: readonly Planned[], today: IsoDate): readonly DueItem[] {
  return planned
    .flatMap((one) => {
      const state = stateOn(one, today);
      return state === undefined ? [] : [{ ...one, state }];
    })
    .sort((a, b) => (a.from === b.from ? 0 : a.from < b.from ? -1 : 1));
}

/** What the words of a procedure's site say. */
const siteReader =
  (tables: Tables): SiteOf =>
  ({ site }) =>
    site?.value === undefined ? undefined : readSite(site.value, tables.sites);

/**
 * What falls due after a visit, from what the note records: care at home, stitches, each specimen until it is closed,
 * events until they have ended, return visits, and a look at scars where that is wanted.
 */
export function planOf(note: Note, tables: Tables, siteOf: SiteOf = siteReader(tables)): Plan {
  const visit = note.visit?.value?.date;
  const happened = eventsOf(note, tables);
  const home = visit === undefined ? [] : [homeItems(note, visit, tables)];
  const scars =
    visit === undefined ? [] : [{ planned: scarItems(note, visit, happened, tables), undated: [] }];
  return joined([...home, ...staffPlans(note, happened, tables, siteOf), ...scars]);
}

/**
 * The part of `planOf` that is for the practice to do and can be late on a day: not what is done at home, nor looks at
 * scars, nor what was done for a specimen by that day.
 */
export const dutiesOf = (note: Note, tables: Tables, siteOf: SiteOf, today: IsoDate): readonly Planned[] =>
  staffPlans(note, eventsOf(note, tables), tables, siteOf, today).flatMap(({ planned }) => planned);

function staffPlans(
  note: Note,
  happened: readonly Happened[],
  tables: Tables,
  siteOf: SiteOf,
  unlessDoneBy?: IsoDate,
): readonly Plan[] {
  const procedures = note.procedures ?? [];
  const plans: Plan[] = [];
  for (const [index, procedure] of procedures.entries())
    plans.push(...procedurePlans(note, procedure, index, happened, tables, siteOf, unlessDoneBy));
  if (happened.length > 0) plans.push(eventItems(happened, placesOf(procedures), tables));
  return plans;
}

const joined = (plans: readonly Plan[]): Plan => ({
  planned: plans.flatMap(({ planned }) => planned),
  undated: plans.flatMap(({ undated }) => undated),
});

function procedurePlans(
  note: Note,
  procedure: Procedure,
  index: number,
  happened: readonly Happened[],
  tables: Tables,
  siteOf: SiteOf,
  unlessDoneBy: IsoDate | undefined,
): readonly Plan[] {
  const place: Place = { procedure: index, site: procedure.site?.value, label: undefined };
  const stitches = stitchesItem(note, procedure, place, happened, siteOf(procedure), tables);
  const specimens = (procedure.specimen ?? []).map((specimen) =>
    specimenItems(note, specimen, { ...place, label: specimen.label?.value }, tables, unlessDoneBy),
  );
  const plans = procedure.keys.has('specimen') ? specimens : unmentioned(procedure, place, tables);
  if (stitches === undefined) return plans;
  return [
    'why' in stitches ? { planned: [], undated: [stitches] } : { planned: [stitches], undated: [] },
    ...plans,
  ];
}

/** Tissue that was taken and of which the note says nothing more. */
function unmentioned({ method, head }: Procedure, place: Place, { methods }: Tables): readonly Plan[] {
  const row = method?.value === undefined ? undefined : methods.find(method.value);
  if (row?.takesTissue !== true) return [];
  const why = `tissue was taken (${row.name}), and the note has no specimen`;
  return [{ planned: [], undated: [{ ...place, kind: 'specimen to send', why, at: head }] }];
}

/** Finds the procedure that an event concerns by its number, from 1, or by the label of one of its specimens. */
function placesOf(procedures: readonly Procedure[]): (concerns: string) => Place {
  const known = new Map<string, Place>();
  for (const [index, { site, specimen }] of procedures.entries()) {
    const place = { procedure: index, site: site?.value, label: undefined };
    for (const { label } of specimen ?? [])
      if (label?.value !== undefined) known.set(plainWord(label.value), place);
    for (const word of [String(index + 1), `procedure ${index + 1}`])
      if (!known.has(word)) known.set(word, place);
  }
  const only: Place = {
    procedure: procedures.length === 1 ? 0 : undefined,
    site: undefined,
    label: undefined,
  };
  const otherwise = procedures.length === 1 ? { ...only, site: procedures[0]!.site?.value } : only;
  return (concerns) => known.get(concerns) ?? otherwise;
}

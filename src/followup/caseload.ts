import type { Leaf } from '../note/tree/leaf.ts';
import { Lines } from '../note/text/lines.ts';
import type { Note } from '../note/generated/types.ts';
import type { Source } from '../note/read.ts';
import type { Range } from '../note/tree/tree.ts';
import type { IsoDate } from '../note/values/values.ts';
import { plainWord } from '../note/words/word-table.ts';
import type { Tables } from '../practice/tables.ts';
import { daysBetween } from '../note/values/days.ts';
import { dayNotSaid, stateOn, type DueKind, type DueState, type Planned, type Undated } from './due.ts';
import { planOf } from './schedule.ts';
import { inSlices, sortInSlices, type Pace } from './slices.ts';

/** Where in a note something is: offsets, and the line from 0. */
export interface Spot extends Range {
  readonly line: number;
}

type Kept = Pick<
  Planned,
  | 'kind'
  | 'site'
  | 'label'
  | 'from'
  | 'to'
  | 'proposed'
  | 'until'
  | 'fixed'
  | 'begins'
  | 'done'
  | 'urgent'
  | 'atHome'
  | 'what'
>;

/** What has to be known of one note for telling what is open; plain data that no day changes. */
export interface NoteFacts {
  readonly patient: string | undefined;
  readonly visit: IsoDate | undefined;
  /** The patient's date of birth, and where it is. */
  readonly born: IsoDate | undefined;
  readonly bornAt: Spot | undefined;
  /** The day from which on nothing of it is open; undefined where that day has not come. */
  readonly closedFrom: IsoDate | undefined;
  /** Why the note, or a part of it, can't be read. */
  readonly unread: string | undefined;
  readonly labels: readonly (Spot & { readonly label: string })[];
  readonly planned: readonly (Kept & Spot)[];
  readonly undated: readonly (Pick<Undated, 'kind' | 'site' | 'label' | 'why'> & Spot)[];
}

/** The facts of a note that could not even be loaded. */
export const unreadFacts = (why: string): NoteFacts => ({
  patient: undefined,
  visit: undefined,
  born: undefined,
  bornAt: undefined,
  closedFrom: undefined,
  unread: why,
  labels: [],
  planned: [],
  undated: [],
});

/** Why a note was not looked at in full; undefined where all of it was. */
export const unreadWhy = ({ damage }: Pick<Source<Note>, 'damage'>): string | undefined =>
  damage.length > 0 ? 'a part of it is written so that it cannot be read' : undefined;

/** The facts of a note. */
export function factsOf(source: Pick<Source<Note>, 'text' | 'value' | 'damage'>, tables: Tables): NoteFacts {
  const note = source.value;
  if (note === null) return unreadFacts('there is no note in this file that can be read');
  const lines = new Lines(source.text);
  const spot = ({ start, end }: Range): Spot => ({ start, end, line: lines.at(start).line });
  const plan = planOf(note, tables);
  const planned = plan.planned.filter(({ atHome }) => !atHome);
  const undated = plan.undated.filter(({ kind }) => kind !== 'dressing change');
  const unread = unreadWhy(source);
  return {
    patient: note.patient?.id?.value,
    visit: note.visit?.value?.date,
    ...birthOf(note.patient?.born, spot),
    closedFrom: unread === undefined && undated.length === 0 ? closedFrom(planned) : undefined,
    unread,
    labels: (note.procedures ?? []).flatMap(({ specimen = [] }) =>
      specimen.flatMap(({ label }) =>
        label?.value === undefined ? [] : [{ label: label.value, ...spot(label) }],
      ),
    ),
    planned: planned.map(
      ({ kind, site, label, from, to, proposed, until, fixed, begins, done, urgent, atHome, what, at }) => ({
        ...{ kind, site, label, from, to, proposed, until, fixed, begins, done, urgent, atHome, what },
        ...spot(at),
      }),
    ),
    undated: undated.map(({ kind, site, label, why, at }) => ({ kind, site, label, why, ...spot(at) })),
  };
}

function birthOf(
  leaf: Leaf<IsoDate> | undefined,
  spot: (range: Range) => Spot,
): Pick<NoteFacts, 'born' | 'bornAt'> {
  if (leaf?.value === undefined) return { born: undefined, bornAt: undefined };
  return { born: leaf.value, bornAt: spot(leaf) };
}

/** The day on which the last of several things was done; undefined where one of them is not. */
function closedFrom(planned: readonly Planned[]): IsoDate | undefined {
  let last: IsoDate = dayNotSaid;
  for (const { done } of planned) {
    if (done === undefined) return undefined;
    if (done > last) last = done;
  }
  return last;
}

/** What is to be done about an open item. */
export type OpenGroup = 'look' | 'send' | 'results' | 'tell' | 'next' | 'stitches' | 'calls';

/** One thing that is open. */
export interface OpenItem extends Spot {
  readonly group: OpenGroup;
  readonly path: string;
  readonly patient: string | undefined;
  readonly visit: IsoDate | undefined;
  readonly kind: DueKind | 'note to look at';
  readonly site: string | undefined;
  readonly label: string | undefined;
  readonly what: string | undefined;
  /** Undefined where nobody can say when. */
  readonly from: IsoDate | undefined;
  readonly to: IsoDate | undefined;
  readonly proposed: IsoDate | undefined;
  /** Whether the note plans the proposed day. */
  readonly fixed: boolean;
  readonly state: Exclude<DueState, 'done'>;
  readonly urgent: boolean;
  /** Days past the last day that was in order; 0 where it is not overdue. */
  readonly overdue: number;
  /** How loud it is said, from 0 to 3: louder the longer it is overdue, and for what can't wait. */
  readonly loudness: 0 | 1 | 2 | 3;
}

const groups: Readonly<Record<DueKind, OpenGroup>> = {
  'dressing change': 'calls',
  washing: 'calls',
  'specimen to send': 'send',
  result: 'results',
  'telling the patient': 'tell',
  'next step': 'next',
  'suture removal': 'stitches',
  'event outcome': 'calls',
  'return visit': 'calls',
  'scar check': 'calls',
};

/** The groups in the order in which they are shown. */
export const groupOrder: readonly OpenGroup[] = [
  'look',
  'tell',
  'results',
  'send',
  'next',
  'stitches',
  'calls',
];

/** From how many days overdue on something is said louder, and loudest. */
const louder = 14;
const loudest = 56;

function loudnessOf(overdue: number, urgent: boolean): OpenItem['loudness'] {
  if (overdue >= loudest || (urgent && overdue > 0)) return 3;
  if (overdue >= louder) return 2;
  return overdue > 0 || urgent ? 1 : 0;
}

/** The facts of many notes by their paths. A file that changed is set again; nothing else is looked at. */
export class Caseload {
  private readonly notes = new Map<string, NoteFacts>();

  /** @param nameOf what a path is called in words about another note */
  constructor(private readonly nameOf: (path: string) => string = (path) => path) {}

  set(path: string, facts: NoteFacts): void {
    this.notes.set(path, facts);
  }

  delete(path: string): void {
    this.notes.delete(path);
  }

  get size(): number {
    return this.notes.size;
  }

  /** Everything that is open on a day: by group, then what is loudest and longest overdue, then by date and path. */
  openOn(today: IsoDate): readonly OpenItem[] {
    const found = new Found(today, this.nameOf);
    for (const [path, facts] of this.notes) found.add(path, facts);
    return found.groups().flatMap((group) => group.sort(inOrder));
  }

  /** The same, while others get their turn. What changes meanwhile may be in it or not. */
  async openInSlices(today: IsoDate, pace: Pace): Promise<readonly OpenItem[]> {
    const found = new Found(today, this.nameOf);
    await inSlices(
      this.notes,
      ([path, facts]) => {
        found.add(path, facts);
      },
      pace,
    );
    const groups: (readonly OpenItem[])[] = [];
    for (const group of found.groups()) groups.push(await sortInSlices(group, inOrder, pace));
    return groups.flat();
  }
}

/** What was found to be open on one day in the notes that were looked at so far. */
class Found {
  private readonly byGroup = new Map<OpenGroup, OpenItem[]>(groupOrder.map((group) => [group, []]));
  /** The notes of each patient and day, the last one first. */
  private readonly byDay = new Map<string, Known>();
  /** The notes of each chart number that give a date of birth, the last one first. */
  private readonly byPatient = new Map<string, Known>();

  constructor(
    private readonly today: IsoDate,
    private readonly nameOf: (path: string) => string,
  ) {}

  add(path: string, facts: NoteFacts): void {
    for (const item of openIn(path, facts, this.today)) this.byGroup.get(item.group)?.push(item);
    const { patient, visit, born } = facts;
    if (patient === undefined) return;
    const name = plainWord(patient);
    if (born !== undefined) this.byPatient.set(name, { path, facts, before: this.byPatient.get(name) });
    if (visit === undefined) return;
    const day = `${visit} ${name}`;
    this.byDay.set(day, { path, facts, before: this.byDay.get(day) });
  }

  /** What is open of each group, the groups in their order. */
  groups(): readonly OpenItem[][] {
    this.byGroup.get('look')?.push(...this.sameLabels(), ...this.otherBirths());
    return [...this.byGroup.values()];
  }

  /** Containers of one patient and one day that bear the same label in two notes: no result can be told apart. */
  private sameLabels(): readonly OpenItem[] {
    const items: OpenItem[] = [];
    for (const last of this.byDay.values())
      if (last.before !== undefined) items.push(...sameLabelsOf(chainOf(last), this.nameOf));
    return items;
  }

  /** Notes of one chart number that give different dates of birth: one of them may be in the chart of somebody else. */
  private otherBirths(): readonly OpenItem[] {
    const items: OpenItem[] = [];
    for (const last of this.byPatient.values())
      if (last.before !== undefined) items.push(...otherBirthsOf(chainOf(last), this.nameOf));
    return items;
  }
}

interface Known {
  readonly path: string;
  readonly facts: NoteFacts;
  /** The one before it of the same patient, or of the same patient and day; most have none. */
  readonly before: Known | undefined;
}

/** Notes of one patient, the first one first. */
function chainOf(last: Known): readonly Known[] {
  const chain: Known[] = [];
  for (let one: Known | undefined = last; one !== undefined; one = one.before) chain.push(one);
  return chain.reverse();
}

/** The labels that are in more than one of several notes of one patient and day. */
function sameLabelsOf(notes: readonly Known[], nameOf: (path: string) => string): readonly OpenItem[] {
  const used = new Map<string, (Known & { readonly spot: NoteFacts['labels'][number] })[]>();
  for (const note of notes)
    for (const spot of note.facts.labels) {
      const label = plainWord(spot.label);
      used.set(label, [...(used.get(label) ?? []), { ...note, spot }]);
    }
  return [...used.values()].flatMap((same) => {
    const paths = new Set(same.map(({ path }) => path));
    if (paths.size < 2) return [];
    return same.map(({ path, facts, spot }) => {
      const others = namesOf(
        [...paths].filter((other) => other !== path),
        nameOf,
      );
      return look(path, facts, spot, `label ${spot.label} of this patient and day is in ${others} too`);
    });
  });
}

/** What some notes are called; of many the first few, and how many more there are. */
function namesOf(paths: readonly string[], nameOf: (path: string) => string): string {
  const more = paths.length > 3 ? ` and ${paths.length - 3} others` : '';
  return `${paths.slice(0, 3).map(nameOf).join(', ')}${more}`;
}

/** Of several notes of one chart number those whose date of birth is not that of most; all where no date is. */
function otherBirthsOf(notes: readonly Known[], nameOf: (path: string) => string): readonly OpenItem[] {
  const byDate = new Map<IsoDate, Known[]>();
  for (const note of notes) {
    const date = note.facts.born ?? '';
    const same = byDate.get(date);
    if (same === undefined) byDate.set(date, [note]);
    else same.push(note);
  }
  if (byDate.size < 2) return [];
  const [first, second] = [...byDate.values()].sort((a, b) => b.length - a.length);
  const common = first?.length === second?.length ? undefined : first;
  return [...byDate].flatMap(([date, same]) => {
    if (same === common) return [];
    const others = namesOf(
      notes.filter(({ facts }) => facts.born !== date).map(({ path }) => path),
      nameOf,
    );
    return same.map(({ path, facts }) => {
      const what = `chart number ${facts.patient ?? ''} is born on ${date} here, and on another day in ${others}`;
      return look(path, facts, facts.bornAt ?? top, what);
    });
  });
}

const top: Spot = { start: 0, end: 0, line: 0 };

const look = (path: string, facts: NoteFacts, { start, end, line }: Spot, what: string): OpenItem => ({
  ...{ group: 'look', path, patient: facts.patient, visit: facts.visit, kind: 'note to look at' },
  ...{ site: undefined, label: undefined, what, from: undefined, to: undefined, proposed: undefined },
  ...{ fixed: false, state: 'due', urgent: false, overdue: 0, loudness: 1, start, end, line },
});

const nothing: readonly OpenItem[] = [];

/** What is open in one note on a day, in the order in which the note has it. */
export function openIn(path: string, facts: NoteFacts, today: IsoDate): readonly OpenItem[] {
  const { closedFrom } = facts;
  if (closedFrom !== undefined && closedFrom <= today) return nothing;
  const { patient, visit, unread } = facts;
  const items: OpenItem[] = unread === undefined ? [] : [look(path, facts, top, unread)];
  for (const one of facts.planned) {
    const state = stateOn(one, today);
    if (state === undefined || state === 'done') continue;
    const { kind, site, label, what, from, to, proposed, fixed, urgent, start, end, line } = one;
    const overdue = state === 'overdue' ? daysBetween(to, today) : 0;
    const loudness = loudnessOf(overdue, urgent && state !== 'later');
    items.push({
      ...{ group: groups[kind], path, patient, visit, kind, site, label, what, from, to, proposed },
      ...{ fixed, state, urgent, overdue, loudness, start, end, line },
    });
  }
  for (const { why, ...one } of facts.undated)
    items.push({
      ...{ ...one, group: groups[one.kind], path, patient, visit, what: why, state: 'due', urgent: false },
      ...{ from: undefined, to: undefined, proposed: undefined, fixed: false, overdue: 0, loudness: 1 },
    });
  return items;
}

const compare = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1);

/** The order within a group. */
const inOrder = (a: OpenItem, b: OpenItem): number =>
  b.loudness - a.loudness ||
  b.overdue - a.overdue ||
  compare(a.proposed ?? '', b.proposed ?? '') ||
  compare(a.path, b.path) ||
  a.line - b.line;

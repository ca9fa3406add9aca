import type { Note } from '../note/generated/types.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import { phrasesOf } from '../note/words/phrases.ts';
import type { IsoDate } from '../note/values/values.ts';
import type { Tables } from '../practice/tables.ts';
import { addDays } from '../note/values/days.ts';
import { planned, wholeVisit, type Planned, type Undated } from './due.ts';
import type { Happened } from './events.ts';

const wordsForOne: ReadonlyMap<string, number> = new Map([
  ['one', 1],
  ['two', 2],
  ['three', 3],
  ['four', 4],
  ['five', 5],
  ['six', 6],
  ['seven', 7],
]);
const sameDay = /\b(?:same (?:day|evening)|tonight|this evening|bedtime)\b/i;
const nextDay = /\b(?:next|following) (?:morning|day|evening)\b|\btomorrow\b|\ba day\b/i;
const counted = /\b(\d{1,3}|one|two|three|four|five|six|seven)\s*(h|hr|hour|day|d)s?\b/i;

/** Days after the visit on which a dressing comes off, from the practice's words; undefined for words that say no day. */
export function daysToFirstChange(words: string): number | undefined {
  const match = counted.exec(words);
  if (match !== null) {
    const count = wordsForOne.get(match[1]!.toLowerCase()) ?? Number(match[1]);
    return match[2]!.toLowerCase().startsWith('h') ? Math.ceil(count / 24) : count;
  }
  if (nextDay.test(words)) return 1;
  return sameDay.test(words) ? 0 : undefined;
}

/** Whether the note says that nobody helps the patient at home; where it says nothing of it, it does not. */
export const isWithoutHelp = ({ aftercare }: Note, { helpers }: Tables): boolean =>
  aftercare?.helper?.value !== undefined && helpers.find(aftercare.helper.value) !== undefined;

/** What the patient does at home: the first change of the dressing, and washing. */
export function homeItems(
  note: Note,
  visit: IsoDate,
  tables: Tables,
): { readonly planned: readonly Planned[]; readonly undated: readonly Undated[] } {
  const wounds = (note.procedures ?? []).filter(
    ({ method, dressing }) => method !== undefined || dressing !== undefined,
  );
  const covered = wounds.some(({ dressing }) => !isBare(dressing, tables));
  if (wounds.length === 0) return { planned: [], undated: [] };
  const { firstChange } = tables.practice.woundCare;
  const { firstChangeHours } = tables.aftercare;
  const days = firstChange === '' ? Math.ceil(firstChangeHours.value / 24) : daysToFirstChange(firstChange);
  if (days === undefined)
    return {
      planned: [],
      undated: [
        {
          ...wholeVisit,
          kind: 'dressing change',
          why: `the practice says "${firstChange}", and no day can be read from it`,
          at: note.visit ?? note.head,
        },
      ],
    };
  const from = addDays(visit, days);
  const origin =
    firstChange === ''
      ? { source: firstChangeHours.source, mark: firstChangeHours.mark }
      : ({ source: 'practice-file', mark: 'format' } as const);
  const at = note.visit ?? note.head;
  const change = planned(wholeVisit, {
    kind: 'dressing change',
    from,
    to: from,
    proposed: from,
    until: from,
    atHome: true,
    reason: `The first dressing stays until ${firstChange === '' ? 'the next day' : firstChange}.`,
    ...origin,
    at,
  });
  const { washedTo, source, mark } = tables.followUp.homeCare;
  const to = addDays(visit, Math.max(days, washedTo));
  const washing = planned(wholeVisit, {
    kind: 'washing',
    from,
    to,
    proposed: from,
    until: to,
    atHome: true,
    reason: 'From the first change on the wound is washed every day, for one to two weeks.',
    source,
    mark,
    at,
  });
  return { planned: covered ? [change, washing] : [washing], undated: [] };
}

type Dressings = NonNullable<Note['procedures']>[number]['dressing'];

const isBare = (dressing: Dressings, { dressings }: Tables): boolean =>
  dressing !== undefined &&
  dressing.length > 0 &&
  dressing.every(({ value }) => value !== undefined && dressings.find(value)?.name === 'none');

/** What the note says, of the skin or among the conditions, of scars that grow; undefined where it says nothing of them. */
export const scarRiskOf = ({ patient }: Note, { scarRisks }: Tables['followUp']): Leaf<string> | undefined =>
  [...(patient?.skin ?? []), ...(patient?.conditions ?? [])].find(
    ({ value }) =>
      value !== undefined &&
      phrasesOf(scarRisks)
        .mentionsIn(value)
        .some(({ standing }) => standing !== 'denied'),
  );

/** A look at the scar where the note says, of the skin or among the conditions, that the patient is prone to keloids. */
export function scarItems(
  note: Note,
  visit: IsoDate,
  happened: readonly Happened[],
  { followUp }: Tables,
): readonly Planned[] {
  const risk = scarRiskOf(note, followUp);
  if (risk === undefined || (note.procedures ?? []).length === 0) return [];
  const { from: first, to: last, source, mark } = followUp.scarCheck;
  const [from, to] = [addDays(visit, first), addDays(visit, last)];
  const looked = happened.find(
    ({ kind, on }) =>
      (kind === 'wound check' || kind === 'raised scar') && on !== undefined && on >= addDays(from, -14),
  );
  return [
    planned(wholeVisit, {
      kind: 'scar check',
      from,
      to,
      proposed: from,
      until: to,
      done: looked?.on,
      source,
      mark,
      reason: `The note says of the patient: ${risk.text}. A scar that begins to rise is treated early.`,
      at: risk,
    }),
  ];
}

import type { Attempt, Result, Told } from '../note/generated/types.ts';
import { once } from '../note/text/once.ts';
import { remembered } from '../note/text/remembered.ts';
import { phrasesOf, type Mention } from '../note/words/phrases.ts';
import type { Tables } from '../practice/tables.ts';
import type { ContactKind, ContactRow } from '../reference/contact-ways.ts';
import { dayNotSaid, type Day } from './due.ts';

/**
 * What words about telling say: the patient (or who decides for the patient) heard it, somebody tried in vain, another
 * person heard it or took a message, or they do not say whether the patient heard it.
 */
export type Way = 'told' | 'attempt' | 'other-person' | 'unclear';

/** The first of these that a clause says is what the whole text says. */
const order: readonly (Way | 'channel')[] = ['told', 'other-person', 'attempt', 'channel', 'unclear'];

const clauseEnd = /[;.,:()\n]|->|→|\s[-–—/]\s|\s(?:and|then|but|when|later|until|after which|who|&)\s/gi;

/** What words about how a result was told say, read clause by clause. */
export const wayOf = (how: string, tables: Tables): Way => waysIn(tables)(how);

const waysIn = once((tables: Tables) => remembered((how) => readWay(how, tables)));

function readWay(how: string, tables: Tables): Way {
  const said = new Set(how.split(clauseEnd).flatMap((clause) => clauseWay(clause, tables) ?? []));
  const first = order.find((way) => said.has(way)) ?? 'unclear';
  return first === 'channel' ? 'told' : first;
}

function clauseWay(clause: string, tables: Tables): Way | 'channel' | undefined {
  if (clause.trim() === '') return undefined;
  const { contacts } = tables.followUp;
  const mentions = phrasesOf(contacts).mentionsIn(clause);
  const own = mentions.length === 0 ? undefined : ownWay(mentions);
  if (own === 'told' && isAnswer(mentions)) return 'told';
  const who = whoIn(clause, tables);
  if (who.other && (!who.patient || own !== 'told')) return 'other-person';
  return own;
}

/** What a clause says where the patient is meant. */
function ownWay(mentions: readonly Mention<ContactRow>[]): Way | 'channel' {
  const has = (kind: ContactKind): boolean => mentions.some(({ row }) => row.kind === kind);
  const told = mentions.filter(({ row }) => row.kind === 'told');
  if (has('planned')) return 'unclear';
  if (isAnswer(mentions)) return 'told';
  if (has('attempt') || told.some(({ standing }) => standing === 'denied')) return 'attempt';
  if (told.some(({ standing }) => standing === 'asserted' || standing === 'past')) return 'told';
  if (told.length > 0) return 'unclear';
  return has('channel') ? 'channel' : 'unclear';
}

/** Whether the patient did something that only who heard it does. */
const isAnswer = (mentions: readonly Mention<ContactRow>[]): boolean =>
  mentions.some(({ row, standing }) => row.name === 'the patient answered' && standing === 'asserted');

/** Whether a clause names the patient, and another person; "the patient's wife" is another person only. */
function whoIn(clause: string, tables: Tables): { readonly patient: boolean; readonly other: boolean } {
  const others = phrasesOf(tables.followUp.otherPersons).mentionsIn(clause);
  if (others.length === 0) return { patient: false, other: false };
  const patients = phrasesOf(tables.followUp.patientWords).mentionsIn(clause);
  const own = patients.some(({ to }) => !others.some(({ from }) => clause.slice(to, from).trim() === ''));
  return { patient: own, other: true };
}

/** What the note says of one time that somebody told the patient, or tried. */
export interface Tellings {
  /** The days on which the patient heard it. */
  readonly heard: readonly Day[];
  /** Tries that did not reach the patient, and times that another person heard it. */
  readonly tried: readonly (Told | Attempt)[];
  /** Times of which the words do not say whether the patient heard it, where that matters. */
  readonly unsure: readonly Told[];
}

/**
 * How a result was told. Of a result that asks for nothing a letter or a message is enough; of one that asks for a step
 * only what says that the patient heard it.
 */
export function tellingsOf({ told = [], attempts = [] }: Result, matters: boolean, tables: Tables): Tellings {
  const ways = told.map((one) => ({ one, way: toldWay(one, tables) }));
  const doubted = (way: Way): boolean => way === 'unclear' && matters;
  const failed = (way: Way): boolean => way === 'attempt' || way === 'other-person';
  return {
    heard: [
      ...ways.flatMap(({ one, way }) => (failed(way) || doubted(way) ? [] : dayOf(one))),
      ...attempts.flatMap((one) => (reachedBy(one, tables) ? [one.on?.value ?? dayNotSaid] : [])),
    ],
    tried: [
      ...ways.flatMap(({ one, way }) => (failed(way) ? [one] : [])),
      ...attempts.filter((one) => hasWords(one) && !reachedBy(one, tables)),
    ],
    unsure: ways.flatMap(({ one, way }) => (doubted(way) ? [one] : [])),
  };
}

/** What an entry under `told` says; without a word on how, that the patient was told. */
export const toldWay = ({ how }: Pick<Told, 'how'>, tables: Tables): Way =>
  how?.value === undefined ? 'told' : wayOf(how.value, tables);

/** Whether the outcome of a try says that the patient was told in the end. */
export const reachedBy = ({ outcome }: Attempt, tables: Tables): boolean =>
  outcome?.value !== undefined && wayOf(outcome.value, tables) === 'told';

const hasWords = ({ on, by, how, outcome }: Attempt): boolean =>
  [on, by, how, outcome].some((leaf) => leaf?.value !== undefined);

/** The day of telling; none where it can't be read, or nothing is said. */
function dayOf({ on, by, how }: Told): readonly Day[] {
  if (on !== undefined) return on.value === undefined ? [] : [on.value];
  return by?.value === undefined && how?.value === undefined ? [] : [dayNotSaid];
}

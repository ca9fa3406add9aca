import { answers, kindred, orders, role, turns, type Roles } from './cue-index.ts';
import { hasRole, longest, type Clause } from './clauses.ts';
import type { Part } from './parts.ts';

/** Why a name is no danger of this patient. */
export type Denial = 'denial' | 'past' | 'tolerated';

/** What the cues of a clause do with its names, by their place among its parts. */
export interface Governed {
  readonly denied: ReadonlyMap<number, Denial>;
  /** The roles of the cues of which it is not sure what they are about. */
  readonly open: Roles;
  /** Whether a "no" may be an order to keep something away: "no latex". */
  readonly order: boolean;
}

const governing = role.denies | role.ended | role.tolerated;
const whyOf = <Row>(part: Part<Row>): Denial =>
  hasRole(part, role.ended) ? 'past' : hasRole(part, role.tolerated) ? 'tolerated' : 'denial';

/** Finds what is surely denied, ended or tolerated in a clause. */
export function governedIn<Row>({ parts }: Clause<Row>): Governed {
  const denied = new Map<number, Denial>();
  let open: Roles = 0;
  let order = false;
  if (parts.length > longest) return { denied, open: governing, order };
  parts.forEach((part, at) => {
    if (part.name || !hasRole(part, governing)) return;
    if (isTakenBack(parts, at)) {
      open |= part.roles & governing;
      return;
    }
    const after = isBeforeName(parts, at) ? listAfter(parts, at) : undefined;
    const names = after ?? namesBefore(parts, at);
    if (names === undefined) {
      open |= part.roles & governing;
      order ||= hasRole(part, orders);
    } else for (const name of names) denied.set(name, whyOf(part));
    if (after !== undefined && leavesRest(parts, at)) open |= part.roles & governing;
  });
  return { denied, open, order };
}

/** "Has not well tolerated lidocaine": whether a denial before it, with no name between, is about the cue. */
function isTakenBack<Row>(parts: readonly Part<Row>[], at: number): boolean {
  if (hasRole(parts[at]!, role.denies)) return false;
  for (let place = at - 1; place >= 0; place -= 1) {
    const part = parts[place]!;
    if (part.name || part.mark !== undefined) return false;
    if (hasRole(part, role.denies)) return true;
  }
  return false;
}

/** Whether a name comes after a cue in its clause, so that the cue is about it and not about what is before. */
function isBeforeName<Row>(parts: readonly Part<Row>[], at: number): boolean {
  for (let place = at + 1; place < parts.length; place += 1) {
    const part = parts[place]!;
    if (part.name) return true;
    if (hasRole(part, governing) && !hasRole(part, role.filler | role.tail)) return false;
  }
  return false;
}

interface Item {
  readonly names: number[];
  words: number;
  /** Whether a reaction is named before what it is to: "no hives after lidocaine". */
  reaction: boolean;
  readonly by: 'first' | 'and' | 'or' | 'comma';
}

interface List {
  readonly items: readonly Item[];
  /** Whether what it lists is called an allergy. */
  readonly tail: boolean;
}

/** The places of the names that a cue surely governs after it; undefined where it is not sure. */
function listAfter<Row>(parts: readonly Part<Row>[], at: number): readonly number[] | undefined {
  const cue = parts[at]!;
  const list = readList(parts, at);
  if (list === undefined || (hasRole(cue, orders) && !list.tail)) return undefined;
  const joined = list.items.at(-1)?.by === 'or' || list.items.at(-1)?.by === 'and';
  if (isTurning(cue, list)) return surely([list.items[0]!]);
  const sameKind = hasRole(cue, kindred) || (list.tail && joined);
  return surely(sameKind ? list.items.map(asNames) : list.items);
}

/** "Not a pacemaker, an ICD": a bare "not" before names with nothing but commas between is about the first alone. */
const isTurning = <Row>(cue: Part<Row>, { items }: List): boolean =>
  hasRole(cue, turns) && items.length > 1 && items.slice(1).every(({ by }) => by === 'comma');

/** Whether names after a bare "not" are left open. */
function leavesRest<Row>(parts: readonly Part<Row>[], at: number): boolean {
  const list = hasRole(parts[at]!, turns) ? readList(parts, at) : undefined;
  return list !== undefined && isTurning(parts[at]!, list);
}

/** Of what is called an allergy every word is the name of one. */
const asNames = (item: Item): Item => ({
  ...item,
  words: item.words <= 2 && item.names.length === 0 ? 0 : item.words,
});

/** What a cue has after it up to the end of its clause; undefined where that is no list. */
function readList<Row>(parts: readonly Part<Row>[], at: number): List | undefined {
  const cue = parts[at]!;
  const dated = !hasRole(cue, role.denies);
  const items: Item[] = [newItem('first')];
  let tail = false;
  for (let place = at + 1; place < parts.length; place += 1) {
    const part = parts[place]!;
    const item = items.at(-1)!;
    const by = joinOf(part);
    if (by !== undefined) items.push(newItem(by));
    else if (isTrail(part, item)) return isHarmless(parts, place, dated) ? listOf(items, tail) : undefined;
    else if (isTail(part)) {
      tail = true;
      // "Denies food allergies" is whole: what is after its comma is no more of the list.
      item.reaction ||= item.names.length === 0;
    } else if (!addTo(item, part, place) && !isPassedOver(part, cue, dated)) return undefined;
  }
  return listOf(
    items,
    tail || parts.some((part, place) => place > at && part.name && hasRole(part, role.tail)),
  );
}

const newItem = (by: Item['by']): Item => ({ names: [], words: 0, reaction: false, by });

const isTail = <Row>(part: Part<Row>): boolean => !part.name && hasRole(part, role.tail);

const isTrail = <Row>(part: Part<Row>, { names }: Item): boolean =>
  !part.name && names.length > 0 && hasRole(part, role.trail);

/** Takes a name, a reaction, or a word that means nothing here into an item; false where the part is neither. */
function addTo<Row>(item: Item, part: Part<Row>, place: number): boolean {
  if (part.name) item.names.push(place);
  else if (isReaction(part, item)) item.reaction = true;
  else if (part.roles === 0 && part.number === undefined) item.words += 1;
  else return false;
  return true;
}

/** A list without its empty items. What is a reaction to nothing is no name of the kind. */
function listOf(all: readonly Item[], tail: boolean): List {
  const items = all
    .filter(({ names, words, reaction }) => names.length + words > 0 || reaction)
    .map((item) => (item.reaction && item.names.length === 0 ? { ...item, words: item.words + 1 } : item));
  return { items, tail: tail || items.some(({ reaction }) => reaction) };
}

/** A reaction, or the word between it and what it is to. */
const isReaction = <Row>(part: Part<Row>, { names, reaction }: Item): boolean =>
  names.length === 0 && hasRole(part, reaction ? role.reaction | role.trail : role.reaction);

/** How a part joins what is after it to a list; undefined where it does not. */
function joinOf<Row>(part: Part<Row>): Item['by'] | undefined {
  if (part.mark === 'comma') return 'comma';
  if (part.name || !hasRole(part, role.or | role.and)) return undefined;
  return hasRole(part, role.or) ? 'or' : 'and';
}

/** Whether a part within a list leaves it a list: "history of", and a year beside what is over. */
const isPassedOver = <Row>(part: Part<Row>, cue: Part<Row>, dated: boolean): boolean =>
  hasRole(part, role.filler | role.past) || isSameCue(part, cue) || (part.number !== undefined && dated);

/** "Tolerated lidocaine 2019 without reaction". */
const isSameCue = <Row>(part: Part<Row>, cue: Part<Row>): boolean =>
  hasRole(cue, role.tolerated | role.ended) && hasRole(part, role.tolerated | role.ended);

/** Whether what says when or why names nothing, and where a denial is said no year. */
function isHarmless<Row>(parts: readonly Part<Row>[], from: number, dated: boolean): boolean {
  for (let place = from; place < parts.length; place += 1) {
    const { name, number, mark } = parts[place]!;
    if (name || mark !== undefined || (!dated && number === 'year')) return false;
    if (hasRole(parts[place]!, role.keeps | role.doubt)) return false;
  }
  return true;
}

/**
 * Names joined by or, nor or and; by commas only where all are of one kind. Of a mixed list only what follows the cue
 * itself is sure.
 */
function surely(items: readonly Item[]): readonly number[] | undefined {
  const isClean = ({ names, words }: Item): boolean => names.length <= 1 && words === 0;
  const isOther = ({ names, words }: Item): boolean => names.length === 0 && words > 0;
  const [first] = items;
  if (first === undefined) return undefined;
  if (items.some((item) => !isClean(item) && !isOther(item))) return undefined;
  const names = items.flatMap((item) => item.names);
  const mixed = items.some(isOther);
  if (!mixed) return names;
  const last = items.at(-1)!;
  if (last.by === 'or' || items.every(({ by }) => by === 'first' || by === 'or')) return names;
  return isClean(first) && names.length === 1 ? first.names : undefined;
}

const between = role.filler | role.tail | role.auxiliary | role.subject | role.place;

/** The places of the names that an answer surely is about, before it; undefined where it is not sure. */
function namesBefore<Row>(parts: readonly Part<Row>[], at: number): readonly number[] | undefined {
  const cue = parts[at]!;
  if (hasRole(cue, role.denies) && !hasRole(cue, answers)) return undefined;
  let place = at - 1;
  while (place >= 0 && isBetween(parts[place]!)) place -= 1;
  const named = parts[place];
  if (named === undefined) return parts.some(({ name }) => name) ? undefined : [];
  if (!named.name || !endsWell(parts, at)) return undefined;
  return namesJoined(parts, place);
}

/** A name and those that are joined to it before it. */
function namesJoined<Row>(parts: readonly Part<Row>[], last: number): readonly number[] {
  const joins = role.or | role.and | role.filler;
  const names = [last];
  for (let place = last - 1; place >= 0; place -= 1) {
    const part = parts[place]!;
    if (!part.name && !hasRole(part, joins)) break;
    if (!part.name) continue;
    if (!hasRole(parts[place + 1]!, joins)) break;
    names.push(place);
  }
  return names;
}

const isBetween = <Row>(part: Part<Row>): boolean =>
  !part.name && part.mark === undefined && (part.number !== undefined || hasRole(part, between | governing));

/** Whether after an answer comes nothing but when, how and why. */
function endsWell<Row>(parts: readonly Part<Row>[], at: number): boolean {
  const cue = parts[at]!;
  let words = hasRole(cue, role.tolerated) ? 2 : 0;
  for (let place = at + 1; place < parts.length; place += 1) {
    const part = parts[place]!;
    if (part.name) return false;
    if (hasRole(part, role.keeps | role.doubt | role.reaction)) return false;
    if (hasRole(part, role.trail)) return isHarmless(parts, place, true);
    if (part.number !== undefined || part.mark !== undefined || hasRole(part, between | governing)) continue;
    if (part.roles !== 0) return false;
    words -= 1;
    if (words < 0) return false;
  }
  return true;
}

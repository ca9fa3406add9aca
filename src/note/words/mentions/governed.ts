import { answers, kindred, orders, role } from './cue-index.ts';
import { hasRole, type Clause } from './clauses.ts';
import type { Part } from './parts.ts';

/** Why a name is no danger of this patient. */
export type Denial = 'denial' | 'past' | 'tolerated';

/** What the cues of a clause do with its names, by their place among its parts. */
export interface Governed {
  readonly denied: ReadonlyMap<number, Denial>;
  /** Whether a cue stands there of which it is not sure what it is about. */
  readonly open: boolean;
}

const governing = role.denies | role.ended | role.tolerated;
const whyOf = <Row>(part: Part<Row>): Denial =>
  hasRole(part, role.ended) ? 'past' : hasRole(part, role.tolerated) ? 'tolerated' : 'denial';

/** Finds what is surely denied, ended or tolerated in a clause. */
export function governedIn<Row>({ parts }: Clause<Row>): Governed {
  const denied = new Map<number, Denial>();
  let open = false;
  parts.forEach((part, at) => {
    if (part.name || !hasRole(part, governing)) return;
    const after = isBeforeName(parts, at) ? listAfter(parts, at) : undefined;
    const names = after ?? namesBefore(parts, at);
    if (names === undefined) open = true;
    else for (const name of names) denied.set(name, whyOf(part));
  });
  return { denied, open };
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
  const sameKind = hasRole(cue, kindred) || (list.tail && joined);
  return surely(sameKind ? list.items.map(asNames) : list.items);
}

/** Of what is called an allergy every word is the name of one. */
const asNames = (item: Item): Item => ({
  ...item,
  words: item.words <= 2 && item.names.length === 0 ? 0 : item.words,
});

function readList<Row>(parts: readonly Part<Row>[], at: number): List | undefined {
  const cue = parts[at]!;
  const dated = !hasRole(cue, role.denies);
  const items: Item[] = [{ names: [], words: 0, by: 'first' }];
  let tail = false;
  for (let place = at + 1; place < parts.length; place += 1) {
    const part = parts[place]!;
    const item = items.at(-1)!;
    if (part.mark === 'comma') items.push({ names: [], words: 0, by: 'comma' });
    else if (part.name) item.names.push(place);
    else if (hasRole(part, role.or | role.and))
      items.push({ names: [], words: 0, by: hasRole(part, role.or) ? 'or' : 'and' });
    else if (hasRole(part, role.filler | role.tail)) tail ||= hasRole(part, role.tail);
    else if (hasRole(part, role.trail) && item.names.length > 0)
      return isHarmless(parts, place, dated) ? { items, tail } : undefined;
    else if (hasRole(part, role.past) || isSameCue(part, cue)) continue;
    else if (part.number !== undefined ? !dated : part.roles !== 0) return undefined;
    else if (part.number === undefined) item.words += 1;
  }
  return { items: items.filter(({ names, words }) => names.length + words > 0), tail };
}

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
  const names = [place];
  for (place -= 1; place >= 0; place -= 1) {
    const part = parts[place]!;
    if (part.name) {
      if (!hasRole(parts[place + 1]!, role.or | role.and | role.filler)) break;
      names.push(place);
    } else if (!hasRole(part, role.or | role.and | role.filler)) break;
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

import { readSite } from '../note/words/site.ts';
import type { Found, Gather } from './gather.ts';
import { sameReading, type Procedures } from './procedures.ts';
import type { Tables } from '../practice/tables.ts';
import type { Span } from './speech/word.ts';

export type Path = readonly (string | number)[];

/** A value of the draft and the words that say it. */
export interface Fact extends Span {
  readonly path: Path;
  readonly value: string;
  /** Other words that it rests on. */
  readonly rests: readonly Span[];
}

/** What a text says in two ways that exclude each other. */
export interface Conflict {
  readonly path: Path;
  readonly words: readonly Span[];
}

export interface Assembled {
  readonly facts: readonly Fact[];
  readonly conflicts: readonly Conflict[];
}

/** The keys that may be said for all procedures at once. */
const forAll: ReadonlySet<string> = new Set(['preparation', 'dressing', 'medium', 'tests']);

/** Gives every found value its place in the note; what can be placed in two ways is placed by neither. */
export function assembled(gather: Gather, procedures: Procedures): Assembled {
  const placed = new Placed(gather);
  const wholes = wholesIn(gather.found, procedures);
  for (const [number, { at, end, value }] of procedures.sites)
    placed.add(['procedures', number, 'site'], value, at, end, [], { site: true });
  for (const [target, { at, end, name }] of procedures.methods)
    for (const number of numbersOf(target, procedures.count))
      placed.add(['procedures', number, 'method'], name, at, end, []);
  for (const one of merged(withoutNone(joined(gather))))
    if (one.level === 'visit') placed.addFound([], one);
    else placeInProcedure(placed, one, procedures, wholes);
  return placed.result;
}

/** "No known allergies" beside an allergy says nothing that may be kept but its words. */
function withoutNone(found: readonly Found[]): readonly Found[] {
  const listed = new Set(found.flatMap(({ key }) => (key[2] === '#' ? [`${key[0]} ${key[1]}`] : [])));
  return found.filter(
    ({ level, key, value }) =>
      level !== 'visit' || key.length !== 2 || value !== 'none' || !listed.has(key.join(' ')),
  );
}

/** Found values with entries that say the same thing again joined to the first. */
function joined({ found }: Gather): readonly Found[] {
  const groups = new Map<string, Found[]>();
  for (const one of found) {
    if (one.entry === undefined || one.entry < 0 || !repeats.has(one.key[0]!)) continue;
    const name = `${one.key[0]} ${one.entry}`;
    groups.set(name, [...(groups.get(name) ?? []), one]);
  }
  const kept: Found[][] = [];
  const renamed = new Map<Found, number>();
  for (const group of [...groups.values()].sort((one, other) => one[0]!.at - other[0]!.at)) {
    const before = kept.find((one) => isRepeat(one, group));
    if (before === undefined) kept.push(group);
    else for (const one of group) renamed.set(one, before[0]!.entry!);
  }
  return found.map((one) => (renamed.has(one) ? { ...one, entry: renamed.get(one)! } : one));
}

const repeats: ReadonlySet<string> = new Set(['closure']);

/** Whether stitches are mentioned again: the same material in the same layer. */
function isRepeat(one: readonly Found[], other: readonly Found[]): boolean {
  const valueOf = (group: readonly Found[], key: string): string | undefined =>
    group.find((each) => each.key[2] === key)?.value;
  const material = valueOf(one, 'material');
  const layers = [valueOf(one, 'layer'), valueOf(other, 'layer')];
  return (
    material !== undefined &&
    material === valueOf(other, 'material') &&
    (layers[0] === layers[1] || layers.includes(undefined))
  );
}

const numbersOf = (target: number | 'all' | undefined, count: number): readonly number[] =>
  target === undefined
    ? []
    : target === 'all'
      ? Array.from({ length: count }, (_, number) => number)
      : [target];

/** The injections of which one part is said to be of all procedures. */
const wholesIn = (found: readonly Found[], procedures: Procedures): ReadonlySet<string> =>
  new Set(
    found.flatMap((one) =>
      one.key[0] === 'anesthetic' && procedures.targetOf(one) === 'all' ? [wholeOf(one)] : [],
    ),
  );

const wholeOf = ({ key, entry }: Found): string => `${key[0]} ${entry ?? ''}`;

function placeInProcedure(
  placed: Placed,
  one: Found,
  procedures: Procedures,
  wholes: ReadonlySet<string>,
): void {
  const { count } = procedures;
  if (one.nth !== undefined && count > 1) {
    if (one.of === count) placed.addFound(['procedures', one.nth], inOne(one));
    return;
  }
  const target = wholes.has(wholeOf(one)) ? 'all' : procedures.targetOf(one);
  if (target === undefined && one.ofAll === true) placed.addFound([], one);
  if (target === 'all' && count > 1 && placeForAll(placed, one)) return;
  for (const number of numbersOf(target, count))
    placed.addFound(['procedures', number], count > 1 ? inOne(one) : one);
}

/** Places what is said of all once, where the note has a place for it. */
function placeForAll(placed: Placed, one: Found): boolean {
  if (one.ofAll === true) placed.addFound([], one);
  else if (forAll.has(one.key.at(-1)!))
    placed.addFound(['for-all'], { ...one, key: one.key.filter((key) => key !== '#') });
  else return false;
  return true;
}

/** Where there are several procedures each has one specimen. */
const inOne = (one: Found): Found => (one.key[0] === 'specimen' ? { ...one, entry: 0 } : one);

/** Found values in the order of the text. */
const merged = (found: readonly Found[]): readonly Found[] =>
  [...found].sort((one, other) => one.at - other.at);

interface Value {
  readonly path: Path;
  readonly value: string;
  readonly spans: readonly Span[];
}

class Placed {
  private readonly values = new Map<string, Value[]>();
  /** By a list of entries: the number of each of its entries. */
  private readonly entries = new Map<string, Map<number, number>>();
  private readonly lists = new Set<string>();

  constructor(private readonly gather: Gather) {}

  addFound(base: Path, one: Found): void {
    const path = this.pathOf(base, one);
    const list = one.several === true && path.length > 0;
    this.add(path, one.value, one.at, one.end, one.rests ?? [], { list });
  }

  add(
    path: Path,
    value: string,
    at: number,
    end: number,
    rests: readonly (readonly [number, number])[],
    { list = false, site = false }: { readonly list?: boolean; readonly site?: boolean } = {},
  ): void {
    const key = path.join('\0');
    if (list) this.lists.add(key);
    if (site) this.sites.add(key);
    const values = this.values.get(key) ?? [];
    values.push({
      path,
      value,
      spans: [this.span(at, end), ...rests.map(([from, to]) => this.span(from, to))],
    });
    this.values.set(key, values);
  }

  private readonly sites = new Set<string>();

  private span(at: number, end: number): Span {
    return { from: this.gather.word(at)!.from, to: this.gather.word(end - 1)!.to };
  }

  /** The position of an entry among those of its list. */
  private pathOf(base: Path, { key, entry }: Found): Path {
    const place = key.indexOf('#');
    if (place < 0) return [...base, ...key];
    const head = [...base, ...key.slice(0, place)];
    const name = head.join('\0');
    const known = this.entries.get(name) ?? new Map<number, number>();
    this.entries.set(name, known);
    const own = entry ?? -1;
    const number = known.get(own) ?? known.size;
    known.set(own, number);
    // A list inside of an entry has one entry of its own.
    return [...head, number, ...key.slice(place + 1).map((part) => (part === '0' ? 0 : part))];
  }

  get result(): Assembled {
    const facts: Fact[] = [];
    const conflicts: Conflict[] = [];
    for (const [key, values] of this.values)
      if (this.sites.has(key)) this.site(values, facts, conflicts);
      else if (this.lists.has(key)) facts.push(...withoutRepeats(values));
      else if (described.has(String(values[0]!.path.at(-1)))) facts.push(...longestOf(values));
      else one(values, facts, conflicts);
    return { facts, conflicts };
  }

  /** Of several names of one site the longest; two sides exclude each other. */
  private site(values: readonly Value[], facts: Fact[], conflicts: Conflict[]): void {
    const { tables } = this.gather.scan;
    const readings = values.flatMap(({ value }) => readSite(value, tables.sites) ?? []);
    const differ = readings.some((one) => readings.some((other) => !sameReading(one, other)));
    if (differ) conflicts.push(conflictOf(values));
    else {
      facts.push(factOf(mostPrecise(values, tables), values));
    }
  }
}

/** The name of a site that says most; the side may be said by another. */
function mostPrecise(values: readonly Value[], { sites }: Tables): Value {
  const read = values.map((one) => ({ one, reading: readSite(one.value, sites)! }));
  const firm = read.filter(({ reading }) => !reading.base.vague);
  const [best] = (firm.length > 0 ? firm : read).sort((a, b) => b.one.value.length - a.one.value.length);
  const side = read.find(({ reading }) => reading.side !== undefined)?.reading.side;
  if (best!.reading.side !== undefined || side === undefined || side === 'midline') return best!.one;
  return { ...best!.one, value: `${side} ${best!.one.value}` };
}

/** Free texts: of several the longest is taken, and the others are left where no fact says them. */
const described: ReadonlySet<string> = new Set(['lesion', 'question', 'landmarks']);

function longestOf(values: readonly Value[]): readonly Fact[] {
  const longest = [...values].sort((one, other) => other.value.length - one.value.length)[0]!;
  const within = values.filter(({ value }) => longest.value.toLowerCase().includes(value.toLowerCase()));
  const isOne = within.length === values.length || longest.path.at(-1) !== 'lesion';
  return isOne ? [factOf(longest, within)] : [];
}

const factOf = ({ path, value, spans }: Value, all: readonly Value[]): Fact => {
  const [first, ...rests] = spans;
  const others = all.filter((other) => other.spans !== spans).flatMap((other) => other.spans);
  return { path, value, ...first!, rests: [...rests, ...others] };
};

const conflictOf = (values: readonly Value[]): Conflict => ({
  path: values[0]!.path,
  words: values.map(({ spans }) => spans[0]!),
});

/** The words of a list, each once. */
function withoutRepeats(values: readonly Value[]): readonly Fact[] {
  const names = [...new Set(values.map(({ value }) => value))];
  return names.map((name) => {
    const same = values.filter(({ value }) => value === name);
    return factOf(same[0]!, same);
  });
}

function one(all: readonly Value[], facts: Fact[], conflicts: Conflict[]): void {
  const closes = all[0]!.path.at(-1) === 'how' ? all.filter(({ value }) => value !== 'none') : all;
  const values = closes.length > 0 ? closes : all;
  const names = new Set(values.map(({ value }) => value.toLowerCase()));
  if (names.size > 1) conflicts.push(conflictOf(values));
  else facts.push(factOf(values[0]!, values));
}

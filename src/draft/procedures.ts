import type { Found, Gather } from './gather.ts';
import { wordSet } from './word-set.ts';
import type { SiteReading } from '../note/words/site.ts';
import type { MethodNamed } from './readers/method.ts';
import type { SiteNamed } from './readers/site.ts';
import { cuesBetween, type Clause } from './scan.ts';
import { sectionsOf, type Section } from './sections.ts';

/** Which procedure a found value is of: its number, all of them, or nobody can tell. */
export type Target = number | 'all' | undefined;

/** The procedures of a text: of which each place speaks. */
export interface Procedures {
  readonly count: number;
  readonly targetOf: (one: Pick<Found, 'at'>) => Target;
  readonly sites: readonly (readonly [procedure: number, site: SiteNamed])[];
  readonly methods: readonly (readonly [target: Target, method: MethodNamed])[];
  /** Words that only say which procedure is meant. */
  readonly marks: readonly (readonly [at: number, end: number])[];
}

const leads = wordSet('of on from to at over in : site , the location and overlying involving left right');
const landmarks = wordSet(
  'below above lateral medial inferior superior near behind anterior posterior from distal proximal',
);
const lengths = wordSet('mm cm in');

/** Whether a site is named as the place of a procedure, not as what is near or as a part of other words. */
function isPlace(gather: Gather, { at, end, reading }: SiteNamed): boolean {
  if (gather.isTaken(at, end) || gather.held(at) !== undefined) return false;
  const before = gather.low(at - 1) === 'the' ? at - 2 : at - 1;
  if (isLandmark(gather, before)) return false;
  if (reading.side !== undefined || before < 0 || leads.has(gather.low(before))) return true;
  return gather.word(before)!.kind !== 'word' || gather.clauseAt(at).from === at;
}

/** Whether the words that end at a place say what is near: "2 cm below", "lateral to". */
function isLandmark(gather: Gather, before: number): boolean {
  const low = gather.low(before);
  if (low === 'to') return landmarks.has(gather.low(before - 1));
  return landmarks.has(low) && (low !== 'from' || lengths.has(gather.word(before - 1)?.unit ?? ''));
}

const taking = wordSet(
  'biopsy biopsied biopsies procedure procedures site sites location removed excised taken specimen did doing took performed',
);
const isSeen = wordSet('lesion papule plaque macule nodule patch');

/** How surely a site is that of a procedure: beside a method, beside what was seen, or just named. */
function strengthOf(gather: Gather, { at, end }: SiteNamed, methods: readonly MethodNamed[]): number {
  const { from, to } = gather.clauseAt(at);
  if (methods.some((method) => method.at >= from && method.at < to)) return 3;
  if (gather.has(taking, from, at) || gather.low(end) === 'biopsy') return 3;
  const sentence = gather.sentenceAt(at);
  if (methods.some((method) => method.at >= sentence.from && method.at < sentence.to)) return 2;
  if (gather.has(taking, sentence.from, sentence.to) || sentence.from === 0) return 2;
  return gather.has(isSeen, from, to) ? 2 : 1;
}

/** Whether two names may be of one site: no other side, and the same place or one that is only named loosely. */
export const sameReading = (one: SiteReading, other: SiteReading): boolean =>
  (one.side === undefined || other.side === undefined || one.side === other.side) &&
  (one.base.name === other.base.name ||
    (one.base.region === other.base.region && (one.base.vague || other.base.vague)));

const sameSite = (one: SiteNamed, other: SiteNamed): boolean => sameReading(one.reading, other.reading);

/** Parts a text into its procedures. */
export function proceduresOf(
  gather: Gather,
  allSites: readonly SiteNamed[],
  methods: readonly MethodNamed[],
): Procedures {
  const sites = allSites.filter((site) => isPlace(gather, site));
  const sections = sectionsOf(gather);
  const isLate = kindsOf(sites.filter(({ at }) => at < (sections[0]?.at ?? 0))).length > 1;
  if (!isLate && areProcedures(sections, [...sites, ...methods]))
    return bySections(gather, sites, methods, sections);
  const strengths = sites.map((site) => strengthOf(gather, site, methods));
  const most = Math.max(...strengths, 0);
  const strong = sites.filter((_, at) => strengths[at] === most);
  const kinds = kindsOf(strong);
  return kinds.length > 1 && isSeveral(gather, kinds, methods)
    ? bySites(gather, sites, kinds, methods)
    : single(gather, sites, strong, methods);
}

/** Whether two sections at least have a site or a method; else their letters are those of specimens. */
function areProcedures(sections: readonly Section[], named: readonly { readonly at: number }[]): boolean {
  const ids = new Set(named.map(({ at }) => sections.findLast((section) => section.at <= at)?.id));
  ids.delete(undefined);
  return ids.size > 1;
}

/** Sites that are not the same. */
function kindsOf(sites: readonly SiteNamed[]): readonly SiteNamed[] {
  const kinds: SiteNamed[] = [];
  for (const site of sites) if (!kinds.some((kind) => sameSite(kind, site))) kinds.push(site);
  return kinds;
}

/** One procedure; a site of another side contradicts, and one elsewhere is of something else. */
function single(
  gather: Gather,
  sites: readonly SiteNamed[],
  strong: readonly SiteNamed[],
  methods: readonly MethodNamed[],
): Procedures {
  const own = sites.filter((site) =>
    strong.some(
      (one) => one === site || sameSite(one, site) || one.reading.base.name === site.reading.base.name,
    ),
  );
  return {
    count: 1,
    targetOf: () => 0,
    sites: own.map((site) => [0, site] as const),
    methods: methods.filter((method) => isOfSite(gather, method, own)).map((method) => [0, method] as const),
    marks: [],
  };
}

/** "AK of the face treated with liquid nitrogen. Also a biopsy of the nose": a treatment that is told apart from the biopsy's site. */
function isOfSite(gather: Gather, { at, name }: MethodNamed, sites: readonly SiteNamed[]): boolean {
  const { words, tables } = gather.scan;
  if (tables.methods.find(name)?.takesTissue === true) return true;
  const { from, to } = gather.sentenceAt(at);
  return (
    !gather.has(sampling, 0, words.length) ||
    gather.has(sampling, from, to) ||
    sites.some((site) => site.at >= from && site.at < to)
  );
}

const sampling = wordSet('bx biopsy biopsied biopsies');

const plural = wordSet(
  'two three four both each biopsies shaves punches sites lesions another second also additional and other',
);

/** Whether different sites are those of several procedures; else the text contradicts itself. */
function isSeveral(gather: Gather, kinds: readonly SiteNamed[], methods: readonly MethodNamed[]): boolean {
  if (methods.length > 1) return true;
  const [first, last] = [kinds[0]!, kinds.at(-1)!];
  return gather.has(plural, Math.max(0, first.at - 6), last.at);
}

/** Words that point to a procedure. */
interface Pointer {
  readonly at: number;
  readonly end: number;
  readonly number: number;
}

function bySections(
  gather: Gather,
  sites: readonly SiteNamed[],
  methods: readonly MethodNamed[],
  sections: readonly Section[],
): Procedures {
  const ids = [...new Set(sections.map(({ id }) => id))];
  const pointers = sections.map(({ at, end, id }) => ({ at, end, number: ids.indexOf(id) }));
  const [targetOf, own] = withMethods(gather, pointers, true, methods);
  return made(gather, ids.length, targetOf, sites, own, pointers);
}

function made(
  gather: Gather,
  count: number,
  targetOf: Procedures['targetOf'],
  sites: readonly SiteNamed[],
  methods: readonly MethodNamed[],
  pointers: readonly Pointer[],
): Procedures {
  const placed = sites.flatMap((site) => {
    const target = targetOf(site);
    return typeof target === 'number' && gather.clauseAt(site.at).from <= site.at
      ? [[target, site] as const]
      : [];
  });
  // "L thigh: (1) … (2) …": one site of them all.
  const all = Array.from({ length: count }, (_, number) => number);
  const isOne = placed.length === 0 && kindsOf(sites).length === 1;
  return {
    count,
    targetOf,
    sites: isOne ? all.flatMap((number) => sites.map((site) => [number, site] as const)) : placed,
    methods: methods.map((method) => [targetOf(method), method] as const),
    marks: pointers.map(({ at, end }) => [at, end] as const),
  };
}

/** Each different site is a procedure. */
function bySites(
  gather: Gather,
  sites: readonly SiteNamed[],
  kinds: readonly SiteNamed[],
  methods: readonly MethodNamed[],
): Procedures {
  const numberOf = (site: SiteNamed): number | undefined => {
    const same = kinds.flatMap((kind, number) => (sameSite(kind, site) ? [number] : []));
    return same.length === 1 ? same[0] : undefined;
  };
  const numbered = sites.flatMap((site) => {
    const number = numberOf(site);
    return number === undefined ? [] : [{ at: site.at, end: site.end, number, site }];
  });
  const ordinals = sectionsOf(gather).flatMap(({ at, end, id }) =>
    Number(id) <= kinds.length ? [{ at, end, number: Number(id) - 1 }] : [],
  );
  const pointers = [...numbered, ...ordinals, ...sidesIn(gather, kinds, numbered)].sort(
    (one, other) => one.at - other.at,
  );
  const [targetOf, own] = withMethods(gather, pointers, false, methods);
  return {
    count: kinds.length,
    targetOf,
    sites: numbered.map(({ number, site }) => [number, site] as const),
    methods: own.map((method) => [targetOf(method), method] as const),
    marks: ordinals.map(({ at, end }) => [at, end] as const),
  };
}

const ofSide = wordSet('one is was has had got side :');

/** "The left one", where one site is on that side. */
function sidesIn(gather: Gather, kinds: readonly SiteNamed[], sites: readonly Pointer[]): readonly Pointer[] {
  return gather.scan.words.flatMap(({ low }, at) => {
    if ((low !== 'left' && low !== 'right') || !ofSide.has(gather.low(at + 1))) return [];
    if (sites.some((site) => site.at <= at && site.end > at)) return [];
    const same = kinds.flatMap(({ reading }, number) => (reading.side === low ? [number] : []));
    return same.length === 1 ? [{ at, end: at + 2, number: same[0]! }] : [];
  });
}

const saysAll = ({ cues }: Gather['scan'], { from, to }: Pick<Clause, 'from' | 'to'>): boolean =>
  cuesBetween(cues, from, to).some(({ cues: several }) => several.some((cue) => 'all' in cue));

/**
 * The targets with methods as pointers: where each of two procedures has a method of its own, a method that is named
 * again points to its procedure. Returns the methods that are not such pointers too.
 */
function withMethods(
  gather: Gather,
  pointers: readonly Pointer[],
  goesOn: boolean,
  methods: readonly MethodNamed[],
): readonly [Procedures['targetOf'], readonly MethodNamed[]] {
  const targetOf = targets(gather, pointers, goesOn);
  const owner = new Map<string, Target>();
  const has = new Set<Target>();
  const again: Pointer[] = [];
  const own: MethodNamed[] = [];
  for (const method of methods) {
    const target = targetOf(method);
    const first = owner.get(method.name);
    if (typeof first === 'number' && first !== target && (target === 'all' || has.has(target)))
      again.push({ ...method, number: first });
    else own.push(method);
    if (first === undefined && !has.has(target)) owner.set(method.name, target);
    has.add(target);
  }
  if (again.length === 0) return [targetOf, own];
  const all = [...pointers, ...again].sort((one, other) => one.at - other.at);
  return [targets(gather, all, goesOn), own];
}

const ofAllOnly = wordSet(
  'both all each sites site lesions areas wounds of them the for at on to three two . , ;',
);

const isOnlyAll = ({ words }: Gather['scan'], { from, to }: Clause): boolean =>
  words.slice(from, to).every(({ low, kind }) => kind === 'line' || ofAllOnly.has(low));

/** Whether the clause of a place says that it is of each, both or all. */
function isOfAll({ scan }: Gather, at: number): boolean {
  if (isHeadedAll(scan, at)) return true;
  const number = scan.clauseOf[at]!;
  const own = scan.clauses[number]!;
  const next = scan.clauses[number + 1];
  const isAppended = next?.sentence === own.sentence && isOnlyAll(scan, next);
  if (isAppended && saysAll(scan, next)) return true;
  // In a text without marks nobody can tell how far an "each" before a value reaches.
  const reach = own.to - own.from > longestClause ? farthestAll.unmarked : farthestAll.marked;
  const near = { from: Math.max(own.from, at - reach.before), to: Math.min(own.to, at + reach.after) };
  return saysAll(scan, near);
}

/** "All: alcohol prep, 1% lidocaine": whether the line of a place begins so. */
function isHeadedAll({ words }: Gather['scan'], at: number): boolean {
  let from = at;
  while (from > 0 && words[from - 1]!.kind !== 'line' && at - from < longestLine) from -= 1;
  return headsAll.has(words[from]!.low) && [words[from + 1]?.text, words[from + 2]?.text].includes(':');
}
const headsAll = wordSet('all each both');
const longestLine = 60;

/** How many words before and after a value an "each" may be. */
const farthestAll = { marked: { before: 10, after: 8 }, unmarked: { before: 0, after: 5 } } as const;

/** "The first and the second": nobody can mention which one alone. */
const isJoined = (gather: Gather, all: readonly Pointer[], { at, number }: Pointer): boolean =>
  all.some((other) => other.number !== number && other.end < at && isJoint(gather, other.end, at));

const jointWords = wordSet('and the ,');

function isJoint(gather: Gather, from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) if (!jointWords.has(gather.low(at))) return false;
  return gather.has(wordSet('and'), from, to);
}

const farthestLink = 8;
const links = wordSet('of on from at to over');
const parts = wordSet('and , . ; : then while');

/** Whether words lead to a pointer: "punch of the right ear", "aluminum chloride on the left one". */
function isLinked(gather: Gather, at: number, to: number): boolean {
  if (to - at > farthestLink) return false;
  const last = gather.low(to - 1) === 'the' ? to - 2 : to - 1;
  return last >= at && links.has(gather.low(last)) && !gather.has(parts, at, to);
}

/** A longer clause is of a text without marks. */
const longestClause = 12;

/** Whether procedures that follow each other have one statement each: what comes after such a list is of no one of them. */
function areLines({ scan: { clauses, words } }: Gather, heads: readonly number[]): boolean {
  const spoken = new Set<number>();
  for (const { from, to, sentence } of clauses)
    if (words.slice(from, to).some(({ kind }) => kind !== 'mark' && kind !== 'line')) spoken.add(sentence);
  const order = [...spoken].sort((one, other) => one - other);
  const places = heads.map((sentence) => order.indexOf(sentence)).sort((one, other) => one - other);
  return places.length > 1 && places.every((place, at) => at === 0 || place === places[at - 1]! + 1);
}

/**
 * Of which procedure the words at a place are: that of the last pointer before them in their sentence, or of the first
 * after them; else of what was spoken of before, unless that were several at once.
 */
function targets(gather: Gather, pointers: readonly Pointer[], goesOn: boolean): Procedures['targetOf'] {
  const { clauses, clauseOf } = gather.scan;
  const sentenceOf = (at: number): number => clauses[clauseOf[at]!]!.sentence;
  const bySentence = new Map<number, Pointer[]>();
  for (const pointer of pointers) {
    const sentence = sentenceOf(pointer.at);
    bySentence.set(sentence, [...(bySentence.get(sentence) ?? []), pointer]);
  }
  const lines = goesOn && areLines(gather, [...bySentence.keys()]);
  const carried: Target[] = [];
  let last: Target;
  for (let sentence = 0; sentence <= (clauses.at(-1)?.sentence ?? 0); sentence += 1) {
    const own = bySentence.get(sentence);
    if (own === undefined && lines) last = undefined;
    carried.push(last);
    if (own !== undefined)
      last = new Set(own.map(({ number }) => number)).size === 1 ? own.at(-1)!.number : undefined;
  }
  return ({ at }) => {
    if (isOfAll(gather, at)) return 'all';
    const sentence = sentenceOf(at);
    const own = bySentence.get(sentence);
    if (own === undefined) return carried[sentence];
    const { from, to } = gather.clauseAt(at);
    const inClause = own.filter((pointer) => pointer.at >= from && pointer.at < to);
    if (inClause.length === 1 && to - from <= longestClause) return inClause[0]!.number;
    const ahead = own.find((pointer) => pointer.at > at && isLinked(gather, at, pointer.at));
    if (ahead !== undefined) return ahead.number;
    const before = own.findLast((pointer) => pointer.at <= at);
    if (before !== undefined && isJoined(gather, own, before)) return undefined;
    return (before ?? (goesOn ? undefined : own[0]))?.number ?? carried[sentence];
  };
}

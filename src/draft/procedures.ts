import { wordSet, type Found, type Gather } from './gather.ts';
import { cuesBetween } from './scan.ts';
import type { MethodNamed } from './readers/method.ts';
import type { SiteNamed } from './readers/site.ts';

/** Which procedure a found value is of: its number, all of them, or nobody can tell. */
export type Target = number | 'all' | undefined;

/** The procedures of a text: of which each place speaks. */
export interface Procedures {
  readonly count: number;
  readonly targetOf: (one: Pick<Found, 'at' | 'end'>) => Target;
  readonly sites: readonly (readonly [procedure: number, site: SiteNamed])[];
  readonly methods: readonly (readonly [target: Target, method: MethodNamed])[];
  /** Words that only say which procedure is meant. */
  readonly marks: readonly (readonly [at: number, end: number])[];
}

const leads = wordSet('of on from to at over in : site , the location and overlying involving left right');
const landmarks = wordSet('below above lateral medial inferior superior near behind anterior posterior from distal proximal');
const lengths = wordSet('mm cm in');

/** Whether a site is named as the place of a procedure, not as what lies near or as a part of other words. */
function isPlace(gather: Gather, { at, end, reading }: SiteNamed): boolean {
  if (gather.isTaken(at, end) || gather.held(at) !== undefined) return false;
  const before = gather.low(at - 1) === 'the' ? at - 2 : at - 1;
  const low = gather.low(before);
  const word = gather.word(before - 1);
  if (low === 'to' && landmarks.has(gather.low(before - 1))) return false;
  if (landmarks.has(low) && (low !== 'from' || lengths.has(word?.unit ?? ''))) return false;
  if (reading.side !== undefined) return true;
  return before < 0 || leads.has(low) || gather.word(before)!.kind !== 'word' || gather.clauseAt(at).from === at;
}

/** Whether the clause of a place says that it is of each, both or all. */
function isOfAll({ scan }: Gather, at: number): boolean {
  const { from, to } = scan.clauses[scan.clauseOf[at]!]!;
  return cuesBetween(scan.cues, from, to).some(({ cues }) => cues.some((cue) => 'all' in cue));
}

/** Where a marker of a new procedure is: "Procedure 2:", "B.", "second lesion". */
interface Section {
  readonly at: number;
  readonly end: number;
  readonly id: string;
}

const sectionNouns = wordSet('procedure site lesion biopsy specimen location # number spot no');
const ordinals: ReadonlyMap<string, string> = new Map([
  ['first', '1'],
  ['1st', '1'],
  ['one', '1'],
  ['second', '2'],
  ['2nd', '2'],
  ['two', '2'],
  ['third', '3'],
  ['3rd', '3'],
  ['three', '3'],
  ['fourth', '4'],
  ['4th', '4'],
]);
const ordered = wordSet('first second third fourth 1st 2nd 3rd 4th');

function sectionsOf(gather: Gather): readonly Section[] {
  const sections: Section[] = [];
  for (let at = 0; at < gather.scan.words.length; at += 1) {
    const section = sectionAt(gather, at);
    if (section !== undefined) sections.push(section);
  }
  const ids = new Set(sections.map(({ id }) => id));
  return ids.size > 1 ? sections : [];
}

function sectionAt(gather: Gather, at: number): Section | undefined {
  if (gather.clauseAt(at).from !== at) return undefined;
  const low = gather.low(at);
  const article = low === 'the' ? at + 1 : at;
  const ordinal = gather.low(article);
  if (ordered.has(ordinal) && afterOrdinal.has(gather.low(article + 1)))
    return { at, end: article + 2, id: ordinals.get(ordinal)! };
  const place = sectionNouns.has(low) ? (gather.low(at + 1) === '#' ? at + 2 : at + 1) : at;
  const id = idOf(gather, place);
  const isMarked = /^[.):,]$/.test(gather.low(place + 1));
  return id !== undefined && isMarked ? { at, end: place + 1, id } : undefined;
}

const afterOrdinal = wordSet('site lesion biopsy procedure one area specimen spot , is was');

function idOf(gather: Gather, at: number): string | undefined {
  const low = gather.low(at);
  if (/^\d$/.test(low)) return low;
  if (/^[a-h]$/.test(low)) return String(low.charCodeAt(0) - 96);
  return ordinals.get(low);
}

const sameSite = ({ reading: one }: SiteNamed, { reading: other }: SiteNamed): boolean =>
  (one.side === undefined || other.side === undefined || one.side === other.side) &&
  (one.base.name === other.base.name || (one.base.region === other.base.region && (one.base.vague || other.base.vague)));

/** Parts a text into its procedures. */
export function proceduresOf(gather: Gather, allSites: readonly SiteNamed[], methods: readonly MethodNamed[]): Procedures {
  const sites = allSites.filter((site) => isPlace(gather, site));
  const sections = sectionsOf(gather);
  return sections.length > 0 ? bySections(gather, sites, methods, sections) : bySites(gather, sites, methods);
}

function bySections(gather: Gather, sites: readonly SiteNamed[], methods: readonly MethodNamed[], sections: readonly Section[]): Procedures {
  const ids = [...new Set(sections.map(({ id }) => id))];
  const numberAt = (at: number): number | undefined => {
    const last = sections.findLast((section) => section.at <= at);
    return last === undefined ? undefined : ids.indexOf(last.id);
  };
  return {
    count: ids.length,
    targetOf: ({ at }) => (isOfAll(gather, at) ? 'all' : numberAt(at)),
    marks: sections.map(({ at, end }) => [at, end] as const),
    sites: sites.flatMap((site) => {
      const number = numberAt(site.at);
      return number === undefined ? [] : [[number, site] as const];
    }),
    methods: methods.map((method) => [numberAt(method.at), method] as const),
  };
}

const plural = wordSet('two three four both each biopsies shaves punches sites lesions another second also additional and other');

/** Each different site is a procedure; what has no site in its sentence belongs to the one before. */
function bySites(gather: Gather, sites: readonly SiteNamed[], methods: readonly MethodNamed[]): Procedures {
  const kinds: SiteNamed[] = [];
  for (const site of sites) if (!kinds.some((kind) => sameSite(kind, site))) kinds.push(site);
  const several = kinds.length > 1 && isSeveral(gather, kinds, methods);
  if (!several)
    return {
      count: 1,
      targetOf: () => 0,
      sites: sites.map((site) => [0, site] as const),
      methods: methods.map((method) => [0, method] as const),
      marks: [],
    };
  const numbered = sites.map((site) => [kinds.findIndex((kind) => sameSite(kind, site)), site] as const);
  const targetOf = targetBySite(gather, numbered);
  return { count: kinds.length, targetOf, marks: [], sites: numbered, methods: methods.map((method) => [targetOf(method), method] as const) };
}

/** Whether different sites are those of several procedures; else the text contradicts itself. */
function isSeveral(gather: Gather, kinds: readonly SiteNamed[], methods: readonly MethodNamed[]): boolean {
  if (methods.length > 1) return true;
  const [first, last] = [kinds[0]!, kinds.at(-1)!];
  return gather.has(plural, Math.max(0, first.at - 6), last.at);
}

function targetBySite(gather: Gather, numbered: readonly (readonly [number, SiteNamed])[]): Procedures['targetOf'] {
  return ({ at }) => {
    const { from, to } = gather.sentenceAt(at);
    const own = numbered.filter(([, site]) => site.at >= from && site.at < to);
    const kinds = new Set(own.map(([number]) => number));
    if (isOfAll(gather, at)) return 'all';
    if (kinds.size === 1) return own[0]![0];
    if (kinds.size > 1) return own.findLast(([, site]) => site.at <= at)?.[0] ?? own[0]![0];
    const before = numbered.findLast(([, site]) => site.at < at);
    if (before === undefined) return undefined;
    const sentence = gather.sentenceAt(before[1].at);
    const together = new Set(numbered.filter(([, site]) => site.at >= sentence.from && site.at < sentence.to).map(([number]) => number));
    return together.size > 1 ? undefined : before[0];
  };
}

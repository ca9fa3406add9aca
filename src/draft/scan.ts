import type { Tables } from '../practice/tables.ts';
import { correctionsIn, type Correction } from './corrections.ts';
import { cueTrie, type Cue, type CueAt, type Frame, type Hold } from './cues.ts';
import { lexiconsOf, type Claim, type Lexicon, type Table } from './lexicon.ts';
import { namesIn } from './names.ts';
import { passWords } from './passed-over.ts';
import { heard } from './speech/heard.ts';
import type { Span, Word } from './speech/word.ts';

/** Words of the tables, at places `at` to `end` of the words of a text. */
export interface Term {
  readonly at: number;
  readonly end: number;
  readonly claims: readonly Claim[];
}

/** A stretch of a text in which its cues work: places `from` to `to`. */
export interface Clause {
  readonly from: number;
  readonly to: number;
  /** The number of its sentence. */
  readonly sentence: number;
}

/** The words of a text with all that is known of each before it is read. */
export interface Scan {
  readonly text: string;
  readonly words: readonly Word[];
  readonly passed: readonly Span[];
  readonly terms: readonly Term[];
  /** Anesthetics. */
  readonly agents: readonly Term[];
  readonly cues: readonly CueAt[];
  readonly clauses: readonly Clause[];
  /** By the place of a word: the number of its clause. */
  readonly clauseOf: readonly number[];
  /** By the place of a word: what keeps it from being of this visit. */
  readonly held: readonly (Hold | undefined)[];
  /** What the speaker took back: marks are in its place. */
  readonly corrections: readonly Correction[];
  /** Names of persons: a mark is in the place of each. */
  readonly names: readonly Span[];
  readonly tables: Tables;
}

/** What is in the place of a name of a person. */
const nobody = '·';

export function scanOf(text: string, tables: Tables): Scan {
  const { words: typed, passed } = heard(text);
  const lexicons = lexiconsOf(tables);
  const names = namesIn(
    typed,
    (low) =>
      passWords.has(low) ||
      lexicons.words.begins(low) ||
      lexicons.agents.begins(low) ||
      cueTrie().begins(low),
  );
  const words = withoutNames(typed, names);
  const spoken = termsIn(words, lexicons.words);
  const corrections = correctionsIn(words, cuesIn(words), spoken);
  return scanned(text, withoutStruck(words, corrections), { passed, names, corrections, tables });
}

type Known = Pick<Scan, 'passed' | 'names' | 'corrections' | 'tables'>;

function scanned(text: string, words: readonly Word[], known: Known): Scan {
  const lexicons = lexiconsOf(known.tables);
  const terms = termsIn(words, lexicons.words);
  const agents = termsIn(words, lexicons.agents);
  const cues = cuesIn(words);
  const clauses = clausesOf(words, cues);
  const clauseOf = clauses.flatMap(({ from, to }, number) => new Array<number>(to - from).fill(number));
  const held = heldOf(words, cues, clauses, clauseOf);
  return { text, words, terms, agents, cues, clauses, clauseOf, held, ...known };
}

/** What is in the place of what was taken back. */
export const struck = '¬';

/** The words with marks for those that were taken back, and for the words that took them back. */
function withoutStruck(words: readonly Word[], corrections: readonly Correction[]): readonly Word[] {
  if (corrections.length === 0) return words;
  const gone = new Set(corrections.flatMap(({ struck: one, cue }) => [...placesOf(one), ...placesOf(cue)]));
  return words.map((word, at) =>
    gone.has(at) ? { ...word, text: struck, low: struck, kind: 'mark' } : word,
  );
}

const placesOf = ([at, end]: readonly [number, number]): readonly number[] =>
  Array.from({ length: end - at }, (_, index) => at + index);

function cuesIn(words: readonly Word[]): readonly CueAt[] {
  const trie = cueTrie();
  const cues: CueAt[] = [];
  for (let at = 0; at < words.length;) {
    const found = trie.longest(words, at);
    if (found !== undefined) cues.push({ at, end: found.end, cues: found.value });
    at = found?.end ?? at + 1;
  }
  return cues;
}

function termsIn(words: readonly Word[], lexicon: Lexicon): readonly Term[] {
  const terms: Term[] = [];
  for (let at = 0; at < words.length;) {
    const found = lexicon.longest(words, at);
    if (found !== undefined) terms.push({ at, end: found.end, claims: found.value });
    at = found?.end ?? at + 1;
  }
  return terms;
}

function withoutNames(words: readonly Word[], names: readonly Span[]): readonly Word[] {
  if (names.length === 0) return words;
  const starts = new Set(names.map(({ from }) => from));
  return words.map((word) =>
    starts.has(word.from) ? { ...word, text: nobody, low: nobody, kind: 'mark' } : word,
  );
}

const sentenceEnds: ReadonlySet<string> = new Set(['.', ';', '!', '?']);
const clauseEnds: ReadonlySet<string> = new Set([',', ';', ':', '(', ')', '[', ']', '/']);
/** After these headings a semicolon parts the entries of a list. */
const listHeads: ReadonlySet<string> = new Set(
  'allergies allergy medications meds medicines implants devices'.split(' '),
);

/** Cuts words at marks, at words of contrast and where a new statement opens. */
function clausesOf(words: readonly Word[], cues: readonly CueAt[]): readonly Clause[] {
  const cutAt = new Set(cues.flatMap((one) => (one.cues.some((cue) => 'cuts' in cue) ? [one.at] : [])));
  const isInList = listTest(words);
  const clauses: Clause[] = [];
  let from = 0;
  let sentence = 0;
  const end = (to: number): void => {
    if (to > from) clauses.push({ from, to, sentence });
    from = to;
  };
  for (const [at, word] of words.entries()) {
    if (endsSentence(word) && !(word.text === ';' && isInList(at))) {
      end(at + 1);
      sentence += 1;
    } else if (word.kind === 'mark' && clauseEnds.has(word.text)) end(at + 1);
    else if (cutAt.has(at) || opens(words, at, from) || opensAll(words, at, from)) end(at);
  }
  end(words.length);
  return clauses;
}

const endsSentence = ({ kind, text }: Word): boolean =>
  kind === 'line' || (kind === 'mark' && sentenceEnds.has(text));

/** Says of places in their order whether a heading of a list is before them: "Allergies: penicillin; tape". */
function listTest(words: readonly Word[]): (at: number) => boolean {
  let listed = false;
  let next = 0;
  return (at) => {
    for (; next <= at; next += 1) {
      const { kind, text } = words[next]!;
      if (kind === 'line' || text === '.') listed = false;
      else if (text === ':' && listHeads.has(words[next - 1]?.low ?? '')) listed = true;
    }
    return listed;
  };
}

const determiners: ReadonlySet<string> = new Set(
  'the a an this that his her their our all both each these'.split(' '),
);
const pronouns: ReadonlySet<string> = new Set('he she they we i patient pt'.split(' '));
const auxiliaries: ReadonlySet<string> = new Set('was were is are has had'.split(' '));
const participles: ReadonlySet<string> = new Set(
  'prepped cleansed cleaned anesthetized anaesthetised anesthetised numbed injected infiltrated closed sutured repaired dressed bandaged covered sent submitted labeled labelled placed applied achieved'.split(
    ' ',
  ),
);
const leads: ReadonlySet<string> = new Set(
  'of with in on at by for from to and or the a an after before when as'.split(' '),
);

/** Whether a new statement opens at a place of a clause that began at `from`: "… and the wound was closed". */
function opens(words: readonly Word[], at: number, from: number): boolean {
  if (at - from < 2) return false;
  const { low } = words[at]!;
  const before = words[at - 1]!.low;
  const isJoined = before === 'and' || before === 'then';
  if (isJoined ? participles.has(low) || pronouns.has(low) : leads.has(before)) return isJoined;
  if (pronouns.has(low)) return true;
  return (isJoined || determiners.has(low)) && hasAuxiliary(words, at);
}

const longestSubject = 4;

/** Whether a verb follows the few words of a subject. */
function hasAuxiliary(words: readonly Word[], at: number): boolean {
  for (let place = at + 1; place <= at + longestSubject; place += 1) {
    const word = words[place];
    if (word === undefined || word.kind === 'mark' || word.kind === 'line' || leads.has(word.low))
      return false;
    if (auxiliaries.has(word.low)) return true;
  }
  return false;
}

/** "… both in formalin each with 1 mL": a new statement of all. */
function opensAll(words: readonly Word[], at: number, from: number): boolean {
  const { low } = words[at]!;
  const before = words[at - 1];
  return (
    (low === 'both' || low === 'each') && at - from > 2 && before?.kind === 'word' && !leads.has(before.low)
  );
}

/** What keeps each word from being a statement of this visit. */
function heldOf(
  words: readonly Word[],
  cues: readonly CueAt[],
  clauses: readonly Clause[],
  clauseOf: readonly number[],
): readonly (Hold | undefined)[] {
  const held = new Array<Hold | undefined>(words.length).fill(undefined);
  const hold = (from: number, to: number, by: Hold): void => {
    for (let place = from; place < to; place += 1) held[place] ??= by;
  };
  for (const { at, cues: several } of cues)
    for (const cue of several)
      if ('hold' in cue) hold(...reachOf(words, clauses, clauseOf[at]!, at, cue), cue.hold);
  for (const at of words.keys()) {
    const number = clauseOf[at]!;
    const { from, to } = clauses[number]!;
    if (isAfterSpan(words, at)) hold(at, to, 'past');
    if (isReportHead(words, at)) hold(at, sentenceEnd(clauses, number), 'report');
    if (year.test(words[at]!.low) && isSince(words, at)) hold(from, to, 'past');
  }
  return held;
}

/** The words that a cue at a place holds. */
function reachOf(
  words: readonly Word[],
  clauses: readonly Clause[],
  number: number,
  at: number,
  { hold, reach }: Extract<Cue, { readonly hold: Hold }>,
): readonly [from: number, to: number] {
  const own = clauses[number]!;
  const to = reach === 'sentence' ? sentenceEnd(clauses, number) : listEnd(words, clauses, number, at, hold);
  const from = reach === 'clause' ? own.from : at;
  return [own.to - from > longClause ? Math.max(from, at - farthest.denied) : from, to];
}

/** "10 days after excision of the calf": what was then is past. */
const isAfterSpan = (words: readonly Word[], at: number): boolean =>
  words[at]!.low === 'after' && spans.has(words[at - 1]?.unit ?? '');
const spans: ReadonlySet<string> = new Set(['days', 'weeks', 'months', 'years']);

/** "Pathology 3/9/26: …" heads what a laboratory reported. */
function isReportHead(words: readonly Word[], at: number): boolean {
  if (!reportHeads.has(words[at]!.low) || words[at - 1]?.kind === 'word') return false;
  if (words.slice(at + 1, at + 4).some(({ kind }) => kind === 'date')) return true;
  const after = words.slice(at + 1, at + farthestVerb);
  const end = after.findIndex(({ text, kind }) => kind === 'line' || text === '.');
  return after.slice(0, end < 0 ? undefined : end).some(({ low }) => reportVerbs.has(low));
}
const farthestVerb = 9;
const reportVerbs: ReadonlySet<string> = new Set(
  'showed shows revealed reveals demonstrated demonstrates returned came confirmed'.split(' '),
);
const reportHeads: ReadonlySet<string> = new Set([
  'pathology',
  'path',
  'dermpath',
  'result',
  'results',
  'report',
]);

const year = /^(?:19|20)\d\d$/;
const months = /^(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)/;
const times: ReadonlySet<string> = new Set(['in', 'since', 'from', 'early', 'late', 'until']);

/** "In 2019", "since March 2021": what is told with a year alone is past. */
const isSince = (words: readonly Word[], at: number): boolean => {
  const before = words[at - 1]?.low ?? '';
  return times.has(before) || (months.test(before) && times.has(words[at - 2]?.low ?? ''));
};

function sentenceEnd(clauses: readonly Clause[], number: number): number {
  let last = number;
  while (clauses[last + 1]?.sentence === clauses[number]!.sentence) last += 1;
  return clauses[last]!.to;
}

const longestList = 8;

/** A clause with more words is one of a text without marks, in which nothing reaches to its end. */
const longClause = 25;
const farthest = { denied: 4, other: 10 } as const;
const closes: ReadonlySet<string> = new Set(
  'used needed placed required done given performed seen noted taken'.split(' '),
);

/** Where words of a text without marks end that a cue at a place holds. */
function deniedEnd(words: readonly Word[], at: number, hold: Hold): number {
  const last = at + 1 + (hold === 'denied' ? farthest.denied : farthest.other);
  for (let place = at + 1; place < last; place += 1) {
    if (words[place]?.unit === 'years' || words[place]?.low === 'no') return place;
    if (closes.has(words[place]?.low ?? '')) return place + 1;
  }
  return last;
}

/** A cue among the first words of a statement, such as "last year", is of all of it. */
const opening = 3;
const resets: ReadonlySet<string> = new Set(
  'today now but however although though presents presenting then'.split(' '),
);

/** The end of the clauses that follow one without a mark or a word of contrast between. */
function openedEnd(words: readonly Word[], clauses: readonly Clause[], number: number): number {
  let last = number;
  for (;;) {
    const { to, sentence } = clauses[last]!;
    const next = clauses[last + 1];
    if (next?.sentence !== sentence || words[to - 1]!.kind === 'mark' || resets.has(words[to]!.low))
      return to;
    if (next.to - next.from > longClause) return to;
    last += 1;
  }
}

/** A denial goes on over the commas of a list that ends in an "or". */
function listEnd(
  words: readonly Word[],
  clauses: readonly Clause[],
  number: number,
  at: number,
  hold: Hold,
): number {
  const own = clauses[number]!;
  if (own.to - own.from > longClause) return Math.min(own.to, deniedEnd(words, at, hold));
  if (hold === 'denied') return orEnd(words, clauses, number);
  return at - own.from < opening ? openedEnd(words, clauses, number) : own.to;
}

/** The end of the part of a list that begins with an "or", or of the clause where none does. */
function orEnd(words: readonly Word[], clauses: readonly Clause[], number: number): number {
  const own = clauses[number]!;
  for (let next = number; next < number + longestList; next += 1) {
    const clause = clauses[next];
    if (clause?.sentence !== own.sentence) break;
    const first = words[clause.from]!.low;
    if (next > number && (first === 'or' || first === 'nor')) return clause.to;
    if (words[clause.to - 1]!.text !== ',') break;
  }
  return own.to;
}

/** Whether a term names something of a table. */
export const claimOf = ({ claims }: Term, table: Table): Claim | undefined =>
  claims.find((claim) => claim.table === table);

/** The words of places `at` to `end` as they are read, with a space between. */
export function plainOf({ words }: Pick<Scan, 'words'>, at: number, end: number): string {
  let plain = '';
  for (let place = at; place < end; place += 1) {
    const { text, kind, joined } = words[place]!;
    if (text === struck) continue;
    const glue = plain === '' || (kind === 'mark' && /^[,.;:)?!]$/.test(text)) ? '' : joined ? '-' : ' ';
    plain += glue + (kind === 'line' ? ' ' : text);
  }
  return plain;
}

/** The places of the frames of a clause, in their order. */
export function framesIn(
  { cues }: Scan,
  { from, to }: Clause,
): readonly { readonly frame: Frame; readonly at: number; readonly end: number }[] {
  return cuesBetween(cues, from, to).flatMap(({ at, end, cues: several }) =>
    several.flatMap((cue) => ('frame' in cue ? [{ frame: cue.frame, at, end }] : [])),
  );
}

/** The cues that begin between two places; found by halving, since there may be thousands. */
export function cuesBetween<One extends { readonly at: number }>(
  all: readonly One[],
  from: number,
  to: number,
): readonly One[] {
  let [low, high] = [0, all.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (all[middle]!.at < from) low = middle + 1;
    else high = middle;
  }
  let end = low;
  while (end < all.length && all[end]!.at < to) end += 1;
  return all.slice(low, end);
}

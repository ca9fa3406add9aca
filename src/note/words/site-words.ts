import { sites as referenceSites, type SiteRow } from '../../reference/sites.ts';
import type { WordTable } from './word-table.ts';

export type Side = 'left' | 'right' | 'both' | 'midline';

/** A word of a site, in the form in which words are compared; it is at characters `from` to `to` of the text. */
export interface Token {
  readonly word: string;
  readonly from: number;
  readonly to: number;
  /** Whether a comma or a parenthesis is before it. */
  readonly clause: boolean;
}

/** Base sites by their words in alphabetical order, so that "upper back" and "back, upper" are the same. */
export interface SiteIndex {
  readonly byPhrase: ReadonlyMap<string, SiteRow>;
  /** Most words that a name or synonym has. */
  readonly longest: number;
  /** Every word that is in a name or synonym, with the names and synonyms in which it does. */
  readonly vocabulary: Vocabulary;
}

export type Vocabulary = ReadonlyMap<string, readonly (readonly string[])[]>;

export interface SideMeaning {
  readonly side: Side;
  /** Whether it is a letter or two (`L`, `rt`), which can be misread. */
  readonly abbreviated: boolean;
}

const meaning = (side: Side, abbreviated = false): SideMeaning => ({ side, abbreviated });

export const sideWords: ReadonlyMap<string, SideMeaning> = new Map([
  ['left', meaning('left')],
  ['lt', meaning('left', true)],
  ['l', meaning('left', true)],
  ['right', meaning('right')],
  ['rt', meaning('right', true)],
  ['r', meaning('right', true)],
  ['both', meaning('both')],
  ['bilateral', meaning('both')],
  ['bilat', meaning('both', true)],
  ['b/l', meaning('both', true)],
  ['midline', meaning('midline')],
  // Quadrants of the abdomen.
  ['ruq', meaning('right')],
  ['rlq', meaning('right')],
  ['luq', meaning('left')],
  ['llq', meaning('left')],
]);

const wordSet = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** Words that say nothing about the place. */
export const fillers = wordSet(
  'of the on at in over aspect surface region area skin site sided part portion a an and just',
);

/** From such a word on the text says what is near the site, not what the site is. */
export const landmarkWords = wordSet(
  'below above under beneath beside near from to adjacent between toward towards behind off around inside cm mm inch inches',
);

export const surfaceWords = wordSet(
  'dorsal volar palmar plantar medial lateral anterior posterior upper lower proximal distal radial ulnar mid flexor extensor ventral',
);

/** Words that mean the same in a site. */
const sameWords: ReadonlyMap<string, string> = new Map(
  Object.entries({
    '&': 'and',
    nasal: 'nose',
    auricular: 'ear',
    dorsum: 'dorsal',
    middle: 'mid',
    central: 'mid',
    center: 'mid',
    centre: 'mid',
    inner: 'medial',
    outer: 'lateral',
    superior: 'upper',
    inferior: 'lower',
    front: 'anterior',
    ant: 'anterior',
    lat: 'lateral',
    med: 'medial',
    prox: 'proximal',
    dist: 'distal',
    sup: 'upper',
    inf: 'lower',
    feet: 'foot',
    axillae: 'axilla',
    alae: 'ala',
    canthi: 'canthus',
    helices: 'helix',
    calves: 'calf',
    scapulae: 'scapula',
    areolae: 'areola',
    first: '1st',
    second: '2nd',
    third: '3rd',
    fourth: '4th',
    fifth: '5th',
  }),
);

const prefixes = wordSet('pre post infra supra sub peri retro inter para anti');
const prefixed = new RegExp(`\\b(?:${[...prefixes].join('|')})\\b`);

/** The words of a text, in their order; "post-auricular" is one word, "nose/cheek" are two. */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let clause = true;
  let at = 0;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (!isWordCode(code)) {
      clause ||= code === comma || code === semicolon || code === opening || code === closing;
      at += 1;
      continue;
    }
    const from = at;
    while (at < text.length && isWordCode(text.charCodeAt(at), text.charCodeAt(at + 1))) at += 1;
    addWord(tokens, text.slice(from, at), from, clause);
    clause = false;
  }
  return tokens;
}

const [comma, semicolon, opening, closing, point, slash, and] = [44, 59, 40, 41, 46, 47, 38] as const;

/** Letters of any script, digits, `/` and `&`, and a point between digits; no typographic dashes, quotes or spaces. */
const isWordCode = (code: number, next = 0): boolean =>
  ((code | 32) >= 97 && (code | 32) <= 122) ||
  isDigit(code) ||
  (code >= 0xc0 && (code < 0x2000 || code > 0x206f)) ||
  code === slash ||
  code === and ||
  (code === point && isDigit(next));

const isDigit = (code: number): boolean => code >= 48 && code <= 57;

function addWord(tokens: Token[], typed: string, from: number, clause: boolean): void {
  const lower = typed.toLowerCase();
  if (lower.includes('/') && !sideWords.has(lower)) {
    let at = from;
    for (const part of typed.split('/')) {
      if (part !== '') addWord(tokens, part, at, clause && at === from);
      at += part.length + 1;
    }
    return;
  }
  const to = from + typed.length;
  const last = tokens.at(-1);
  if (last !== undefined && prefixes.has(last.word))
    tokens[tokens.length - 1] = { word: last.word + lower, from: last.from, to, clause: last.clause };
  else tokens.push({ word: sameWords.get(lower) ?? lower, from, to, clause });
}

/** A word as the index knows it: itself, or its singular. */
export function known(word: string, vocabulary: Vocabulary): string {
  if (!word.endsWith('s') || vocabulary.has(word)) return word;
  const singular = word.slice(0, -1);
  return vocabulary.has(singular) ? singular : word;
}

/** The key of words `from` to `to`: in alphabetical order, with a space between. */
export function phraseKey(words: readonly Token[], from: number, to: number): string {
  if (to - from === 1) return words[from]!.word;
  if (to - from === 2) {
    const [one, other] = [words[from]!.word, words[from + 1]!.word];
    return one < other ? `${one} ${other}` : `${other} ${one}`;
  }
  const part: string[] = [];
  for (let at = from; at < to; at += 1) part.push(words[at]!.word);
  return part.sort().join(' ');
}

const indexes = new WeakMap<WordTable<SiteRow>, SiteIndex>();

/** The index of a table, built when first asked for. Where two rows claim the same words the first has them. */
export function indexOf(sites: WordTable<SiteRow>): SiteIndex {
  const existing = indexes.get(sites);
  if (existing !== undefined) return existing;
  const built = sites.rows === referenceSites ? readyIndex() : buildIndex(sites.rows);
  indexes.set(sites, built);
  return built;
}

/** The words of a name of a table; most are plain letters and spaces, which need no taking apart. */
const wordsOf = (phrase: string): readonly string[] =>
  /^[a-z]+(?: [a-z]+)*$/.test(phrase) && !prefixed.test(phrase)
    ? phrase.split(' ').map((word) => sameWords.get(word) ?? word)
    : tokensOf(phrase).map(({ word }) => word);

/** Each name and synonym of the rows, by its key. */
function phrasesOf(rows: readonly SiteRow[]): {
  readonly phrases: readonly { readonly row: SiteRow; readonly key: string; readonly length: number }[];
  readonly vocabulary: Vocabulary;
} {
  const split: { readonly row: SiteRow; readonly words: readonly string[] }[] = [];
  for (const row of rows)
    for (const phrase of [row.name, ...row.synonyms])
      split.push({ row, words: wordsOf(phrase).filter((word) => !fillers.has(word)) });
  const vocabulary = new Map<string, (readonly string[])[]>();
  for (const { words } of split)
    for (const word of words) if (!vocabulary.has(word)) vocabulary.set(word, []);
  const phrases = split.map(({ row, words }) => {
    const singular = words.map((word) => known(word, vocabulary));
    for (const word of singular) vocabulary.get(word)?.push(singular);
    const key = singular.length === 1 ? singular[0]! : [...singular].sort().join(' ');
    return { row, key, length: singular.length };
  });
  return { phrases, vocabulary };
}

/** The index of the reference sites in JSON, with the numbers of the rows. */
interface ReadyIndex {
  readonly byPhrase: readonly (readonly [key: string, row: number])[];
  readonly longest: number;
  readonly vocabulary: readonly (readonly [word: string, phrases: readonly (readonly string[])[]])[];
}

declare const WHEAL_SITE_INDEX: string;

/** A bundle carries what `siteIndexText` made when it was built: to read it takes a tenth of the time. */
function readyIndex(): SiteIndex {
  if (typeof WHEAL_SITE_INDEX !== 'string') return buildIndex(referenceSites);
  const { byPhrase, longest, vocabulary } = JSON.parse(WHEAL_SITE_INDEX) as ReadyIndex;
  const rows = new Map<string, SiteRow>();
  for (const [key, row] of byPhrase) rows.set(key, referenceSites[row]!);
  return { byPhrase: rows, longest, vocabulary: new Map(vocabulary) };
}

/** The index of the reference sites as a text that a bundle can carry. */
export function siteIndexText(): string {
  const { byPhrase, longest, vocabulary } = buildIndex(referenceSites);
  const numbers = new Map(referenceSites.map((row, number) => [row, number]));
  const ready: ReadyIndex = {
    byPhrase: [...byPhrase].map(([key, row]) => [key, numbers.get(row)!]),
    longest,
    vocabulary: [...vocabulary],
  };
  return JSON.stringify(ready);
}

function buildIndex(rows: readonly SiteRow[]): SiteIndex {
  const { phrases, vocabulary } = phrasesOf(rows);
  const byPhrase = new Map<string, SiteRow>();
  let longest = 0;
  for (const { row, key, length } of phrases) {
    if (!byPhrase.has(key)) byPhrase.set(key, row);
    longest = Math.max(longest, length);
  }
  return { byPhrase, longest, vocabulary };
}

/** Phrases that two rows claim: "name and name: phrase". Only the first row is found by them. */
export function sharedPhrases(rows: readonly SiteRow[]): readonly string[] {
  const owner = new Map<string, SiteRow>();
  return phrasesOf(rows).phrases.flatMap(({ row, key }) => {
    const other = owner.get(key) ?? row;
    owner.set(key, other);
    return other === row ? [] : [`${other.name} and ${row.name}: ${key}`];
  });
}

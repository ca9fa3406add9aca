import { once } from '../text/once.ts';
import { remembered } from '../text/remembered.ts';
import type { SiteRegion, SiteRow } from '../../reference/sites.ts';
import {
  fillers,
  indexOf,
  known,
  landmarkWords,
  phraseKey,
  sideWords,
  surfaceWords,
  tokensOf,
  type Side,
  type SideMeaning,
  type SiteIndex,
  type Token,
} from './site-words.ts';
import type { WordTable } from './word-table.ts';

/** A word of the text that says a side, at characters `from` to `to`. */
export interface SideWord {
  readonly side: Side;
  readonly from: number;
  readonly to: number;
  /** Whether it is a letter or two (`L`, `rt`), which can be misread. */
  readonly abbreviated: boolean;
  /** Whether it says where beside a place: "left of the glabella". */
  readonly beside: boolean;
  /** Whether it says where beside the midline: "4 cm right of midline". */
  readonly ofMidline: boolean;
}

/** What the words of a site say. */
export interface SiteReading {
  readonly base: SiteRow;
  /** The side as written; undefined where none is, or where two contradict each other. */
  readonly side: Side | undefined;
  /** The words that say a side of this site, in the order of the text. */
  readonly sides: readonly SideWord[];
  /** The second of two sides that exclude each other. */
  readonly contradiction: SideWord | undefined;
  /** Number of the finger or toe, from the thumb or great toe. */
  readonly digit: number | undefined;
  /** dorsal, volar, medial, lateral, upper …, as far as the base site does not say it already. */
  readonly surface: string | undefined;
  /** The words that are neither base site nor side nor landmark, in the order of the text. */
  readonly qualifiers: readonly string[];
  /** Whether the words also say what is near: "2 cm below the eye". */
  readonly landmarks: boolean;
  /** Whether the words are too loose to find the place again: "back", "arm". */
  readonly vague: boolean;
}

/** Words of a site taken apart. */
interface Parts {
  /** Words that name the site, in the order of the text. */
  readonly words: readonly Token[];
  /** All words, with those that only say what is near: "2 cm below the eye". */
  readonly all: readonly Token[];
  readonly sides: readonly SideWord[];
  /** Sides of what is near. */
  readonly farSides: readonly SideWord[];
}

interface Phrase {
  readonly base: SiteRow;
  readonly words: readonly Token[];
}

/** Longer texts describe more than a site. */
const longestSite = 500;

/** Regions through which the midline of the body runs; elsewhere "midline" may be that of a limb. */
export const onBodyMidline: ReadonlySet<SiteRegion> = new Set([
  'scalp',
  'face',
  'nose',
  'mouth',
  'neck',
  'chest',
  'abdomen',
  'back',
]);

const ofLimb: ReadonlySet<SiteRegion> = new Set(['arm', 'hand', 'leg', 'foot', 'nail']);

/** Regions whose middle is a place of its own, so that "mid" and "central" answer the question for the side. */
const middled: ReadonlySet<SiteRegion> = new Set(['neck', 'chest', 'abdomen', 'back', 'scalp']);

/**
 * Reads a body site from free words in any order: "left upper back", "R nasal ala", "dorsum of right 3rd finger".
 * Undefined where no base site is known in it.
 */
export const readSite = (text: string, sites: WordTable<SiteRow>): SiteReading | undefined =>
  readings(sites)(text);

const readings = once((sites: WordTable<SiteRow>) => remembered((text) => read(text, sites)));

function read(text: string, sites: WordTable<SiteRow>): SiteReading | undefined {
  if (text.length > longestSite) return undefined;
  const index = indexOf(sites);
  const parts = partsOf(tokensOf(text), index);
  const phrase = longestPhrase(parts.words, index);
  if (phrase !== undefined) {
    const base = narrowedBy(parts, phrase.base, sites);
    return readingOf(parts, { ...phrase, base }, spokenOf(parts, base));
  }
  const near = parts.all.length > parts.words.length ? longestPhrase(parts.all, index, true) : undefined;
  return near === undefined ? undefined : readingOf(parts, near, [...parts.sides, ...parts.farSides]);
}

/** The row that another word of the text makes of a base site, where it names one. */
function narrowedBy({ all }: Parts, base: SiteRow, sites: WordTable<SiteRow>): SiteRow {
  const { narrowed } = base;
  if (narrowed === undefined) return base;
  const name = all.map(({ word }) => narrowed.get(word)).find((one) => one !== undefined);
  return (name === undefined ? undefined : sites.find(name)) ?? base;
}

/** What is near a place of a limb is on the same limb, so that its side is that of the site where none else is said. */
const spokenOf = ({ sides, farSides }: Parts, { region }: SiteRow): readonly SideWord[] =>
  sides.length === 0 && farSides.length === 1 && ofLimb.has(region) ? farSides : sides;

function partsOf(tokens: readonly Token[], { vocabulary }: SiteIndex): Parts {
  const words: Token[] = [];
  const all: Token[] = [];
  const sides: SideWord[] = [];
  const farSides: SideWord[] = [];
  let far = false;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (token.clause) far = false;
    const meaning = sideWords.get(token.word);
    if (meaning !== undefined) {
      const side = sideAt(tokens, at, meaning);
      if (side.beside && endsAtMidline(tokens, at)) {
        sides.push({ ...side, beside: false, ofMidline: true });
        at = nextWord(tokens, at);
      } else (far ? farSides : sides).push(side);
    } else if (!fillers.has(token.word)) {
      far ||= startsLandmarks(tokens, at);
      const word = known(token.word, vocabulary);
      const plain = word === token.word ? token : { ...token, word };
      all.push(plain);
      if (!far) words.push(plain);
    }
  }
  return { words, all, sides: joinPairs(sides, tokens), farSides };
}

const startsLandmarks = (tokens: readonly Token[], at: number): boolean => {
  const next = tokens[at + 1]?.word;
  return landmarkWords.has(tokens[at]!.word) || next === 'to' || next === 'cm' || next === 'mm';
};

function sideAt(tokens: readonly Token[], at: number, { side, abbreviated }: SideMeaning): SideWord {
  const { from, to } = tokens[at]!;
  const next = tokens[at + 1]?.word;
  const beside = next === 'of' || (next === 'side' && tokens[at + 2]?.word === 'of');
  return { side, from, to, abbreviated, beside, ofMidline: false };
}

/** The place of the next word that is no filler. */
function nextWord(tokens: readonly Token[], at: number): number {
  let next = at + 1;
  while (next < tokens.length && fillers.has(tokens[next]!.word)) next += 1;
  return next;
}

const endsAtMidline = (tokens: readonly Token[], at: number): boolean =>
  tokens[nextWord(tokens, at)]?.word === 'midline';

/** "left and right" means both. */
function joinPairs(sides: readonly SideWord[], tokens: readonly Token[]): readonly SideWord[] {
  const [one, two] = sides;
  if (sides.length !== 2 || one === undefined || two === undefined || one.side === two.side) return sides;
  const after = tokens.findIndex(({ from }) => from === one.from) + 1;
  const paired = tokens[after]?.word === 'and' && tokens[after + 1]?.from === two.from;
  return paired
    ? [{ ...one, side: 'both', to: two.to, abbreviated: one.abbreviated || two.abbreviated }]
    : sides;
}

/**
 * The longest run of words that names a base site; the first of equals. With `byLandmark` only a site that is named
 * by what it is near counts: "behind the ear", but not the ear of "2 cm below the ear".
 */
function longestPhrase(words: readonly Token[], index: SiteIndex, byLandmark = false): Phrase | undefined {
  for (let length = Math.min(index.longest, words.length); length > 0; length -= 1) {
    for (let from = 0; from + length <= words.length; from += 1) {
      if (!together(words, from, from + length, index)) continue;
      const base = index.byPhrase.get(phraseKey(words, from, from + length));
      if (base === undefined) continue;
      const phrase = words.slice(from, from + length);
      if (!byLandmark || phrase.some(({ word }) => landmarkWords.has(word))) return { base, words: phrase };
    }
  }
  return undefined;
}

/** Whether each two neighbors among these words are in one phrase: cheaper to ask than to look the phrase up. */
function together(words: readonly Token[], from: number, to: number, { vocabulary }: SiteIndex): boolean {
  for (let at = from + 1; at < to; at += 1) {
    const beside = words[at]!.word;
    if (vocabulary.get(words[at - 1]!.word)?.some((phrase) => phrase.includes(beside)) !== true) return false;
  }
  return true;
}

function readingOf({ words, all }: Parts, phrase: Phrase, spoken: readonly SideWord[]): SiteReading {
  const { base } = phrase;
  const qualifiers = qualifiersOf(words, phrase);
  const landmarks =
    all.length > words.length && all.some((token) => !words.includes(token) && !phrase.words.includes(token));
  const surface = qualifiers.filter((word) => surfaceWords.has(word)).join(' ');
  const sides = ownSides(spoken, base);
  const contradiction = sides.length < 2 ? undefined : sides.find(({ side }) => side !== sides[0]?.side);
  return {
    base,
    side: contradiction === undefined ? (sides[0]?.side ?? middle(base, qualifiers)) : undefined,
    sides,
    contradiction,
    digit: base.digit,
    surface: surface === '' ? undefined : surface,
    qualifiers,
    landmarks,
    vague: base.vague && surface === '' && !landmarks,
  };
}

const noQualifiers: readonly string[] = [];

function qualifiersOf(words: readonly Token[], phrase: Phrase): readonly string[] {
  if (words.length === phrase.words.length) return noQualifiers;
  return words
    .filter((token) => token.word !== 'side' && !phrase.words.includes(token))
    .map(({ word }) => word);
}

/** The sides that are those of the site itself. */
function ownSides(spoken: readonly SideWord[], base: SiteRow): readonly SideWord[] {
  const own = onBodyMidline.has(base.region) ? spoken : spoken.filter(({ ofMidline }) => !ofMidline);
  return own.some(({ beside }) => !beside) ? own.filter(({ beside }) => !beside) : own;
}

const middle = (base: SiteRow, qualifiers: readonly string[]): Side | undefined =>
  middled.has(base.region) && qualifiers.includes('mid') ? 'midline' : undefined;

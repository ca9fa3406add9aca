import { wordSet } from './word-set.ts';
import type { Span, Word } from './speech/word.ts';

const titles = wordSet('dr mr mrs ms miss prof doctor nurse');
/** After these two capitalized words are a person. */
const leads = wordSet(
  'patient name is by assistant scribe clinician provider surgeon physician cc : nurse technician with from to for',
);
const credentials = wordSet('md do pa np rn ma lpn fnp aprn m.d. d.o.');

const capital = /^\p{Lu}[\p{Ll}'’][\p{L}'’]*$/u;

/**
 * Where names of persons are among the words of a text: what follows a title, and two capitalized words after "patient",
 * "performed by" and the like or before a credential.
 * @param isKnown whether a word is one of the tables or of everyday speech, and so no name
 */
export function namesIn(words: readonly Word[], isKnown: (low: string) => boolean): readonly Span[] {
  const places = new Set<number>();
  for (const [at, { kind }] of words.entries())
    if (kind === 'word') for (const place of namedFrom(words, at, isKnown)) places.add(place);
  const again = new Set([...places].map((place) => words[place]!.text).filter((text) => capital.test(text)));
  for (const [at, { text }] of words.entries())
    if (again.has(text) && words[at - 1]?.kind === 'word') places.add(at);
  return [...places]
    .sort((one, other) => one - other)
    .map((place) => ({ from: words[place]!.from, to: words[place]!.to }));
}

const kin = wordSet(
  'son daughter wife husband mother father brother sister friend partner spouse caregiver niece nephew aunt uncle neighbor neighbour companion driver named called',
);
const ofPerson = wordSet(
  'is was has had presents presented returns returned came called comes here will and says',
);

/** Whether a pair at the beginning of a statement does what only persons do: "Jane Doe is a 64-year-old". */
function isSubject(words: readonly Word[], at: number): boolean {
  const next = words[at + 2];
  if (next === undefined || (at > 0 && words[at - 1]!.kind === 'word')) return false;
  const isAge = next.text === ',' && /^\d/.test(words[at + 3]?.low ?? '');
  return isAge || next.unit === 'years' || ofPerson.has(next.low);
}

/** The places of a name to which the word at a place leads, or that begins there. */
function namedFrom(words: readonly Word[], at: number, isKnown: (low: string) => boolean): readonly number[] {
  if (titles.has(words[at]!.low)) return afterTitle(words, at, isKnown);
  if (isHeaded(words, at)) return afterHead(words, at + 2, isKnown);
  if (isName(words[at], isKnown) && kin.has(words[at - 1]?.low ?? '')) return namesOn(words, at, isKnown);
  if (!isPair(words, at, isKnown)) return [];
  if (!isLed(words, at) && !credentials.has(afterPair(words, at)) && !isSubject(words, at)) return [];
  return namesOn(words, at, isKnown);
}

/** The words of a name from a place on. */
function namesOn(words: readonly Word[], at: number, isKnown: (low: string) => boolean): readonly number[] {
  const places: number[] = [];
  for (let place = at; isName(words[place], isKnown); place += 1) places.push(place);
  return places;
}

const longestName = 3;

function afterTitle(
  words: readonly Word[],
  at: number,
  isKnown: (low: string) => boolean,
): readonly number[] {
  const start = words[at + 1]?.text === '.' ? at + 2 : at + 1;
  const places: number[] = [];
  for (let place = start; place < start + longestName; place += 1) {
    const word = words[place];
    if (word?.kind !== 'word') break;
    const isName = capital.test(word.text) || /^\p{Lu}\.?$/u.test(word.text);
    if (!isName && isKnown(word.low)) break;
    if (place > start && !isName) break;
    places.push(place);
  }
  return places;
}

const heads = wordSet('patient name pt');

/** "Patient:", "name:". */
const isHeaded = (words: readonly Word[], at: number): boolean =>
  heads.has(words[at]!.low) && words[at + 1]?.text === ':';

const longestHeaded = 5;

/** The words after the heading of a name that are no others, however they are written. */
function afterHead(
  words: readonly Word[],
  from: number,
  isKnown: (low: string) => boolean,
): readonly number[] {
  const places: number[] = [];
  for (let place = from; place < from + longestHeaded; place += 1) {
    const word = words[place];
    if (word?.text === ',' && place > from) continue;
    if (word?.kind !== 'word' || isKnown(word.low)) break;
    places.push(place);
  }
  return places;
}

const isName = (word: Word | undefined, isKnown: (low: string) => boolean): boolean =>
  word?.kind === 'word' && capital.test(word.text) && !isKnown(word.low);

/** Two capitalized words, the second perhaps after a comma: `Jane Doe`, `Doe, Jane`. */
const isPair = (words: readonly Word[], at: number, isKnown: (low: string) => boolean): boolean =>
  isName(words[at], isKnown) && isName(words[at + 1], isKnown);

const isLed = (words: readonly Word[], at: number): boolean => leads.has(words[at - 1]?.low ?? '');

const afterPair = (words: readonly Word[], at: number): string =>
  words[at + 2]?.text === ',' ? (words[at + 3]?.low ?? '') : (words[at + 2]?.low ?? '');

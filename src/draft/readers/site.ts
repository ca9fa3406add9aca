import { readSite, type SiteReading } from '../../note/words/site.ts';
import {
  fillers,
  indexOf,
  known,
  sideWords,
  surfaceWords,
  tokensOf,
  type Vocabulary,
} from '../../note/words/site-words.ts';
import type { Gather } from '../gather.ts';
import { wordSet } from '../word-set.ts';
import { plainOf } from '../scan.ts';
import type { Word } from '../speech/word.ts';

/** A body site that a text names, at places `at` to `end`. */
export interface SiteNamed {
  readonly at: number;
  readonly end: number;
  readonly value: string;
  readonly reading: SiteReading;
}

/** Words that are in names of sites and mean other things too: they begin no site without a side before them. */
const loose = wordSet(
  'and to line area bed base root tip web mid first second third fourth fifth 1st 2nd 3rd 4th 5th fold folds part point back side',
);
const sideText: ReadonlyMap<string, string> = new Map([
  ['l', 'left'],
  ['lt', 'left'],
  ['r', 'right'],
  ['rt', 'right'],
  ['b/l', 'both'],
]);

/** Finds the body sites that a text names, each as long as its words go on. */
export function sitesIn({ scan }: Gather): readonly SiteNamed[] {
  const { vocabulary } = indexOf(scan.tables.sites);
  const isSite = wordTest(vocabulary);
  const lows = scan.words.map(({ low }) => low);
  const named: SiteNamed[] = [];
  for (let at = 0; at < lows.length;) {
    const end = runEnd(lows, at, isSite);
    const one = end > at ? siteOf(scan, at, end) : undefined;
    if (one !== undefined) named.push(withSide(scan, one));
    at = Math.max(end, at + 1);
  }
  return named;
}

/** "The left one, on the cheek" is the left cheek, and "R. cheek" the right one. */
function withSide({ words, tables }: Gather['scan'], site: SiteNamed): SiteNamed {
  const before = site.reading.side === undefined ? sideBefore(words, site.at) : undefined;
  const value = before && `${before.side} ${site.value}`;
  const reading = value === undefined ? undefined : readSite(value, tables.sites);
  return before === undefined || reading === undefined
    ? site
    : { ...site, at: before.at, value: value!, reading };
}

/** The side that is said before a site, and where. */
function sideBefore(
  words: readonly Word[],
  at: number,
): { readonly at: number; readonly side: string } | undefined {
  const [letter, stop] = [words[at - 2], words[at - 1]];
  if (stop?.text === '.' && /^[LR]t?$/.test(letter?.text ?? '') && stop.from === letter!.to)
    return { at: at - 2, side: sideText.get(letter!.low)! };
  for (let place = at - 1; place >= at - 5; place -= 1)
    if (words[place]?.low === 'one' && isSide(words[place - 1]?.low))
      return { at: place - 1, side: words[place - 1]!.low };
  return undefined;
}

/** Whether a word is in the name of a site; asked once for each word. */
function wordTest(vocabulary: Vocabulary): (low: string) => boolean {
  const asked = new Map<string, boolean>();
  return (low) => {
    let answer = asked.get(low);
    if (answer === undefined) {
      answer =
        /^[\p{L}\d/]+$/u.test(low) &&
        tokensOf(low).some(({ word }) => vocabulary.has(known(word, vocabulary)) || surfaceWords.has(word));
      asked.set(low, answer);
    }
    return answer;
  };
}

const inside = (low: string): boolean => fillers.has(low) && low !== 'and' && low !== 'a' && low !== 'an';

/** The place after the last word of a site that begins at a place. */
function runEnd(lows: readonly string[], at: number, isSite: (low: string) => boolean): number {
  const begins = (low: string): boolean => sideWords.has(low) || isSite(low);
  if (!begins(lows[at]!) || lows[at] === 'and' || lows[at] === 'to') return at;
  let end = at + 1;
  for (let place = end; place < lows.length; place += 1) {
    const low = lows[place]!;
    if (low === 'and' || low === 'to') break;
    if (begins(low)) end = place + 1;
    else if (low === ',' ? !isLastSide(lows, place + 1) : !inside(low)) break;
  }
  return end;
}

/** "Cheek, left": a side after a comma with nothing after it. */
const isLastSide = (lows: readonly string[], at: number): boolean =>
  isSide(lows[at]) && /^[.,;:()\n]?$/.test(lows[at + 1]?.slice(0, 1) ?? '');

const isSide = (low: string | undefined): boolean => low !== undefined && sideWords.has(low);

function siteOf(scan: Gather['scan'], at: number, end: number): SiteNamed | undefined {
  const { words, tables } = scan;
  let from = at;
  while (
    from < end - 1 &&
    isLoose(words, from) &&
    readSite(plainOf(scan, from, end), tables.sites) === undefined
  )
    from += 1;
  from = afterCount(words, afterOther(scan, from, end), end);
  const { low } = words[from]!;
  const isVague = end - from === 1 && loose.has(low);
  if (isVague && (low !== 'back' || !isBack(words[from - 1]?.low))) return undefined;
  const value = valueOf(scan, from, end);
  const reading = readSite(value, tables.sites);
  return reading === undefined ? undefined : { at: from, end, value, reading };
}

const placing: ReadonlySet<string> = new Set(['on', 'at', 'over']);

/** "Border on the right upper back": what is on a site is no part of its name. */
function afterOther({ words, tables }: Gather['scan'], from: number, end: number): number {
  for (let at = end - 2; at > from; at -= 1) {
    if (!placing.has(words[at]!.low)) continue;
    const next = words[at + 1]!.low === 'the' ? at + 2 : at + 1;
    const tail = words
      .slice(next, end)
      .map(({ low }) => low)
      .join(' ');
    if (readSite(tail, tables.sites) !== undefined) return next;
  }
  return from;
}

const isCount = (word: Word | undefined): boolean => /^\d+$/.test(word?.low ?? '');

/** "3 on the arm": the number is of something else. */
function afterCount(words: readonly Word[], from: number, end: number): number {
  if (!isCount(words[from]) || !inside(words[from + 1]?.low ?? '')) return from;
  let at = from;
  while (at < end - 1 && (isCount(words[at]) || inside(words[at]!.low))) at += 1;
  return at;
}

const isLoose = (words: readonly Word[], at: number): boolean =>
  loose.has(words[at]!.low) && !isSide(words[at + 1]?.low);

/** "The back" is a site; "come back" is none. */
const isBack = (before: string | undefined): boolean => before === 'the' || before === ':';

function valueOf(scan: Gather['scan'], at: number, end: number): string {
  const typed = plainOf(scan, at, end);
  const lower = typed === typed.toUpperCase() ? typed.toLowerCase() : typed;
  return lower.replace(
    /^[\p{L}/]+(?=\s|$)|(?<=\s)[\p{L}/]+$/gu,
    (word) => sideText.get(word.toLowerCase()) ?? word,
  );
}

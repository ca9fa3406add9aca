import type { SiteRow } from '../../reference/sites.ts';
import { nearest } from '../text/nearest.ts';
import { readSite, type SiteReading } from './site.ts';
import { fillers, indexOf, known, landmarkWords, sideWords, surfaceWords, tokensOf } from './site-words.ts';
import type { WordTable } from './word-table.ts';

/** A site with its misspelled words put right. */
export interface NearestSite {
  readonly reading: SiteReading;
  readonly text: string;
  /** Each misspelled word, at characters `from` to `to` of the text as typed, with what it should be. */
  readonly words: readonly { readonly from: number; readonly to: number; readonly text: string }[];
  /** Whether each word has only one that it can be, and is none itself. */
  readonly sure: boolean;
  /** Whether one of the words may be meant as it is. */
  readonly other: boolean;
}

/** Texts longer than this are no sites with a slip in them. */
const longestMended = 200;

const writtenSides = [...sideWords].flatMap(([word, { abbreviated }]) => (abbreviated ? [] : [word]));

/**
 * The site that a text with misspelled words is meant to be: "upper bakc". Undefined where no word is misspelled or no
 * base site results. Compares with every known word, so it is for texts that are going to be shown as unknown.
 */
export function nearestSite(text: string, sites: WordTable<SiteRow>): NearestSite | undefined {
  if (text.length > longestMended) return undefined;
  const { vocabulary } = indexOf(sites);
  const unknown = tokensOf(text).filter(
    ({ word }) => !vocabulary.has(known(word, vocabulary)) && !isPlain(word),
  );
  if (unknown.length === 0) return undefined;
  const candidates = [...vocabulary.keys(), ...writtenSides, ...surfaceWords];
  const meant = unknown.flatMap(({ word, from, to }) => {
    const found = nearest(word, candidates);
    return found === undefined ? [] : [{ from, to, text: found.word, sure: found.sure, other: found.other }];
  });
  if (meant.length === 0) return undefined;
  const words = meant.map(({ from, to, text: word }) => ({ from, to, text: word }));
  const put = words.reduceRight(
    (done, { from, to, text: word }) => done.slice(0, from) + word + done.slice(to),
    text,
  );
  const reading = readSite(put, sites);
  return reading === undefined
    ? undefined
    : {
        reading,
        text: put,
        words,
        sure: meant.every(({ sure }) => sure),
        other: meant.some(({ other }) => other),
      };
}

const isPlain = (word: string): boolean =>
  sideWords.has(word) || fillers.has(word) || landmarkWords.has(word) || surfaceWords.has(word);

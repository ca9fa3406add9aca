import type { Leaf } from '../../note/tree/leaf.ts';
import { within, type Range } from '../../note/tree/tree.ts';
import { readMentions } from '../../note/words/mentions/read.ts';
import { placeNames } from '../lookups.ts';
import type { Located } from './_side.ts';

const opposite = {
  left: /\b(?:[Rr]ight|RIGHT|[Rr]t\.?|RT|R)\s+/g,
  right: /\b(?:[Ll]eft|LEFT|[Ll]t\.?|LT|L)\s+/g,
} as const;

/** Words under which the other side may well be named: it is not this lesion. */
const elsewhere =
  /\b(?:similar|also|another|other|others|second|like|unlike|than|compared?|contralateral|mirror|versus|vs|and|scar|since|after)\b[^.;]*$/i;

/** Another side of the very place of a site, named in another text. */
interface OtherSide {
  readonly at: Range;
  readonly first: 'left' | 'right';
  readonly second: 'left' | 'right';
}

/**
 * The first place of a text that names the site on the other side and is not plainly about another one.
 * @param isOther whether the sentence around the name is about something else
 */
export function otherSideIn(
  leaf: Leaf<string> | undefined,
  { site, reading: { side, sides, base } }: Located,
  isOther: (sentence: string) => boolean = () => false,
): OtherSide | undefined {
  const [word] = sides;
  const text = leaf?.value;
  if (leaf === undefined || text === undefined || word === undefined) return undefined;
  if (side !== 'left' && side !== 'right') return undefined;
  const names = [wordsAfter(site, word.to), base.name].filter((name) => name !== '');
  const place = placesIn(text, side, names).find(
    ({ from, to }) =>
      !elsewhere.test(text.slice(Math.max(0, from - longestSentence), from)) &&
      !isOther(sentenceAround(text, from, to)) &&
      !isTakenBack(text, from, to),
  );
  if (place === undefined) return undefined;
  const second = side === 'left' ? 'right' : 'left';
  return { at: within(leaf.node, place.from, place.to), first: side, second };
}

/** Whether the words about a place deny it, or mention the past or of another person. */
const isTakenBack = (text: string, from: number, to: number): boolean =>
  readMentions(text, placeNames([text.slice(from, to)])).some(
    (one) => one.from <= from && one.to >= to && (one.answer === 'denied' || one.why === 'in the past'),
  );

/** Where a text has one of the names on the side opposite to `side`. */
function placesIn(
  text: string,
  side: 'left' | 'right',
  names: readonly string[],
): readonly { readonly from: number; readonly to: number }[] {
  const longest = Math.max(0, ...names.map(({ length }) => length));
  return Array.from(text.matchAll(opposite[side])).flatMap((match) => {
    const to = match.index + match[0].length;
    const rest = text.slice(to, to + longest).toLowerCase();
    const name = names.find((one) => rest.startsWith(one));
    return name === undefined ? [] : [{ from: match.index, to: to + name.length }];
  });
}

/** The words of a site after its side, to the next comma. */
const wordsAfter = (site: Leaf<string>, from: number): string =>
  site.text
    .slice(from)
    .replace(/[,;(][^]*$/, '')
    .trim()
    .toLowerCase();

/** Of a sentence without an end no more is looked at on each side of a place. */
const longestSentence = 1000;

function sentenceAround(text: string, from: number, to: number): string {
  const before = text.slice(Math.max(0, from - longestSentence), from);
  const after = text.slice(to, to + longestSentence);
  const start = Math.max(before.lastIndexOf('.'), before.lastIndexOf(';')) + 1;
  const end = after.search(/[.;]/);
  return before.slice(start) + text.slice(from, to) + (end < 0 ? after : after.slice(0, end));
}

import type { Leaf } from '../../note/tree/leaf.ts';
import { within, type Range } from '../../note/tree/tree.ts';
import type { Located } from './_side.ts';

const opposite = { left: /\bright\s+/gi, right: /\bleft\s+/gi } as const;

/** Words under which the other side may well be named: it is not this lesion. */
const elsewhere =
  /\b(?:history|hx|prior|previous|previously|similar|also|another|other|others|second|like|unlike|than|compared?|contralateral|mirror|versus|vs|and|scar|since|after)\b[^.;]*$/i;

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
    ({ from, to }) => !elsewhere.test(text.slice(0, from)) && !isOther(sentenceAround(text, from, to)),
  );
  if (place === undefined) return undefined;
  const second = side === 'left' ? 'right' : 'left';
  return { at: within(leaf.node, place.from, place.to), first: side, second };
}

/** Where a text has one of the names on the side opposite to `side`. */
function placesIn(
  text: string,
  side: 'left' | 'right',
  names: readonly string[],
): readonly { readonly from: number; readonly to: number }[] {
  return Array.from(text.matchAll(opposite[side])).flatMap((match) => {
    const to = match.index + match[0].length;
    const rest = text.slice(to).toLowerCase();
    const name = names.find((one) => rest.startsWith(one));
    return name === undefined ? [] : [{ from: match.index, to: to + name.length }];
  });
}

/** The words of a site after its side, to the next comma. */
const wordsAfter = (site: Leaf<string>, from: number): string =>
  site.text
    .slice(from)
    .replace(/[,;(].*$/, '')
    .trim()
    .toLowerCase();

function sentenceAround(text: string, from: number, to: number): string {
  const start = Math.max(text.lastIndexOf('.', from), text.lastIndexOf(';', from)) + 1;
  const end = text.slice(to).search(/[.;]/);
  return text.slice(start, end < 0 ? text.length : to + end);
}

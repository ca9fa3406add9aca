/** What is read as another character than it is, or as none; in most texts there is nothing of it. */
const strange =
  /[\u034f\u17b4\u17b5\u180b-\u180d\ufe00-\ufe0f\u00a0\u00ad\u0391-\u03a7\u03bf\u0405-\u051d\u061c\u115f\u1160\u1680\u180e\u2000-\u2011\u2028-\u202f\u205f-\u206f\u3000\u3164\ufeff\uff05-\uff5a\uffa0]|\r(?!\n)|\udb40[\udc00-\udfff]/;

/** Whether a text may hold characters that are read as others, or as none. */
export const isStrange = (text: string): boolean => strange.test(text);

/** Characters that nobody sees: of no width, hyphens that show at the end of a line only, selectors, fillers and tags. */
const invisible =
  /[\u034f\u17b4\u17b5\u180b-\u180d\ufe00-\ufe0f\u00ad\u115f\u1160\u180e\u200b-\u200d\u2060-\u2065\u206a-\u206f\u3164\ufeff\uffa0]|\udb40[\udc00-\udfff]/;

/** Characters that turn the direction in which a text shows: it is then read otherwise than it is. */
const turning = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/;

const unseen = new RegExp(`(?:${invisible.source}|${turning.source})+`, 'g');

/** Spaces of other widths, and those at which no line may break. */
const spaces = /[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]+/g;

/** Letters, digits and some signs as wide as those of Chinese and Japanese; how far they are from the usual ones. */
const wide = /[\uff05\uff0b-\uff1a\uff21-\uff3a\uff41-\uff5a]+/g;
const wideOffset = 0xfee0;

/** Cyrillic and Greek letters that look like Latin ones, and those. */
const lookAlikes: ReadonlyMap<string, string> = new Map(
  (
    [
      ['АВЕЅІЈКМНОРСТУХҮ', 'ABESIJKMHOPCTYXY'],
      ['аеорсухѕіјһԁԛԝ', 'aeopcyxsijhdqw'],
      ['ΑΒΕΖΗΙΚΜΝΟΡΤΥΧο', 'ABEZHIKMNOPTYXo'],
    ] as const
  ).flatMap(([others, letters]) => Array.from(others, (other, at) => [other, letters[at]!] as const)),
);

const otherLetter = /[\u0391-\u03bf\u0405-\u051d]/;

/** A word with what nobody sees in it, whatever its letters are. */
const words = /[\w\u00ad\u0391-\u03bf\u0405-\u051d\u200b-\u200d\u2060\ufeff]+/g;

/** A stretch of a text that is read as another text; as an empty one where nothing of it is seen. */
export interface Spot {
  readonly start: number;
  readonly end: number;
  readonly kind: 'direction' | 'invisible' | 'letter' | 'space' | 'wide';
  /** What it is read as. */
  readonly read: string;
}

/** The spots of a text in its order: what shows as something else than it is, or not at all. */
export function spotsOf(text: string): readonly Spot[] {
  if (!isStrange(text)) return [];
  const found: Spot[] = [];
  const add = (pattern: RegExp, kind: Spot['kind'], readAs: (typed: string) => string | undefined): void => {
    for (const { 0: typed, index } of text.matchAll(pattern)) {
      const read = readAs(typed);
      if (read !== undefined) found.push({ start: index, end: index + typed.length, kind, read });
    }
  };
  add(spaces, 'space', (typed) => ' '.repeat(typed.length));
  add(wide, 'wide', narrow);
  add(words, 'letter', latin);
  for (const { 0: typed, index } of text.matchAll(unseen)) {
    const end = index + typed.length;
    const kind = turning.test(typed) ? 'direction' : 'invisible';
    if (kind === 'direction' || !belongs(text, index, end)) found.push({ start: index, end, kind, read: '' });
  }
  return found.sort((a, b) => a.start - b.start);
}

/** A mark at the beginning of the file, and what joins or colors the parts of a picture or of other scripts. */
const belongs = (text: string, start: number, end: number): boolean =>
  (start === 0 && end === 1 && text[start] === '\uFEFF') ||
  (!ofOurs.test(text[start - 1] ?? ' ') && !isStrange(text[start - 1] ?? ' '));

/** ASCII and the Latin, Greek and Cyrillic letters: nothing that nobody sees belongs after one of them. */
const ofOurs = /[\t-~\u00a1-\u024f\u0391-\u052f]/;

const narrow = (typed: string): string =>
  Array.from(typed, (letter) => String.fromCharCode(letter.charCodeAt(0) - wideOffset)).join('');

/** A word of look-alikes alone is one of ours from so many letters on. */
const shortestAlone = 4;

/**
 * A word in Latin letters, where it mixes them with others that look like them, or is made of such alone; undefined
 * where it is a word of another script, or has Greek letters as formulas do.
 */
function latin(typed: string): string | undefined {
  if (!otherLetter.test(typed)) return undefined;
  let isOurs = typed.length >= shortestAlone;
  let read = '';
  for (const letter of typed) {
    const other = lookAlikes.get(letter);
    if (other === undefined && otherLetter.test(letter)) return undefined;
    isOurs ||= /[A-Za-z]/.test(letter);
    read += other ?? letter;
  }
  return isOurs ? read : undefined;
}

const asSpaces = (typed: string): string => ' '.repeat(typed.length);

/**
 * A text as it is read, in as many characters: spaces of any width are spaces, wide letters and look-alikes are the
 * usual ones, hyphens at which no line breaks are hyphens, and CR alone ends a line. What is invisible after the colon
 * of a key is a space.
 */
export function legible(text: string): string {
  if (!isStrange(text)) return text;
  return text
    .replace(/\r(?!\n)/g, '\n')
    .replace(spaces, asSpaces)
    .replace(wide, narrow)
    .replace(/(?<=\w)[\u2010\u2011](?=\w)/g, '-')
    .replace(/(?<=[a-z]:)[\u00ad\u200b-\u200d\u2060\ufeff]+/gi, asSpaces)
    .replace(words, (typed) => latin(typed) ?? typed);
}

/** A text without what nobody sees. */
export const withoutUnseen = (text: string): string => text.replace(unseen, '');

/** The form under which words are compared: compatible characters alike, nothing invisible, any dash a hyphen. */
export const comparable = (text: string): string =>
  withoutUnseen(legible(text))
    .normalize('NFKC')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[\u2018\u2019]/g, "'");

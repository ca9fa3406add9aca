/** A place of the margin that a mark is at: an hour of the clock, or a direction of the body. */
export interface MarginPlace {
  /** The hour as typed; only 1 to 12 are hours. */
  readonly hour?: number;
  /** A direction by its usual word: superior, inferior, medial, lateral … */
  readonly direction?: string;
  readonly from: number;
  readonly to: number;
  /** Whether the words define the place: "12 o'clock = caudal". */
  readonly defined: boolean;
}

/** A mark on the tissue, the words that tell it from others, and where it is. */
export interface TissueMark {
  /** suture, ink, nick, tag, pin; undefined where places are named without a mark. */
  readonly kind: string | undefined;
  /** Words that tell it from another of its kind, in order: "long blue". */
  readonly which: string;
  readonly places: readonly MarginPlace[];
}

/** What a text says of how a specimen is turned. */
export interface OrientationReading {
  readonly marks: readonly TissueMark[];
  /** Where the text says that the tissue is not oriented; undefined where it does not. */
  readonly unoriented: { readonly from: number; readonly to: number } | undefined;
}

const byWord = (rows: Readonly<Record<string, string>>): ReadonlyMap<string, string> =>
  new Map(Object.entries(rows).flatMap(([name, words]) => words.split(' ').map((word) => [word, name])));

const kinds = byWord({
  suture: 'suture sutures stitch stitches stitched sutured silk thread tie',
  ink: 'ink inks inked inking dye dyed',
  nick: 'nick nicks nicked notch notches notched',
  tag: 'tag tags tagged',
  clip: 'clip clips clipped staple pin pins pinned',
});

const directions = byWord({
  superior: 'superior superiorly cranial cephalad cephalic upper top',
  inferior: 'inferior inferiorly caudal caudad lower bottom',
  medial: 'medial medially',
  lateral: 'lateral laterally',
  anterior: 'anterior anteriorly ventral',
  posterior: 'posterior posteriorly dorsal',
  proximal: 'proximal proximally',
  distal: 'distal distally',
  left: 'left',
  right: 'right',
  radial: 'radial',
  ulnar: 'ulnar',
});

const opposites: ReadonlyMap<string, string> = new Map(
  [
    'superior inferior',
    'medial lateral',
    'anterior posterior',
    'proximal distal',
    'left right',
    'radial ulnar',
  ]
    .map((pair) => pair.split(' ') as [string, string])
    .flatMap(([a, b]) => [[a, b] as const, [b, a] as const]),
);

const whichWords: ReadonlySet<string> = new Set(
  'short long single double triple one two blue black green red yellow orange violet purple white first second'.split(
    ' ',
  ),
);

const hourWords: ReadonlyMap<string, number> = new Map(
  'one two three four five six seven eight nine ten eleven twelve'
    .split(' ')
    .map((word, at) => [word, at + 1] as const),
);

/** Words before a direction with which it says where something else is: "superior tip of the lower lesion". */
const ofAnother: ReadonlySet<string> = new Set([
  'of',
  'from',
  'to',
  'near',
  'versus',
  'vs',
  'than',
  '/',
  '-',
]);

const definers: ReadonlySet<string> = new Set([
  '=',
  'is',
  'means',
  'marks',
  'denotes',
  'designates',
  'defined',
]);

interface Token {
  readonly word: string;
  readonly from: number;
  readonly to: number;
}

/** Longer texts are no orientation of a specimen. */
const longestRead = 400;

const tokensIn = (text: string): readonly Token[] =>
  Array.from(text.matchAll(/o['’]?\s?clock|[a-z]+|\d{1,2}(?::00)?|[=;,.&+/-]/gi), (match) => ({
    word: match[0].toLowerCase(),
    from: match.index,
    to: match.index + match[0].length,
  }));

const isClock = (word: string | undefined): boolean => word !== undefined && /^o.{0,2}clock$/.test(word);

/** The number of a word that may be an hour. */
function numberOf(word: string | undefined): number | undefined {
  if (word === undefined) return undefined;
  return /^\d/.test(word) ? Number.parseInt(word, 10) : hourWords.get(word);
}

const joinsHours: ReadonlySet<string | undefined> = new Set(['and', '&', '+', '/', ',', 'or']);

/** Words after a number that counts or measures with it. */
const counted: ReadonlySet<string | undefined> = new Set([
  'mm',
  'cm',
  'x',
  'days',
  'sutures',
  'stitches',
  'suture',
  'stitch',
]);

/** The hour that a token names: before "o'clock", with ":00", after "at", or in a list that ends in one of these. */
function hourAt(tokens: readonly Token[], at: number): number | undefined {
  const { word } = tokens[at]!;
  const number = numberOf(word);
  return number === undefined || number > 24 || !isHour(tokens, at, word) ? undefined : number;
}

function isHour(tokens: readonly Token[], at: number, word: string): boolean {
  const next = tokens[at + 1]?.word;
  if (isClock(next) || word.endsWith(':00')) return true;
  if (counted.has(next)) return false;
  if (tokens[at - 1]?.word === 'at' && /^\d/.test(word)) return true;
  return (
    joinsHours.has(next) && numberOf(tokens[at + 2]?.word) !== undefined && isClock(tokens[at + 3]?.word)
  );
}

/** The direction that a token names for the mark before it; undefined where it is about another thing. */
function directionAt(tokens: readonly Token[], at: number): string | undefined {
  const direction = directions.get(tokens[at]!.word);
  if (direction === undefined) return undefined;
  const before = tokens[at - 1]?.word;
  const first = before === 'the' ? tokens[at - 2]?.word : before;
  return ofAnother.has(first ?? '') ? undefined : direction;
}

interface Open {
  kind: string | undefined;
  /** Whether the words name the kind here; else it is that of the mark before. */
  named: boolean;
  /** Whether it begins with its place: "superior suture". */
  leading: boolean;
  which: string[];
  places: MarginPlace[];
}

/** Reads words on how a specimen is turned: "short suture superior, long suture at 3 o'clock". */
export function readOrientation(text: string): OrientationReading {
  if (text.length > longestRead) return { marks: [], unoriented: undefined };
  const tokens = tokensIn(text);
  const marks: Open[] = [];
  for (let at = 0; at < tokens.length; at += 1) take(tokens, at, marks);
  return {
    marks: marks
      .filter(({ kind, places }) => kind !== undefined || places.length > 0)
      .map((mark) => ({ ...mark, which: mark.which.join(' ') })),
    unoriented: unorientedIn(text),
  };
}

function take(tokens: readonly Token[], at: number, marks: Open[]): void {
  const { word, to } = tokens[at]!;
  const hour = hourAt(tokens, at);
  if (hour !== undefined) {
    const end = isClock(tokens[at + 1]?.word) ? tokens[at + 1]!.to : to;
    openOf(marks, false).places.push({ ...placeAt(tokens, at, end), hour });
    return;
  }
  const kind = kinds.get(word);
  const direction = directionAt(tokens, at);
  if (kind !== undefined) takeKind(marks, kind);
  else if (whichWords.has(word)) openOf(marks, true).which.push(word);
  else if (direction !== undefined) {
    const leads = isLeading(tokens, at);
    const open = openOf(marks, leads);
    open.leading = leads && !open.named;
    open.places.push({ ...placeAt(tokens, at, to), direction });
  }
}

/** Whether a direction says where the mark after it is. */
function isLeading(tokens: readonly Token[], at: number): boolean {
  const next = tokens.slice(at + 1, at + 4).find(({ word }) => !whichWords.has(word));
  return next !== undefined && kinds.has(next.word);
}

const placeAt = (tokens: readonly Token[], at: number, to: number): MarginPlace => ({
  from: tokens[at]!.from,
  to,
  defined: definers.has(tokens[at - 1]?.word ?? '') || tokens.slice(at + 1, at + 3).some(isDefiner),
});

const isDefiner = ({ word }: Token): boolean => definers.has(word);

/** A word for a mark: it names the mark that is begun ("long suture", "suture tag"), or begins another. */
function takeKind(marks: Open[], kind: string): void {
  const open = openOf(marks, true);
  // A tag is a suture where the words say so: "suture tag", "silk tag".
  if (!open.named || open.kind === 'tag') open.kind = kind;
  open.named = true;
  open.leading = false;
}

/** The mark that words belong to; with `fresh` another one once the last has its place and is named. */
function openOf(marks: Open[], fresh: boolean): Open {
  const last = marks.at(-1);
  if (last !== undefined && !(fresh && last.places.length > 0 && !last.leading)) return last;
  const open: Open = { kind: last?.kind, named: false, leading: false, which: [], places: [] };
  marks.push(open);
  return open;
}

const unorientedWords =
  /\b(?:un-?oriented|un-?orientated|not (?:oriented|orientated|marked|tagged|inked)|no orientation|none)\b/i;

function unorientedIn(text: string): OrientationReading['unoriented'] {
  const match = unorientedWords.exec(text);
  return match === null ? undefined : { from: match.index, to: match.index + match[0].length };
}

/** Whether two places of one margin exclude each other for one mark. */
export function isOpposite(a: MarginPlace, b: MarginPlace): boolean {
  if (a.hour !== undefined && b.hour !== undefined) return Math.abs(a.hour - b.hour) === 6;
  return a.direction !== undefined && opposites.get(a.direction) === b.direction;
}

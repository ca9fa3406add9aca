import type { WordRow } from '../../reference/types.ts';
import { remembered } from '../text/remembered.ts';
import { added, begins, longest, type Phrases } from './phrase-index.ts';
import { tokensOf, type Token } from './phrase-tokens.ts';
import { wordsRead, type WordTable } from './word-table.ts';

/**
 * How a text is to a thing that it mentions: it says so, asks about it ("rule out"), thinks it less likely
 * ("favor nevus" beside it), denies it ("no concern for"), or is about the past ("history of").
 */
export type Standing = 'asserted' | 'asked' | 'unlikely' | 'denied' | 'past';

/** A row of a table of words that a free text names, at characters `from` to `to` of it. */
export interface Mention<Row> {
  readonly row: Row;
  readonly from: number;
  readonly to: number;
  readonly standing: Standing;
}

type Before = 'asked' | 'denied' | 'unlikely' | 'past' | 'favored' | 'fresh';
type Cue =
  | { readonly when: 'before'; readonly as: Before; readonly wholeList?: boolean }
  | { readonly when: 'after'; readonly as: Standing | 'favored' }
  | { readonly when: 'between' };

/** "Not entirely excluded", "can not be ruled out": what is said of an exclusion that is still to come. */
const stillOpen = ['not', 'be', 'not be', 'not been', 'not yet been', 'not yet']
  .flatMap((open) =>
    ['', ' entirely', ' completely', ' fully', ' definitively', ' safely'].map((how) => open + how),
  )
  .flatMap((open) => [`${open} excluded`, `${open} ruled out`])
  .join('|');

/** Words that say how the words after or before them are meant; the longest that fits counts. */
const cueWords: readonly (readonly [Cue, string])[] = [
  [
    { when: 'before', as: 'denied', wholeList: true },
    'denies|denied|denying|negative for|no known|does not have|did not have|no history of|free of',
  ],
  [
    { when: 'before', as: 'denied' },
    'no|not|nor|neither|never|without|w/o|no concern for|low concern for|low suspicion of|low suspicion for|not concerning for|not suspicious for|no evidence of|' +
      'no sign of|no signs of|absence of|ruled out|doubt|rather than|instead of|other than|excluded',
  ],
  [
    { when: 'before', as: 'asked' },
    'r/o|rule out|rules out|to rule out|query|exclude|to exclude|evaluate for|evaluation for|eval for|concern for|' +
      'concerning for|concern about|suspicious for|suspicion of|suspect|suspected|suspecting|possible|possibly|consider|' +
      'worried about|check for|test for|cannot rule out|can not rule out|not ruled out|cannot exclude|can not exclude|' +
      'differential|ddx|d/d|question of|assess for|confirm',
  ],
  [
    { when: 'before', as: 'past' },
    'history of|hx|hx of|h/o|history|s/p|status post|prior|previous|previously|past|past history of|former|remote|' +
      'family history of|personal history of|fh of|fhx|following|after treatment of|scar of',
  ],
  [
    { when: 'before', as: 'unlikely' },
    'unlikely|unlikely to be|unlikely to represent|less likely|least likely|not likely|not likely to be|more likely than|likelier than|' +
      'low index of suspicion for|low index of suspicion of|low likelihood of|low probability of|low on the differential',
  ],
  [
    { when: 'before', as: 'favored' },
    'favor|favors|favored|favoring|favour|favours|favoured|favouring|most likely',
  ],
  [
    { when: 'before', as: 'fresh' },
    'but|however|although|though|except|now|likely|probable|probably|consistent with|c/w|does not tolerate|' +
      'did not tolerate|cannot tolerate|can not tolerate|not able to tolerate|intolerant of|avoid',
  ],
  [
    { when: 'after', as: 'denied' },
    'ruled out|was ruled out|is ruled out|not suspected|is not suspected|not seen|excluded|was excluded|negative|absent|denied|' +
      'none',
  ],
  [
    { when: 'after', as: 'unlikely' },
    'unlikely|is unlikely|less likely|is less likely|least likely|not likely|not favored|not favoured|doubtful|low suspicion|low on the differential|' +
      'low on differential|lower on the differential',
  ],
  [{ when: 'after', as: 'asked' }, `suspected|${stillOpen}`],
  [{ when: 'after', as: 'favored' }, 'favored|favoured|is favored|is favoured|most likely'],
  [{ when: 'after', as: 'past' }, 'in the past|previously|years ago|in childhood|as a child'],
  [{ when: 'between' }, 'vs|versus'],
];

/** What is favored does not make a malignancy unlikely where it is one itself. */
const graveWords: ReadonlySet<string> = new Set([
  'malignant',
  'malignancy',
  'cancer',
  'atypical',
  'atypia',
  'dysplastic',
  'melanocytic',
  'spitzoid',
]);

/** Words that join what is before them to what follows. */
const joins: ReadonlySet<string> = new Set(['vs', 'versus', 'and', 'or']);
/** Words that go on without naming anything: "less likely than", "excluded by biopsy". */
const connects: ReadonlySet<string> = new Set(
  (
    'than by on in at to of but and or given due because since as with for from though however now here after per based ' +
    'over clinically'
  ).split(' '),
);
const hardBreaks: ReadonlySet<string> = new Set(['.', ';', ':', '!', '?', '(', ')', '\n']);
/** Answers that deny what they follow. */
const noes: ReadonlySet<string> = new Set([
  'no',
  'none',
  'denies',
  'denied',
  'negative',
  'absent',
  'nil',
  'never',
]);
/** How many words a cue reaches. */
const reach = 8;

const cues: Phrases<readonly Cue[]> = new Map();
for (const [cue, words] of cueWords)
  for (const word of words.split('|')) {
    const phrase = added(cues, word, []);
    phrase.value = [...phrase.value, cue];
  }

const oneWord = /^[a-z]+$/;

/** Finds the words of a table in free text, and how the text is to each. */
export class PhraseTable<Row extends WordRow> {
  private readonly terms: Phrases<Row> = new Map();

  constructor(rows: readonly Row[]) {
    for (const row of rows) for (const word of wordsRead(row)) added(this.terms, word, row).value = row;
  }

  /** In the order of the text; where words overlap, the longest from the left. Takes time linear in the text. */
  readonly mentionsIn = remembered((text: string) => this.scanned(text));

  private scanned(text: string): readonly Mention<Row>[] {
    // Most texts name nothing of most tables, and then nothing has to be known of how they say it.
    if (oneWord.test(text) && !begins(this.terms, text)) return [];
    const tokens = tokensOf(text);
    if (!this.isNamedIn(tokens)) return [];
    const scan = new Scan<Row>(tokens);
    for (let at = 0; at < tokens.length;) at = this.step(scan, tokens, at);
    return scan.mentions();
  }

  /** Whether a term may begin at one of the tokens. */
  private isNamedIn(tokens: readonly Token[]): boolean {
    for (const { text } of tokens) if (begins(this.terms, text)) return true;
    return false;
  }

  /** Takes the term, cue or word at a token; answers where the next one begins. */
  private step(scan: Scan<Row>, tokens: readonly Token[], at: number): number {
    const term = longest(this.terms, tokens, at);
    const cue = longest(cues, tokens, at);
    if (term !== undefined && (cue === undefined || stands(term.end, cue.end, tokens))) {
      scan.term(term.value, at, term.end);
      return term.end;
    }
    if (cue === undefined) scan.other(at);
    else scan.cue(cue.value, at, cue.end);
    return cue?.end ?? at + 1;
  }

  /** The rows that the text says are so. */
  assertedIn(text: string): readonly Row[] {
    return this.mentionsIn(text).flatMap(({ row, standing }) => (standing === 'asserted' ? [row] : []));
  }
}

const known = new WeakMap<object, unknown>();

/** The phrases of a table of words, built once for each table. */
export function phrasesOf<Row extends WordRow>(table: WordTable<Row>): PhraseTable<Row> {
  const found = known.get(table) as PhraseTable<Row> | undefined;
  if (found !== undefined) return found;
  const made = new PhraseTable(table.rows);
  known.set(table, made);
  return made;
}

interface Found<Row> {
  readonly row: Row;
  readonly from: number;
  readonly to: number;
  standing: Standing;
}

/** One pass over the words of a text: what governs the next term, and which terms are in the clause. */
class Scan<Row> {
  private readonly found: Found<Row>[] = [];
  private governing: { readonly as: Before; readonly wholeList: boolean; readonly until: number } | undefined;
  /** Index of the first mention of this stretch between commas. */
  private stretch = 0;
  private readonly favored = new Set<Row>();
  private favors = false;
  private favorsGrave = false;
  private orFollows: readonly boolean[] | undefined;

  constructor(private readonly tokens: readonly Token[]) {}

  term(row: Row, first: number, end: number): void {
    const govern = this.governs(first);
    const standing = govern === undefined || govern === 'favored' || govern === 'fresh' ? 'asserted' : govern;
    this.found.push({
      row,
      from: this.tokens[first]!.from,
      to: this.tokens[end - 1]!.to,
      standing,
    });
    if (govern === 'favored') this.favored.add(row);
    if (this.governing !== undefined) this.governing = { ...this.governing, until: end + reach };
  }

  cue(readings: readonly Cue[], at: number, end: number): void {
    const touches = this.touches(at, end);
    const leads = this.leads(end);
    const cue =
      readings.find((one) =>
        one.when === 'after' && one.as === 'favored'
          ? touches && !leads
          : touches
            ? one.when !== 'before'
            : one.when === 'before',
      ) ?? readings[0]!;
    if (cue.when === 'between') {
      this.apply('asked');
      this.govern('asked', false, at);
    } else if (cue.when === 'before') this.govern(cue.as, cue.wholeList === true, at);
    else if (cue.as === 'favored') this.favor(at);
    else this.apply(cue.as);
  }

  /** Whether a cue is after what it is about: in its stretch, or after a comma with nothing else to be about. */
  private touches(at: number, end: number): boolean {
    const before = this.tokens[at - 1]?.text;
    return this.found.length > this.stretch
      ? !joins.has(before ?? '')
      : (before === ',' || before === '(') && !this.leads(end);
  }

  /** Whether another word that it can be about follows a cue. */
  private leads(end: number): boolean {
    const next = this.tokens[end]?.text;
    return next !== undefined && /^\p{L}/u.test(next) && !connects.has(next);
  }

  other(at: number): void {
    const { text } = this.tokens[at]!;
    if (text === '?') this.questionMark(at);
    else if (text === '>') this.greater(at);
    else if (hardBreaks.has(text)) {
      if (text === ':' && this.answeredNo(at)) this.apply('denied');
      this.break();
    } else if (text === ',') this.comma(at);
    else if (this.governs(at) !== 'favored') return;
    else if (graveWords.has(text)) this.favorsGrave = true;
    else if (text === 'over' && !this.favorsGrave) this.govern('unlikely', false, at);
  }

  /** "Pacemaker: no": an answer of one word after a colon, to what was named last. */
  private answeredNo(at: number): boolean {
    const next = this.tokens[at + 2]?.text;
    const only = next === undefined || next === ',' || hardBreaks.has(next);
    return only && this.found.length > this.stretch && noes.has(this.tokens[at + 1]?.text ?? '');
  }

  /** "nevus > melanoma", which is no "> 6 mm". */
  private greater(at: number): void {
    const next = this.tokens[at + 1]?.text;
    if (next !== undefined && /^\p{L}/u.test(next) && !this.graveBefore(at))
      this.govern('unlikely', false, at);
  }

  /** "Melanoma favored": the last thing named before, or one that the table does not know. */
  private favor(at: number): void {
    const last = this.found.at(-1);
    if (last !== undefined) this.favored.add(last.row);
    if (this.graveBefore(at)) this.favorsGrave = true;
    this.govern('favored', false, at);
  }

  /** Whether what is before a word in its clause is called malignant, or nearly. */
  private graveBefore(at: number): boolean {
    for (let place = at - 1; place >= 0; place--) {
      const { text } = this.tokens[place]!;
      if (graveWords.has(text)) return true;
      if (hardBreaks.has(text)) return false;
    }
    return false;
  }

  mentions(): readonly Mention<Row>[] {
    if (!this.favors || this.favorsGrave) return this.found;
    for (const one of this.found) {
      const open = one.standing === 'asserted' || one.standing === 'asked';
      if (open && !this.favored.has(one.row)) one.standing = 'unlikely';
    }
    return this.found;
  }

  private governs(at: number): Before | undefined {
    return this.governing !== undefined && at <= this.governing.until ? this.governing.as : undefined;
  }

  /** A denial holds over what it denies: "no concern for", "no history of". */
  private govern(as: Before, wholeList: boolean, at: number): void {
    if (as === 'favored') this.favors = true;
    const denied = this.governs(at) === 'denied' && (as === 'asked' || as === 'past');
    const list = wholeList || (denied && this.governing?.wholeList === true);
    this.governing = { as: denied ? 'denied' : as, wholeList: list, until: at + reach };
  }

  /** What is after a term is about the terms of its stretch, or about the last one where the stretch has none. */
  private apply(as: Standing): void {
    const first = this.stretch < this.found.length ? this.stretch : this.found.length - 1;
    for (const one of this.found.slice(Math.max(0, first)))
      if (one.standing === 'asserted' || one.standing === 'asked') one.standing = as;
  }

  private questionMark(at: number): void {
    if (this.found.at(-1)?.to === this.tokens[at]!.from) {
      this.apply('asked');
      this.break();
    } else {
      this.break();
      this.govern('asked', false, at);
    }
  }

  private break(): void {
    this.governing = undefined;
    this.stretch = this.found.length;
  }

  /** A comma ends a denial, unless the list goes on to an "or". */
  private comma(at: number): void {
    this.stretch = this.found.length;
    if (this.governing === undefined || this.governing.as === 'asked' || this.governing.wholeList) return;
    if (this.governing.as === 'denied' && (this.orFollows ??= orAhead(this.tokens))[at]) return;
    this.governing = undefined;
  }
}

/** A word such as "no" may be an answer by itself; before other words it says how they are meant. */
const stands = (termEnd: number, cueEnd: number, tokens: readonly Token[]): boolean =>
  termEnd > cueEnd || termEnd === tokens.length;

/** For each token, whether an "or" follows before the sentence ends or another cue of contrast comes. */
function orAhead(tokens: readonly Token[]): boolean[] {
  const ahead = new Array<boolean>(tokens.length).fill(false);
  let or = false;
  for (let at = tokens.length - 1; at >= 0; at--) {
    const { text } = tokens[at]!;
    if (hardBreaks.has(text) || text === 'but') or = false;
    else if (text === 'or' || text === 'nor') or = true;
    ahead[at] = or;
  }
  return ahead;
}

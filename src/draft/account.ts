import type { Assembled } from './assemble.ts';
import { passWords } from './passed-over.ts';
import { struck, type Scan } from './scan.ts';
import { wordSet } from './word-set.ts';
import type { Span, Word } from './speech/word.ts';

/** Words of a text that are in no value of the draft, side by side. */
export interface Unplaced extends Span {
  readonly text: string;
}

export interface Account {
  readonly placed: readonly Span[];
  readonly passed: readonly Span[];
  readonly unplaced: readonly Unplaced[];
}

type Kind = 'placed' | 'conflict' | 'passed' | 'unplaced';

/** Words that lead to a value and say nothing without it. */
const leading = wordSet(
  'prep prepped prepared preparation cleansed cleaned cleanse disinfected anesthesia anaesthesia anesthetized anesthetised anaesthetised anaesthetized numbed local infiltrated ' +
    'injected anesthetic anaesthetic hemostasis haemostasis closed closure sutured repaired suture sutures stitches dressed dressing bandaged covered specimen specimens sent submitted ' +
    'jar bottle container vial tissue sample biopsy biopsied takes taking on meds medications allergic allergies allergy lesion site location consent informed each both all weight weighs ' +
    'chart number mrn visit date depth level down margin margins labeled labelled label x ml total wound care instructions instruction out aged age tied total measuring measured',
);

/**
 * Says of each word of a text what became of it.
 * @param pointers words that only say which procedure is meant
 */
export function accountOf(
  scan: Scan,
  pointers: readonly (readonly [at: number, end: number])[],
  assembled: Assembled,
): Account {
  const marks = marksOf(scan, pointers, assembled);
  const placed: Span[] = [];
  const passed: Span[] = [...scan.passed, ...scan.names];
  const unplaced: Unplaced[] = [];
  let open = false;
  for (const word of scan.words) {
    const { from, to } = word;
    const kind = kindOf(marks[from]!, word);
    if (kind === 'placed') placed.push({ from, to });
    else if (kind === 'passed') passed.push({ from, to });
    else if (kind === 'unplaced') addTo(scan.text, unplaced, word, open);
    open =
      kind === 'unplaced' || (open && (kind === 'passed' || (kind === undefined && !ends.has(word.text))));
  }
  return { placed, passed, unplaced };
}

/** Marks that end a run of words without a place, and what is in the place of a name. */
const ends: ReadonlySet<string> = new Set(['.', ';', '!', '?', '·']);
const [isPlaced, isConflict, isPassed] = [1, 2, 3] as const;

/** By the character of a text: what became of its word. */
function marksOf(
  scan: Scan,
  pointers: readonly (readonly [at: number, end: number])[],
  { facts, conflicts }: Assembled,
): Uint8Array {
  const marks = new Uint8Array(scan.text.length);
  for (const fact of facts) for (const { from, to } of [fact, ...fact.rests]) marks.fill(isPlaced, from, to);
  markLeads(scan, marks);
  markHeadings(scan, marks);
  for (const [at, end] of pointers) marks.fill(isPlaced, scan.words[at]!.from, scan.words[end - 1]!.to);
  for (const { words } of conflicts) for (const { from, to } of words) marks.fill(isConflict, from, to);
  for (const { from, to } of [...scan.passed, ...scan.names]) marks.fill(isPassed, from, to);
  return marks;
}

/** Marks the words that lead to a value of their clause. */
function markLeads({ words, clauses }: Scan, marks: Uint8Array): void {
  for (const { from, to } of clauses) {
    const own = words.slice(from, to);
    if (!own.some((word) => marks[word.from] === 1)) continue;
    for (const word of own)
      if (marks[word.from] === 0 && leading.has(word.low)) marks.fill(1, word.from, word.to);
  }
}

/** Words of headings that say nothing beside what follows them. */
const headings = wordSet(
  'date service description findings technique details title operation operative note report indication indications anesthesia anaesthesia anesthetic procedure procedures ' +
    'diagnosis preoperative postoperative history site closure hemostasis specimen specimens pathology dressing local skin preparation prep allergies medications implants plan clinical ' +
    'question bleeding control of name size for surgery complications consent impression',
);

function markHeadings({ words, clauses }: Scan, marks: Uint8Array): void {
  for (const { from, to } of clauses) {
    const own = words.slice(from, to - 1);
    if (words[to - 1]!.text !== ':' || !own.every(({ low }) => headings.has(low))) continue;
    // What is left in the remarks needs its heading: "none except latex" alone is no allergy.
    const first = words.slice(to, to + farthestContent).find((word) => !isSilent(word));
    if (first !== undefined && marks[first.from] === 0) continue;
    for (const word of own) if (marks[word.from] === 0) marks.fill(isPassed, word.from, word.to);
  }
}

/** How many words after a heading what it heads begins. */
const farthestContent = 4;
const isSilent = ({ low, kind }: Word): boolean => signs.has(kind) || passWords.has(low);

const signs: ReadonlySet<string> = new Set(['mark', 'line']);

function kindOf(mark: number, { low, kind }: Word): Kind | undefined {
  if (low === struck) return 'unplaced';
  if (mark === isPlaced) return 'placed';
  if (mark === isConflict) return 'conflict';
  if (signs.has(kind)) return undefined;
  return mark === isPassed || passWords.has(low) ? 'passed' : 'unplaced';
}

/** Adds a word to the run before it, where nothing but words that say nothing is between. */
function addTo(text: string, runs: Unplaced[], { from, to }: Span, open: boolean): void {
  const last = runs.at(-1);
  if (open && last !== undefined)
    runs[runs.length - 1] = { from: last.from, to, text: text.slice(last.from, to) };
  else runs.push({ from, to, text: text.slice(from, to) });
}

import type { Assembled } from './assemble.ts';
import { passWords } from './passed-over.ts';
import type { Scan } from './scan.ts';
import { wordSet } from './gather.ts';
import type { Span } from './speech/word.ts';

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
 * @param marks words that only say which procedure is meant
 */
export function accountOf(
  scan: Scan,
  marked: readonly (readonly [at: number, end: number])[],
  { facts, conflicts }: Assembled,
): Account {
  const { names } = scan;
  const marks = new Uint8Array(scan.text.length);
  const mark = ({ from, to }: Span, as: number): void => void marks.fill(as, from, to);
  for (const fact of facts) for (const span of [fact, ...fact.rests]) mark(span, 1);
  markLeads(scan, marks);
  for (const [at, end] of marked) mark({ from: scan.words[at]!.from, to: scan.words[end - 1]!.to }, 1);
  for (const { words } of conflicts) for (const span of words) mark(span, 2);
  const passed: Span[] = [...scan.passed, ...names];
  for (const span of passed) mark(span, 3);
  const placed: Span[] = [];
  const unplaced: Unplaced[] = [];
  let open = false;
  for (const word of scan.words) {
    const kind = kindOf(marks[word.from]!, word.low, word.kind);
    if (kind === 'placed') placed.push({ from: word.from, to: word.to });
    else if (kind === 'passed') passed.push({ from: word.from, to: word.to });
    else if (kind === 'unplaced') addTo(scan.text, unplaced, word, open);
    open = kind === 'unplaced' || (open && (kind === 'passed' || (word.kind === 'mark' && !'.;!?·'.includes(word.text))));
  }
  return { placed, passed, unplaced };
}

/** Marks the words that lead to a value of their clause. */
function markLeads({ words, clauses }: Scan, marks: Uint8Array): void {
  for (const { from, to } of clauses) {
    const own = words.slice(from, to);
    if (!own.some((word) => marks[word.from] === 1)) continue;
    for (const word of own) if (marks[word.from] === 0 && leading.has(word.low)) marks.fill(1, word.from, word.to);
  }
}

const signs: ReadonlySet<string> = new Set(['mark', 'line']);

function kindOf(mark: number, low: string, kind: string): Kind | undefined {
  if (mark === 1) return 'placed';
  if (mark === 2) return 'conflict';
  if (signs.has(kind)) return undefined;
  return mark === 3 || passWords.has(low) ? 'passed' : 'unplaced';
}

/** Adds a word to the run before it, where nothing but words that say nothing is between. */
function addTo(text: string, runs: Unplaced[], { from, to }: Span, open: boolean): void {
  const last = runs.at(-1);
  if (open && last !== undefined) runs[runs.length - 1] = { from: last.from, to, text: text.slice(last.from, to) };
  else runs.push({ from, to, text: text.slice(from, to) });
}

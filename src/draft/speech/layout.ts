import type { Word } from './word.ts';

/** Abbreviations whose full stop ends nothing. */
const stopped: ReadonlySet<string> = new Set(
  'dr mr mrs ms approx no vs st pt dx bx bxs epi conc sol incl prof jr sr min sec tab cap lt rt med meds hx loc spec'.split(
    ' ',
  ),
);

/** The words of a text without line breaks that only wrap it, and without the stops of abbreviations. */
export function laidOut(text: string, words: readonly Word[]): readonly Word[] {
  const lined = endsWithLines(words);
  return words.filter((word, at) => {
    if (word.kind === 'line') return isBreak(text, words, at, lined);
    return word.text !== '.' || !isAbbreviation(text, words, at);
  });
}

function isAbbreviation(text: string, words: readonly Word[], at: number): boolean {
  const { from, to } = words[at]!;
  const before = words[at - 1];
  if (before?.to !== from) return false;
  const next = text.charCodeAt(to);
  if (next > 32 && !'"”\')'.includes(text[to]!)) return before.kind !== 'mark';
  return stopped.has(before.low) && words[at + 1]?.kind !== 'line' && at + 1 < words.length;
}

const begins = /^[\p{Lu}#*•–-]/u;
const share = 0.8;

/**
 * Whether the lines of a text are its statements: most begin with a capital, and it is not all capitals. A break after
 * a stop says nothing, and a figure may begin any line.
 */
function endsWithLines(words: readonly Word[]): boolean {
  const breaks = words.flatMap(({ kind }, at) =>
    kind === 'line' && words[at - 1]?.kind !== 'mark' ? [at] : [],
  );
  const begun = breaks.filter((at) => begins.test(words[at + 1]?.text ?? 'A'));
  const small = words.filter(({ kind, text, low }) => kind === 'word' && text === low && /[a-z]/.test(low));
  return breaks.length > 0 && begun.length >= share * breaks.length && small.length * 3 > words.length;
}

/** Whether a line break ends a statement. */
function isBreak(text: string, words: readonly Word[], at: number, lined: boolean): boolean {
  const { from, to } = words[at]!;
  const before = words[at - 1];
  const next = words[at + 1];
  if (before === undefined || next === undefined) return true;
  if (/\n[^\n]*\n/.test(text.slice(from, to))) return true;
  if (before.kind === 'mark' && '.:;!?'.includes(before.text)) return true;
  if (isMarker(words, at + 1) || isHeading(words, at + 1)) return true;
  return lined && begins.test(next.text) && before.text !== ',';
}

/** `1.`, `2)`, `A.`, a bullet. */
function isMarker(words: readonly Word[], at: number): boolean {
  const first = words[at]!;
  if (/^[-*•–#]$/.test(first.text)) return true;
  const after = words[at + 1]?.text;
  return /^(?:\d{1,2}|[a-h])$/.test(first.low) && (after === '.' || after === ')' || after === ':');
}

const longestHeading = 4;

/** A few words before a colon. */
function isHeading(words: readonly Word[], at: number): boolean {
  for (let place = at; place <= at + longestHeading; place += 1) {
    const word = words[place];
    if (word === undefined || word.kind === 'line') return false;
    if (word.text === ':') return place > at;
    if (word.kind === 'mark') return false;
  }
  return false;
}

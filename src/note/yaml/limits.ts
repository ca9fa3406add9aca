import { largest } from '../text/files.ts';
import type { Problem } from '../tree/finding.ts';

const mostRows = 20_000;
/** Values between brackets, where a line may hold any number of them. */
const mostValues = 20_000;
/** Quotes and other signs of YAML: more than two on each of all lines. The parser needs long for each. */
const mostMarks = 60_000;
/** A note needs fewer than ten levels; the parser calls itself once for each. */
const mostLevels = 60;
const mostColumns = 200;

const [tab, newline, carriageReturn, blank, dash, question] = [9, 10, 13, 32, 45, 63] as const;
const replacement = 0xfffd;

const Sign = { None: 0, Newline: 1, Open: 2, Close: 3, Colon: 4, Comma: 5, Strange: 6, Mark: 7 } as const;

/** What the first 128 characters are here; a table, since every character of every note is looked up. */
const signs = Uint8Array.from({ length: 128 }, (_, code) =>
  code < blank && code !== tab && code !== newline && code !== carriageReturn ? Sign.Strange : Sign.None,
);
signs[newline] = Sign.Newline;
for (const [characters, sign] of [
  ['[{', Sign.Open],
  [']}', Sign.Close],
  [':', Sign.Colon],
  [',', Sign.Comma],
  ['"\'&*!', Sign.Mark],
] as const)
  for (const character of characters) signs[character.charCodeAt(0)] = sign;

const isBlank = (code: number): boolean =>
  code === blank || code === tab || code === newline || code === carriageReturn || Number.isNaN(code);

/**
 * Why a text must not even be parsed: too large, not text at all, or nested so deeply that reading it would exhaust
 * the machine. Undefined for every text that may be parsed. Brackets inside of quotes count too; no note comes near
 * the limit.
 */
export function refusalOf(text: string): Problem | undefined {
  if (text.length > largest) return tooLarge('main', Math.ceil(text.length / 1024));
  if (text.includes('\0')) return { code: 'yaml/not-text', at: { start: 0, end: 0 } };
  return new Scan(text).refusal();
}

const tooLarge = (form: string, count: number): Problem => ({
  code: 'yaml/too-large',
  form,
  at: { start: 0, end: 0 },
  args: { count },
});

/** One walk over the characters: lines, levels, and signs that no text has. */
class Scan {
  private rows = 1;
  private brackets = 0;
  /** `key: key: key:` on one line nests as well. */
  private colons = 0;
  private values = 0;
  private strange = 0;
  private marks = 0;

  constructor(private readonly text: string) {}

  refusal(): Problem | undefined {
    const { text } = this;
    let at = this.margin(0);
    while (at >= 0 && at < text.length) {
      const code = text.charCodeAt(at);
      const sign = code < 128 ? signs[code]! : code === replacement ? Sign.Strange : Sign.None;
      at += 1;
      if (sign === Sign.None) continue;
      if (sign === Sign.Newline) {
        // A break at the end of the text begins no line.
        if (at < text.length) this.rows += 1;
        this.colons = 0;
        at = this.margin(at);
      } else if (this.nests(sign, at)) return this.tooDeep(at - 1);
    }
    if (at < 0) return this.tooDeep(-at);
    return this.verdict();
  }

  private verdict(): Problem | undefined {
    if (this.rows > mostRows) return tooLarge('rows', this.rows);
    if (this.values > mostValues) return tooLarge('values', this.values);
    if (this.marks > mostMarks) return tooLarge('marks', this.marks);
    return this.strange * 10 > this.text.length
      ? { code: 'yaml/not-text', at: { start: 0, end: 0 } }
      : undefined;
  }

  /** Counts a sign; whether it is one level too deep. `next` is the place after it. */
  private nests(sign: number, next: number): boolean {
    if (sign === Sign.Open) return ++this.brackets > mostLevels;
    if (sign === Sign.Close) this.brackets = Math.max(0, this.brackets - 1);
    else if (sign === Sign.Colon && isBlank(this.text.charCodeAt(next))) return ++this.colons > mostLevels;
    else if (sign === Sign.Comma) this.comma();
    else if (sign === Sign.Strange) this.strange += 1;
    else if (sign === Sign.Mark) this.marks += 1;
    return false;
  }

  private comma(): void {
    this.colons = 0;
    if (this.brackets > 0) this.values += 1;
  }

  /** The first character of a line after spaces and list dashes; its negative where it is too far in. */
  private margin(from: number): number {
    let at = from;
    for (;;) {
      const code = this.text.charCodeAt(at);
      const marker = (code === dash || code === question) && isBlank(this.text.charCodeAt(at + 1));
      if (code !== blank && code !== tab && !marker) break;
      at += 1;
    }
    // A line of spaces alone nests nothing.
    return at - from > mostColumns && this.text.slice(from, at + 1).trim() !== '' ? -at : at;
  }

  private tooDeep(at: number): Problem {
    return { code: 'yaml/too-deep', at: { start: at, end: Math.min(at + 1, this.text.length) } };
  }
}

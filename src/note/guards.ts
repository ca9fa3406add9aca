import type { Problem } from './finding.ts';

/** 512 KiB: far above any note, far below what makes an editor stutter. */
const mostCharacters = 512 * 1024;
const mostRows = 20_000;
/** A note needs fewer than ten levels; the parser calls itself once for each. */
const mostLevels = 60;
const mostColumns = 200;

const [tab, newline, carriageReturn, blank] = [9, 10, 13, 32] as const;
const [comma, dash, colon, question] = [44, 45, 58, 63] as const;
const openers = new Set([...'[{'].map((sign) => sign.charCodeAt(0)));
const closers = new Set([...']}'].map((sign) => sign.charCodeAt(0)));
const replacement = 0xfffd;

const isBlank = (code: number): boolean =>
  code === blank || code === tab || code === newline || code === carriageReturn || Number.isNaN(code);

/**
 * Why a text must not even be parsed: too large, not text at all, or nested so deeply that reading it would exhaust
 * the machine. Undefined for every text that may be parsed. Brackets inside of quotes count too; no note comes near
 * the limit.
 */
export function refusalOf(text: string): Problem | undefined {
  if (text.length > mostCharacters) return tooLarge('main', Math.ceil(text.length / 1024));
  if (text.includes('\0')) return { code: 'yaml/not-text', start: 0, end: 0 };
  return new Scan(text).refusal();
}

const tooLarge = (form: string, count: number): Problem => ({
  code: 'yaml/too-large',
  form,
  start: 0,
  end: 0,
  args: { count },
});

/** One walk over the characters: rows, levels, and signs that no text has. */
class Scan {
  private rows = 1;
  private brackets = 0;
  /** `key: key: key:` on one row nests as well. */
  private colons = 0;
  private strange = 0;

  constructor(private readonly text: string) {}

  refusal(): Problem | undefined {
    const { text } = this;
    let at = this.margin(0);
    while (at >= 0 && at < text.length) {
      const code = text.charCodeAt(at);
      if (code === newline) {
        this.rows += 1;
        this.colons = 0;
        at = this.margin(at + 1);
        continue;
      }
      this.count(code, at);
      if (this.brackets > mostLevels || this.colons > mostLevels) return this.tooDeep(at);
      at += 1;
    }
    if (at < 0) return this.tooDeep(-at);
    if (this.rows > mostRows) return tooLarge('rows', this.rows);
    if (this.strange * 10 > text.length) return { code: 'yaml/not-text', start: 0, end: 0 };
    return undefined;
  }

  private count(code: number, at: number): void {
    if (openers.has(code)) this.brackets += 1;
    else if (closers.has(code)) this.brackets = Math.max(0, this.brackets - 1);
    else if (code === colon) this.colons += isBlank(this.text.charCodeAt(at + 1)) ? 1 : 0;
    else if (code === comma) this.colons = 0;
    else if ((code < blank && !isBlank(code)) || code === replacement) this.strange += 1;
  }

  /** The first character of a row behind blanks and list dashes; its negative where it stands too far in. */
  private margin(from: number): number {
    let at = from;
    for (;;) {
      const code = this.text.charCodeAt(at);
      const marker = (code === dash || code === question) && isBlank(this.text.charCodeAt(at + 1));
      if (code !== blank && code !== tab && !marker) break;
      at += 1;
      if (at - from > mostColumns) {
        // A row of blanks alone nests nothing.
        if (this.text.slice(from, at).trim() === '') return at;
        return -at;
      }
    }
    return at;
  }

  private tooDeep(at: number): Problem {
    return { code: 'yaml/too-deep', start: at, end: Math.min(at + 1, this.text.length) };
  }
}

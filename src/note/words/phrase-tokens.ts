/** A word or a sign of a free text, in small letters, at characters `from` to `to` of it. */
export interface Token {
  readonly text: string;
  readonly from: number;
  readonly to: number;
  /** Whether it was typed otherwise, and is read as what is meant. */
  readonly slip?: true;
}

/** Abbreviations with a slash that are one word. */
const slashed: ReadonlySet<string> = new Set(['r/o', 'w/o', 's/p', 'h/o', 'c/w', 'd/d']);
const signs = '.,;:!?()>\n';

/** The words and signs of a text. Written out, since every free text of a note is taken apart. */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  for (let from = 0, to: number; from < text.length; from = to) {
    to = tokenEnd(text, from);
    if (to > from) tokens.push({ text: text.slice(from, to).toLowerCase(), from, to });
    else to = from + 1;
  }
  return tokens;
}

/** Where the token ends that begins at a place; the place itself where none does. */
function tokenEnd(text: string, from: number): number {
  if (!isLetter(text.charCodeAt(from))) return signs.includes(text[from]!) ? from + 1 : from;
  if (text[from + 1] === '/' && slashed.has(text.slice(from, from + 3).toLowerCase())) {
    if (!isLetter(text.charCodeAt(from + 3))) return from + 3;
  }
  let to = from + 1;
  while (goesOn(text, to)) to += 1;
  return to;
}

const [and, percent, apostrophe, quote] = [0x26, 0x25, 0x27, 0x2019];

/** Whether a word goes on at a place: letters, digits, `&`, `%`, and an apostrophe before a letter. */
function goesOn(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (isLetter(code) || code === and || code === percent) return true;
  return (code === apostrophe || code === quote) && isLetter(text.charCodeAt(at + 1));
}

/** Letters and digits, as ranges. */
const isLetter = (code: number): boolean =>
  ((code | 32) >= 97 && (code | 32) <= 122) ||
  (code >= 48 && code <= 57) ||
  (code >= 0xc0 &&
    (code <= 0x24f || (code >= 0x370 && code <= 0x1fff) || (code >= 0x2c00 && code <= 0xd7ff)));

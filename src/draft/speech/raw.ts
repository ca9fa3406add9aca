import type { Kind, Word } from './word.ts';

/** The forms of what is typed, tried in this order at each place. */
const forms: readonly (readonly [Kind, RegExp])[] = [
  ['date', /\d{4}-\d{2}-\d{2}(?!\d)|\d{1,2}([/-])\d{1,2}\1(?:\d{4}|\d{2})(?!\d)/y],
  ['ratio', /1\s?[:/]\s?(?:\d{1,3}(?:,\d{3})+|\d{4,7}|\d{2,3}k\b)(?!\d)/iy],
  ['time', /\d{1,2}:[0-5]\d(?!\d|,\d)/y],
  ['suture', /\d{1,2}\s?[-–/]\s?[0oO](?![\dA-Za-z])/y],
  ['number', /\d{1,3}(?:,\d{3})+(?:\.\d+)?(?![\d])|\d+\.\d+|\d+|\.\d+|[½¼¾]/y],
  [
    'word',
    /(?:[a-z]\.){2,}(?![a-z])|[wrshcbypd]\/(?:[opl]\b)?|(?<=\d)x(?=\d)|\p{L}+(?=\d+(?:%|:\d))|\p{L}[\p{L}\d]*(?:[&'’][\p{L}\d]+)*(?:(?<=\d)\.\d+)?/iuy,
  ],
  ['mark', /[^\s]/uy],
];

const ordinal = /\d{1,2}(?:st|nd|rd|th)\b/iy;
const space = /[ \t\r\f\v\u00a0\u202f]*/y;
const lineEnd = /(?:\n[ \t\r\u00a0]*)+/y;

/** The words, numbers and marks of a text as they are typed. Takes time linear in the text. */
export function rawWordsOf(text: string): readonly Word[] {
  const words: Word[] = [];
  let hyphen = false;
  for (let at = 0; at < text.length;) {
    at += length(space, text, at);
    if (at >= text.length) break;
    const lines = length(lineEnd, text, at);
    if (lines > 0) {
      words.push(word('line', text, at, at + lines, false));
      at += lines;
      continue;
    }
    const to = at + 1;
    const next = text.charCodeAt(to);
    if ((text[at] === '-' || text[at] === '‑') && words.at(-1)?.to === at && !isSpace(next)) {
      hyphen = true;
      at = to;
      continue;
    }
    const found = typedAt(text, at, hyphen);
    words.push(found);
    hyphen = false;
    at = found.to;
  }
  return words;
}

function typedAt(text: string, at: number, joined: boolean): Word {
  const ordinalLength = length(ordinal, text, at);
  if (ordinalLength > 0) return word('word', text, at, at + ordinalLength, joined);
  for (const [kind, form] of forms) {
    const count = length(form, text, at);
    if (count > 0) return word(kind, text, at, at + count, joined);
  }
  return word('mark', text, at, at + 1, joined);
}

function word(kind: Kind, text: string, from: number, to: number, joined: boolean): Word {
  const typed = text.slice(from, to).replaceAll('’', "'");
  const digits = kind === 'number' ? { digits: digitsOf(typed) } : {};
  return { text: typed, low: typed.toLowerCase(), kind, ...digits, from, to, joined };
}

const fractions: Readonly<Record<string, string>> = { '½': '0.5', '¼': '0.25', '¾': '0.75' };

const digitsOf = (typed: string): string =>
  fractions[typed] ?? (typed.startsWith('.') ? `0${typed}` : typed.replaceAll(',', ''));

const isSpace = (code: number): boolean => Number.isNaN(code) || code <= 32 || code === 0xa0;

function length(form: RegExp, text: string, at: number): number {
  form.lastIndex = at;
  return form.exec(text)?.[0].length ?? 0;
}

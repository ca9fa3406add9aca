import { bytesOf, cut } from '../bytes.ts';

const crlf = '\r\n';

const escaped = (char: string): string =>
  Array.from(bytesOf(char), (byte) => `=${byte.toString(16).toUpperCase().padStart(2, '0')}`).join('');

const inBody = (char: string): string => (/^[\t -<>-~]$/.test(char) ? char : escaped(char));
const inWord = (char: string): string => {
  if (char === ' ') return '_';
  return /^[A-Za-z0-9!*+/-]$/.test(char) ? char : escaped(char);
};

/** Lines may have 76 characters (RFC 2045 section 6.7); three are kept for what is added at their end. */
const bodyPiece = 73;

/** A text as a quoted-printable body: ASCII only, no line longer than 76 characters, lines ended by CRLF. */
export function quotedPrintable(text: string): string {
  return text
    .split(/\r\n|\r|\n/)
    .map((line) => {
      const pieces = cut(
        line,
        (char) => inBody(char).length,
        () => bodyPiece,
      );
      const whole = pieces.map((piece) => Array.from(piece, inBody).join('')).join(`=${crlf}`);
      // A space at the end of a line may be lost on the way.
      return whole.replace(/[\t ]$/, escaped);
    })
    .join(crlf);
}

/** A line with an encoded word may have 76 characters (RFC 2047 section 2), the first one less the header's name. */
const wordPiece = 50;

/** A text as the value of a header that holds free words, such as a subject: ASCII only, folded. */
export function headerWords(text: string): string {
  const line = text.replace(/[\r\n]+/g, ' ');
  if (/^[ -~]{0,60}$/.test(line) && !line.includes('=?')) return line;
  return cut(
    line,
    (char) => inWord(char).length,
    () => wordPiece,
  )
    .map((piece) => `=?utf-8?Q?${Array.from(piece, inWord).join('')}?=`)
    .join(`${crlf} `);
}

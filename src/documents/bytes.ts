const encoder = new TextEncoder();

/** How many bytes a text takes in UTF-8. */
export const byteLength = (text: string): number => encoder.encode(text).length;

/** The bytes of a text in UTF-8; half of a character becomes a replacement character. */
export const bytesOf = (text: string): Uint8Array => encoder.encode(text);

/** Text cut between characters into pieces of at most `most(index of the piece)` units, as `size` counts them. */
export function cut(
  text: string,
  size: (char: string) => number,
  most: (piece: number) => number,
): readonly string[] {
  const pieces: string[] = [];
  let piece = '';
  let length = 0;
  for (const char of text) {
    const more = size(char);
    if (piece !== '' && length + more > most(pieces.length)) {
      pieces.push(piece);
      piece = '';
      length = 0;
    }
    piece += char;
    length += more;
  }
  return [...pieces, piece];
}

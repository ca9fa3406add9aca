/** How many columns of a terminal a plain text takes. */
export function columns(text: string): number {
  if (/^[ -~]*$/.test(text)) return text.length;
  let width = 0;
  for (const char of text) width += widthOf(char);
  return width;
}

/** The patterns are in here, since to make them takes long and most texts need none. */
const widthOf = (char: string): number => (isNone(char) ? 0 : isWide(char) ? 2 : 1);

const isNone = (char: string): boolean => /^[\p{Mn}\p{Me}]$/u.test(char);

const isWide = (char: string): boolean =>
  /^[\u1100-\u115f\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}\p{Emoji_Presentation}]$/u.test(
    char,
  );

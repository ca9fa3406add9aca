const none = /^[\p{Mn}\p{Me}]$/u;
const wide =
  /^[\u1100-\u115f\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}\p{Emoji_Presentation}]$/u;

/** How many columns of a terminal a plain text takes. */
export function columns(text: string): number {
  let width = 0;
  for (const char of text) width += none.test(char) ? 0 : wide.test(char) ? 2 : 1;
  return width;
}

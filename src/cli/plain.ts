/** Makes text safe for a terminal, and knows how wide it stands there. */

/** Characters that a terminal would obey or that turn the reading direction, instead of showing them. */
const commands =
  // eslint-disable-next-line no-control-regex -- these are what must not get through
  /[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const picture = (char: string): string => {
  const code = char.charCodeAt(0);
  if (char === '\t' || char === '\n' || char === '\r') return ' ';
  return code < 0x20 ? String.fromCharCode(0x2400 + code) : '\ufffd';
};

/** Text on one line, in which no character can command the terminal. */
export function plain(text: string): string {
  return text.replace(commands, picture);
}

const none = /^[\p{Mn}\p{Me}]$/u;
const wide =
  /^[\u1100-\u115f\u2e80-\u303e\u3041-\u33ff\u3400-\u4dbf\u4e00-\u9fff\ua000-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6\u{20000}-\u{3fffd}\p{Emoji_Presentation}]$/u;

/** How many columns of a terminal a plain text takes. */
export function columns(text: string): number {
  let width = 0;
  for (const char of text) width += none.test(char) ? 0 : wide.test(char) ? 2 : 1;
  return width;
}

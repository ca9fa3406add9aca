/** Characters that a terminal would obey or that turn the reading direction, instead of showing them. */
const commands =
  // eslint-disable-next-line no-control-regex -- these are what must not get through
  /[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const picture = (char: string): string => {
  const code = char.charCodeAt(0);
  if (char === '\t' || char === '\n' || char === '\r') return ' ';
  return code < 0x20 ? String.fromCharCode(0x2400 + code) : '\ufffd';
};

/** Text on one line, in which no character can command a terminal or turn the reading direction. */
export function plain(text: string): string {
  return text.replace(commands, picture);
}

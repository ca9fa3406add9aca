/**
 * Characters that a terminal would obey, that turn the reading direction, or that nobody sees. A joiner stays after a letter
 * of a script that is written with it (Arabic to Malayalam and Sinhala, Myanmar, Khmer, Mongolian), and in an emoji.
 */
const commands =
  // eslint-disable-next-line no-control-regex, no-misleading-character-class -- these are what must not get through
  /[\u0000-\u001f\u007f-\u009f\u00ad\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]|[\u200c\u200d](?<![\u0620-\u08ff\u0900-\u0dff\u1000-\u109f\u1780-\u17ff\u1820-\u18aa].)(?<![\ud83c-\ud83e\u2600-\u27bf][\udc00-\udfff\ufe0f]?\ufe0f?\u200d(?=[\ud83c-\ud83e\u2600-\u27bf\u2b1b]))|\udb40[\udc00-\udc7f]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const picture = (char: string): string => {
  const code = char.charCodeAt(0);
  if (char === '\t' || char === '\n' || char === '\r') return ' ';
  return code < 0x20 ? String.fromCharCode(0x2400 + code) : '\ufffd';
};

/** Text on one line, in which no character can command a terminal or turn the reading direction. */
export function plain(text: string): string {
  return text.replace(commands, picture);
}

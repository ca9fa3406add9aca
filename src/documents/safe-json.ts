/** What JSON may hold as it is, and a terminal obeys or nobody sees: controls, and what is invisible or turns the direction. */
const obeyed = /[\u007f-\u009f\u00ad\u061c\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]/g;

/** A value as JSON that a terminal can show: the same value, with escapes for all that is invisible. */
export const safeJson = (value: unknown, indent?: number): string =>
  JSON.stringify(value, null, indent).replace(
    obeyed,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

import type { Random } from './random.ts';

/** Names that mean something else, or nothing, in small letters: PM, PAD, CREST. */
const shortForm = /^[A-Z0-9-]{2,5}$/;

const asTyped = (text: string): string => text;
const first = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function cased(text: string, word: string, random: Random): string {
  const styles = [asTyped, asTyped, asTyped, first, first, (one: string) => one.toUpperCase()];
  if (!shortForm.test(word)) styles.push((one) => one.toLowerCase());
  return random.pick(styles)(text);
}

/** How hurried hands space and point a text; what separates its clauses stays what it is. */
const slips: readonly ((text: string) => string)[] = [
  (text) => text.replace(' ', '  '),
  (text) => text.replaceAll(', ', ','),
  (text) => text.replaceAll('; ', ';'),
  (text) => text.replaceAll(/([,;])/g, ' $1'),
  (text) => text.replaceAll(' - ', ' – '),
  (text) => text.replaceAll(' - ', ' — '),
  (text) => ` ${text} `,
  (text) => `${text};`,
  (text) => text.replaceAll("'", '’'),
];

/** The same text with other case, spaces and points. */
export function styled(text: string, word: string, random: Random): string {
  const shown = cased(text, word, random);
  const slipped = random.chance(0.3) ? random.pick(slips)(shown) : shown;
  return random.chance(0.2) && !/[.?;]\s*$/.test(slipped) ? `${slipped}.` : slipped;
}

/** Shorter words are one slip from so many others that none is surely a slip of one; the list has none of them. */
export const shortestSlip = 5;

/** Most letters that a packed word shares with the one before it. */
const mostShared = 25;

const capitalA = 65;

/**
 * Words of small letters in one text: each begins with a capital that says how many letters it shares with the word
 * before it, `A` for none.
 * @param words in the order of the alphabet
 */
export function packed(words: readonly string[]): string {
  let before = '';
  let text = '';
  for (const word of words) {
    let shared = 0;
    while (shared < mostShared && shared < word.length && word[shared] === before[shared]) shared++;
    text += String.fromCharCode(capitalA + shared) + word.slice(shared);
    before = word;
  }
  return text;
}

/** The words of a packed text. */
export function unpacked(text: string): ReadonlySet<string> {
  const words = new Set<string>();
  let before = '';
  for (const [, capital = 'A', rest = ''] of text.matchAll(/([A-Z])([a-z]*)/g)) {
    before = before.slice(0, capital.charCodeAt(0) - capitalA) + rest;
    words.add(before);
  }
  return words;
}

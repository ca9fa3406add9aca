import { realWords } from '../generated/real-words.ts';
import { shortestSlip, unpacked } from './packed-words.ts';
import { singular } from './singular.ts';

let known: ReadonlySet<string> | undefined;

/** Whether any word of a text, in small letters, is one that somebody may have meant though it is near another. */
export function mayBeMeant(text: string): boolean {
  // Unpacked when first asked: only words that no table knows are looked up.
  known ??= unpacked(realWords);
  for (const word of text.split(/[^a-z]+/))
    if (word !== '' && (word.length < shortestSlip || known.has(word) || known.has(singular(word))))
      return true;
  return false;
}

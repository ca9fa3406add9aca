import { tokensOf, type Token } from './phrase-tokens.ts';

class Phrase<Value> {
  private split: readonly string[] | undefined;

  /** @param key the words with a space between */
  constructor(
    readonly key: string,
    public value: Value,
  ) {}

  /** Taken apart when first asked: of most phrases no text has the first word. */
  get words(): readonly string[] {
    return (this.split ??= this.key.split(' '));
  }
}

/** Phrases by their first word. */
export type Phrases<Value> = Map<string, Phrase<Value>[]>;

/** The phrase with these words, which is added with a first value where there is none yet. */
export function added<Value>(phrases: Phrases<Value>, text: string, value: Value): Phrase<Value> {
  const key = keyOf(text);
  const blank = key.indexOf(' ');
  const first = blank < 0 ? key : key.slice(0, blank);
  const same = phrases.get(first);
  for (const phrase of same ?? []) if (phrase.key === key) return phrase;
  const phrase = new Phrase(key, value);
  if (same === undefined) phrases.set(first, [phrase]);
  else same.push(phrase);
  return phrase;
}

/** The words of a phrase of a table; most are plain letters and spaces, which need not be taken apart. */
function keyOf(text: string): string {
  if (/^[a-z]+(?: [a-z]+)*$/.test(text)) return text;
  return tokensOf(text)
    .map((token) => token.text)
    .join(' ');
}

/** Whether a phrase begins with a word; a plural `s` is overlooked. */
export const begins = <Value>(phrases: Phrases<Value>, word: string): boolean =>
  phrases.has(word) || (word.endsWith('s') && phrases.has(word.slice(0, -1)));

export interface Match<Value> {
  readonly value: Value;
  readonly end: number;
}

/** The longest phrase that begins at a token; a plural `s` is overlooked. */
export function longest<Value>(
  phrases: Phrases<Value>,
  tokens: readonly Token[],
  at: number,
): Match<Value> | undefined {
  const first = tokens[at]!.text;
  const best = longestOf(phrases.get(first), tokens, at, undefined);
  return first.endsWith('s') ? longestOf(phrases.get(first.slice(0, -1)), tokens, at, best) : best;
}

/** The longest of some phrases that is at a token, where it is longer than the best so far. */
function longestOf<Value>(
  begun: readonly Phrase<Value>[] | undefined,
  tokens: readonly Token[],
  at: number,
  known: Match<Value> | undefined,
): Match<Value> | undefined {
  let best = known;
  if (begun !== undefined)
    for (const { words, value } of begun) {
      const end = at + words.length;
      if (end > (best?.end ?? at) && stand(words, tokens, at)) best = { value, end };
    }
  return best;
}

function stand(words: readonly string[], tokens: readonly Token[], at: number): boolean {
  if (at + words.length > tokens.length) return false;
  for (let index = 0; index < words.length; index++)
    if (!isWord(tokens[at + index]!, words[index]!)) return false;
  return true;
}

const isWord = ({ text }: Token, word: string): boolean =>
  text === word || (text.length === word.length + 1 && text.endsWith('s') && text.startsWith(word));

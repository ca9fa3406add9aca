import { rawWordsOf } from './speech/raw.ts';
import type { Word } from './speech/word.ts';

interface Node<Value> {
  readonly next: Map<string, Node<Value>>;
  value: Value | undefined;
}

export interface Found<Value> {
  readonly value: Value;
  /** The place after its last word. */
  readonly end: number;
}

/** Phrases by their words; the longest that begins at a place is found in the time of its length. */
export class Trie<Value> {
  private readonly root: Node<Value> = { next: new Map(), value: undefined };

  /** Sets the value of a phrase, from the one that it has. */
  add(phrase: string, make: (before: Value | undefined) => Value): void {
    let node = this.root;
    for (const key of keysOf(phrase)) {
      let next = node.next.get(key);
      if (next === undefined) node.next.set(key, (next = { next: new Map(), value: undefined }));
      node = next;
    }
    if (node !== this.root) node.value = make(node.value);
  }

  /** Whether a phrase begins with a word. */
  begins(low: string): boolean {
    return this.root.next.has(low);
  }

  /** The longest phrase that begins at a place; a plural `s` of a word is overlooked. */
  longest(words: readonly Word[], at: number): Found<Value> | undefined {
    let node = this.root;
    let best: Found<Value> | undefined;
    for (let place = at; place < words.length; place += 1) {
      const next = step(node, words[place]!.low);
      if (next === undefined) break;
      node = next;
      if (node.value !== undefined) best = { value: node.value, end: place + 1 };
    }
    return best;
  }
}

const plain = /^[a-z]+(?: [a-z]+)*$/;

/** The words of a phrase as a text has them. */
const keysOf = (phrase: string): readonly string[] =>
  plain.test(phrase) ? phrase.split(' ') : rawWordsOf(phrase).map(({ low }) => low);

function step<Value>(node: Node<Value>, low: string): Node<Value> | undefined {
  const next = node.next.get(low);
  if (next !== undefined || low.length < 4 || !low.endsWith('s')) return next;
  return node.next.get(low.slice(0, -1));
}

/** The trie of some phrases with their values. */
export function phrases<Value>(all: readonly (readonly [words: string, value: Value])[]): Trie<Value> {
  const trie = new Trie<Value>();
  for (const [words, value] of all) trie.add(words, () => value);
  return trie;
}

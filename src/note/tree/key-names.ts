import type { KeyIndex } from './shape.ts';

/** The names of all keys that a kind of file has, with every spelling; asked only where a line looks odd. */
export class KeyNames {
  private readonly names: ReadonlySet<string>;

  constructor(index: ReadonlyMap<string, KeyIndex>) {
    this.names = new Set([...index.values()].flatMap(({ byName }) => [...byName.keys()]));
  }

  has(word: string): boolean {
    return this.names.has(word);
  }

  /** Whether a word is a key, or the first letters of one as long as it is still being typed. */
  begins(word: string): boolean {
    if (this.names.has(word)) return true;
    if (word.length < 3) return false;
    for (const name of this.names) if (name.startsWith(word)) return true;
    return false;
  }
}

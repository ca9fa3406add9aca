import type { Range, TextNode } from './tree.ts';

/** A text of the note together with what was read from it. */
export interface Leaf<T> extends Range {
  readonly text: string;
  readonly node: TextNode;
  /** What the text says; undefined where it can't be read or is still `??`. */
  readonly value: T | undefined;
  /** Whether `??` is here: not yet known. */
  readonly pending: boolean;
}

/** What every map of the note has beside its own keys. */
export interface Part extends Range {
  /** Where to point when something is missing from this part: its key, or the first key of its list item. */
  readonly head: Range;
  /** Where each key of this part is, by its canonical name. */
  readonly keys: ReadonlyMap<string, Range>;
}

/** One `key: text` of a map whose keys are free. */
export interface OpenEntry extends Range {
  readonly name: string;
  readonly value: Leaf<string>;
}

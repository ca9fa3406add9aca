/** A stretch of the text: offsets in UTF-16 units, the end not included. */
export interface Range {
  readonly start: number;
  readonly end: number;
}

/** What is at one place of the note. Every scalar is text: the characters as they were typed. */
export type Node = TextNode | MapNode | ListNode;

export interface TextNode extends Range {
  readonly kind: 'text';
  readonly text: string;
  /** Where the first character of `text` is, if `text` is in the source as it is; otherwise -1. */
  readonly inner: number;
  /**
   * Set where YAML would make something else of what was typed: `text` is what was meant, a finding says so, and
   * nothing may be read from it.
   */
  readonly garbled?: true;
}

export interface MapNode extends Range {
  readonly kind: 'map';
  readonly flow: boolean;
  readonly entries: readonly Entry[];
}

export interface ListNode extends Range {
  readonly kind: 'list';
  readonly flow: boolean;
  readonly items: readonly Node[];
}

/** One key with its value; the range is that of the key. */
export interface Entry extends Range {
  /** The key as typed. */
  readonly key: string;
  /** Null where nothing is after the colon yet. */
  readonly value: Node | null;
}

/** Whether a list has no items, or a map no keys: nothing is recorded by it. */
export const isBare = (node: Node): boolean =>
  (node.kind === 'list' && node.items.length === 0) || (node.kind === 'map' && node.entries.length === 0);

/** The range of characters `from` to `to` of a text, or of the whole where its source is escaped or folded. */
export function within(node: TextNode, from: number, to: number): Range {
  return node.inner < 0 ? node : { start: node.inner + from, end: node.inner + to };
}

import { isMap, isScalar, isSeq, type Alias, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from 'yaml';
import type { Composed, Fault } from './compose.ts';
import type { Problem } from '../tree/finding.ts';
import type { KeyNames } from '../tree/key-names.ts';
import { quoted } from '../text/quote.ts';
import type { Entry, ListNode, MapNode, Node, Range, TextNode } from '../tree/tree.ts';

/** Ranges that mean one text, by where that text begins in what was parsed. */
export type Marks = ReadonlyMap<number, Range>;

/** The tree of what was parsed, and what is odd about it. */
export interface Tree {
  readonly root: Node | null;
  readonly problems: readonly Problem[];
  /** What the parser let pass, but no note contains. */
  readonly odd: readonly Fault[];
  /** Where an anchor is used; none is ever followed. */
  readonly anchored: Range | undefined;
}

/** Makes our own tree of what the parser found; `source` is the text that the offsets belong to. */
export function treeOf(composed: Composed, source: string, marks: Marks, keys: KeyNames): Tree {
  const builder = new TreeBuilder(source, marks, keys);
  const root =
    composed.contents === null || composed.contents === undefined ? null : builder.node(composed.contents);
  const { problems, odd, anchored } = builder;
  return { root: isNothing(root) ? null : root, problems, odd, anchored };
}

const isNothing = (node: Node | null): boolean =>
  node?.kind === 'text' && node.garbled !== true && node.text.trim() === '';

class TreeBuilder {
  readonly problems: Problem[] = [];
  readonly odd: Fault[] = [];
  private readonly anchors = new Map<string, Range>();
  private readonly aliases = new Set<string>();

  constructor(
    private readonly source: string,
    private readonly marks: Marks,
    private readonly keys: KeyNames,
  ) {}

  /** An anchor that something refers to, or that is at a map or a list. */
  get anchored(): Range | undefined {
    for (const [name, place] of this.anchors) if (this.aliases.has(name)) return place;
    return undefined;
  }

  node(node: unknown): Node {
    if (isMap(node)) return this.map(node);
    if (isSeq(node)) return this.list(node);
    if (isScalar(node)) return this.text(node);
    return this.alias(node as Alias);
  }

  private map(node: YAMLMap): MapNode {
    this.props(node);
    const [start, end] = rangeOf(node.range);
    const flow = node.flow === true;
    const entries: Entry[] = [];
    // Where the value of the last entry goes on after a comma, up to here.
    let goesOn = -1;
    const mend = (): void => {
      const last = entries.at(-1);
      if (goesOn >= 0 && last !== undefined)
        entries[entries.length - 1] = { ...last, value: this.whole(last.value as TextNode, goesOn) };
      goesOn = -1;
    };
    for (const pair of node.items) {
      if (flow && this.isRest(pair, entries.at(-1)?.value)) {
        [, goesOn] = rangeOf((pair.key as Scalar).range);
        continue;
      }
      mend();
      const entry = this.entry(pair);
      if (entry !== undefined) entries.push(entry);
    }
    mend();
    const from = entries[0] === undefined ? start : Math.min(start, entries[0].start);
    return { kind: 'map', start: from, end, flow, entries };
  }

  /** The entry of one pair; undefined where it is none that a note has. */
  private entry(pair: Pair): Entry | undefined {
    if (!isScalar(pair.key)) {
      this.strangeKey(pair.key);
      return undefined;
    }
    const key = this.text(pair.key);
    if (key.text === '<<') {
      this.problems.push({ code: 'yaml/merge-key', at: { start: key.start, end: key.end } });
      return undefined;
    }
    if (key.start === key.end && this.source[key.start - 1] === '?') {
      this.odd.push({ code: 'QUESTION', start: key.start - 1, end: key.start });
      return undefined;
    }
    const value = pair.value === null || pair.value === undefined ? null : this.node(pair.value);
    return { start: key.start, end: key.end, key: key.text, value: isNothing(value) ? null : value };
  }

  private strangeKey(key: unknown): void {
    const { start, end } = this.node(key);
    this.problems.push({ code: 'yaml/syntax', form: 'complex-key', at: { start, end } });
  }

  private list(node: YAMLSeq): ListNode {
    this.props(node);
    const [start, end] = rangeOf(node.range);
    const flow = node.flow === true;
    const items: Node[] = [];
    let last: Node | undefined;
    let goesOn = -1;
    const mend = (): void => {
      if (goesOn >= 0) items.push(this.whole(items.pop() as TextNode, goesOn));
      goesOn = -1;
    };
    for (const one of node.items) {
      const item = this.node(one);
      if (flow && last?.kind === 'text' && item.kind === 'text' && this.splitsNumber(last, item)) {
        goesOn = item.end;
      } else {
        mend();
        items.push(item);
      }
      last = item;
    }
    mend();
    return { kind: 'list', start, end, flow, items };
  }

  /** Whether a key without a colon is the rest of the text before it, cut off by a comma. */
  private isRest(pair: Pair, before: Node | null | undefined): boolean {
    if (pair.value !== null || before?.kind !== 'text' || !isScalar(pair.key)) return false;
    const { value } = pair.key;
    return typeof value === 'string' && value !== '' && this.isPlain(before) && !this.keys.begins(value);
  }

  /** `[1.5 mL with epinephrine 1:100,000]`: no space after the comma, digits on both sides. */
  private splitsNumber(before: TextNode, item: TextNode): boolean {
    if (item.start - before.end !== 1 || !this.isPlain(before)) return false;
    if (!/\d$/.test(before.text) || !/^\d/.test(item.text)) return false;
    return /^\d{3}(?!\d)/.test(item.text) || !/^\d+$/.test(before.text) || !/^\d+$/.test(item.text);
  }

  private isPlain({ start }: Range): boolean {
    const sign = this.source[start];
    return sign !== '"' && sign !== "'";
  }

  /** A text that commas have cut, from its first part up to its last. */
  private whole(first: TextNode, end: number): TextNode {
    const { start } = first;
    const text = this.source.slice(start, end);
    this.problems.push({
      code: 'yaml/comma-splits',
      at: { start, end },
      args: { text, read: first.text },
      data: { text: quoted(text) },
    });
    return { kind: 'text', start, end, text, inner: start, garbled: true };
  }

  private text(scalar: Scalar): TextNode {
    const [start, end] = rangeOf(scalar.range);
    if (this.marks.size > 0) {
      const mark = this.marks.get(start);
      if (mark !== undefined)
        return {
          kind: 'text',
          ...mark,
          text: this.source.slice(mark.start, mark.end),
          inner: -1,
          garbled: true,
        };
    }
    this.props(scalar);
    const text = typeof scalar.value === 'string' ? scalar.value : '';
    const quote = scalar.type === 'QUOTE_DOUBLE' || scalar.type === 'QUOTE_SINGLE';
    if (typeof scalar.comment === 'string') this.comment(scalar, start, end);
    const at = quote ? start + 1 : start;
    // A quoted text can be there as it is, and end in a sign that is written twice.
    const whole = !quote || (end - at - 1 === text.length && this.source[end - 1] === this.source[start]);
    if (whole && this.source.startsWith(text, at)) return { kind: 'text', start, end, text, inner: at };
    return { kind: 'text', start, end, text, inner: -1, ...this.overRows(start, end, quote, scalar.type) };
  }

  /** A text over several lines may have swallowed a key. */
  private overRows(start: number, end: number, quote: boolean, type: unknown): { garbled?: true } {
    const typed = this.source.slice(start, end);
    if (quote) {
      const closed = typed.length > 1 && typed.endsWith(typed[0] ?? '');
      if (!closed || this.swallowed(typed, /\n[ \t]*(?:- +)*([\w-]+):(?=\s|$)/g) !== undefined)
        this.odd.push({ code: 'QUOTE', start, end });
      return {};
    }
    if (type !== 'PLAIN') return {};
    const key = this.swallowed(typed, /\n[ \t]*(?:- +)*([\w-]{4,})(?=:\S|[ \t]*(?:\r?\n|$))/g);
    if (key === undefined) return {};
    const from = start + key.at;
    this.problems.push({
      code: 'yaml/runs-on',
      at: { start: from, end: from + key.word.length },
      args: { word: key.word },
    });
    return { garbled: true };
  }

  private swallowed(typed: string, rows: RegExp): { word: string; at: number } | undefined {
    for (const match of typed.matchAll(rows)) {
      const word = match[1] ?? '';
      if (this.keys.begins(word)) return { word, at: match.index + match[0].length - word.length };
    }
    return undefined;
  }

  /** A comment without a space after its sign was probably meant as text. */
  private comment(scalar: Scalar, start: number, end: number): void {
    const at = this.source.indexOf('#', end);
    const newline = this.source.indexOf('\n', end);
    const stop = newline < 0 ? this.source.length : newline;
    if (at < 0 || at >= stop || /^[\s#]?$/.test(this.source.slice(at + 1, at + 2))) return;
    const row = this.source.slice(start, stop).trimEnd();
    const plain = scalar.type === 'PLAIN' && !row.slice(0, end - start).includes('\n');
    this.problems.push({
      code: 'yaml/comment-swallows',
      at: { start: at, end: start + row.length },
      args: { text: this.source.slice(at, start + row.length) },
      ...(plain ? { data: { start, text: quoted(row) } } : {}),
    });
  }

  private alias(node: Alias): TextNode {
    const [start, end] = rangeOf(node.range);
    this.aliases.add(node.source);
    this.odd.push({ code: 'SIGN', start, end });
    return { kind: 'text', start, end, text: this.source.slice(start, end), inner: start, garbled: true };
  }

  /** Anchors and tags are before the node that has them. */
  private props(node: Scalar | YAMLMap | YAMLSeq): void {
    if (node.anchor === undefined && node.tag === undefined) return;
    const [from] = rangeOf(node.range);
    const sign = node.anchor === undefined ? '!' : `&${node.anchor}`;
    let start = Math.max(0, this.source.lastIndexOf(sign, from));
    while (sign === '!' && this.source[start - 1] === '!') start -= 1;
    this.odd.push({ code: 'SIGN', start, end: Math.max(from, start) });
    if (node.anchor === undefined) return;
    this.anchors.set(node.anchor, { start, end: start + sign.length });
    if (!isScalar(node)) this.aliases.add(node.anchor);
  }
}

function rangeOf(range: unknown): [number, number] {
  const [start, end] = (range ?? [0, 0]) as [number, number];
  return [start, end];
}

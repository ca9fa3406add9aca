import type { CST } from 'yaml';
import type { Entry, ListNode, MapNode, Node, TextNode } from './tree.ts';

/**
 * The tree of a text that is written as most are, made straight from the parser's tokens: block maps and lists, flow
 * ones on one row, texts on one row. Undefined where anything else stands in it, be it right or wrong: an empty value,
 * a text over several rows, an escape, an anchor, a fault. Then the composer has to look, which takes longer. Where
 * both can read a text, they say the same.
 */
export function ordinaryTree(tokens: readonly CST.Token[]): MapNode | undefined {
  const document = onlyDocument(tokens);
  if (document?.value?.type !== 'block-map') return undefined;
  return isBlank(document.start) && isBlank(document.end ?? [])
    ? new Reader().map(document.value)
    : undefined;
}

function onlyDocument(tokens: readonly CST.Token[]): CST.Document | undefined {
  let found: CST.Document | undefined;
  for (const token of tokens) {
    if (token.type === 'document' && found === undefined) found = token;
    else if (!around.has(token.type)) return undefined;
  }
  return found;
}

const around: ReadonlySet<string> = new Set(['byte-order-mark', 'space', 'newline', 'comment']);

/** Keys above this length are reported by the composer. */
const longestKey = 1000;

/** Characters with which no plain text begins. */
const reserved = ',%|>@`\t';

/** A quoted text on one row in which nothing is escaped. */
const simplyQuoted = /^(?:'[^'\n]*'|"[^"\\\n]*")$/;

/** A comment that can't have been meant as text: a blank stands behind its sign. */
const clearComment = /^#(?:[\s#]|$)/;

/** Reads the tokens of nodes; each method answers undefined where they are out of the ordinary. */
class Reader {
  /** Where the last node ended, with the blanks, rows and comments that belong to it. */
  private after = 0;

  map({ offset, indent, items }: CST.BlockMap): MapNode | undefined {
    const entries: Entry[] = [];
    this.after = offset;
    for (const item of items) {
      const end = this.after;
      if (item.sep === undefined)
        return this.isLast(item, items)
          ? { kind: 'map', start: offset, end, flow: false, entries }
          : undefined;
      const isIn = isBlank(item.start) && isText(item.key) && item.key.indent === indent;
      const entry = isIn ? this.entry(item, false) : undefined;
      if (entry === undefined) return undefined;
      entries.push(entry);
    }
    return { kind: 'map', start: offset, end: this.after, flow: false, entries };
  }

  private list({ offset, items }: CST.BlockSequence): ListNode | undefined {
    const nodes: Node[] = [];
    this.after = offset;
    for (const item of items) {
      const end = this.after;
      if (item.value === undefined)
        return this.isLast(item, items)
          ? { kind: 'list', start: offset, end, flow: false, items: nodes }
          : undefined;
      const node =
        placeBehind('seq-item-ind', item.start) === undefined ? undefined : this.node(item.value, false);
      if (node === undefined) return undefined;
      nodes.push(node);
    }
    return { kind: 'list', start: offset, end: this.after, flow: false, items: nodes };
  }

  /** Whether an item without a value is only the comments behind all others. */
  private isLast({ start }: CST.CollectionItem, items: readonly CST.CollectionItem[]): boolean {
    const token = start.at(-1);
    if (items.length === 1 || items.at(-1)?.start !== start || token === undefined || !isBlank(start))
      return false;
    this.after = token.offset + token.source.length;
    return true;
  }

  private entry({ key, sep = [], value }: CST.CollectionItem, inFlow: boolean): Entry | undefined {
    const name = this.key(key);
    const place = placeBehind('map-value-ind', sep);
    if (name === undefined || place === undefined) return undefined;
    const isBlock = value?.type === 'block-map' || value?.type === 'block-seq';
    if (place === 'same row' ? isBlock : inFlow) return undefined;
    const node = this.node(value, inFlow);
    if (node === undefined) return undefined;
    const isNothing = node.kind === 'text' && node.text.trim() === '';
    return { start: name.start, end: name.end, key: name.text, value: isNothing ? null : node };
  }

  private key(token: CST.Token | null | undefined): TextNode | undefined {
    if (!isText(token) || (token.end ?? []).length > 0) return undefined;
    return token.source === '<<' || token.source.length > longestKey ? undefined : this.text(token, true);
  }

  private node(token: CST.Token | undefined, inFlow: boolean): Node | undefined {
    if (isText(token)) return this.text(token, inFlow);
    if (token?.type === 'flow-collection') return this.flow(token, inFlow);
    if (inFlow) return undefined;
    if (token?.type === 'block-map') return this.map(token);
    return token?.type === 'block-seq' ? this.list(token) : undefined;
  }

  private text({ type, offset, source, end }: CST.FlowScalar, inFlow: boolean): TextNode | undefined {
    const plain = type === 'scalar';
    if (!(plain ? isPlain(source) : simplyQuoted.test(source))) return undefined;
    const stop = offset + source.length;
    if (!this.ends(end, stop, inFlow)) return undefined;
    return plain
      ? { kind: 'text', start: offset, end: stop, text: source, inner: offset }
      : { kind: 'text', start: offset, end: stop, text: source.slice(1, -1), inner: offset + 1 };
  }

  private flow(
    { offset, start, items, end }: CST.FlowCollection,
    inFlow: boolean,
  ): MapNode | ListNode | undefined {
    const [close, ...rest] = end;
    const isMap = start.source === '{';
    if (close?.source !== (isMap ? '}' : ']')) return undefined;
    const stop = close.offset + 1;
    if (isMap) {
      const entries = inside(items, (item) => this.entry(item, true));
      if (entries === undefined || !this.ends(rest, stop, inFlow)) return undefined;
      return { kind: 'map', start: offset, end: stop, flow: true, entries };
    }
    const nodes = inside(items, ({ key, sep, value }) =>
      key === undefined && sep === undefined ? this.node(value, true) : undefined,
    );
    if (nodes === undefined || !this.ends(rest, stop, inFlow)) return undefined;
    return { kind: 'list', start: offset, end: stop, flow: true, items: nodes };
  }

  /** Goes over what stands behind a node; false where that is more than blanks, rows and clear comments. */
  private ends(tokens: readonly CST.SourceToken[] = [], end: number, inFlow: boolean): boolean {
    let spaced = false;
    this.after = end;
    for (const { type, source } of tokens) {
      if (
        type === 'comment'
          ? !spaced || !clearComment.test(source)
          : type === 'newline'
            ? inFlow
            : type !== 'space'
      )
        return false;
      spaced = true;
      this.after += source.length;
    }
    return true;
  }
}

/** What stands between the brackets of a flow map or list; undefined where a part is out of the ordinary. */
function inside<Part>(
  items: readonly CST.CollectionItem[],
  read: (item: CST.CollectionItem) => Part | undefined,
): Part[] | undefined {
  const parts: Part[] = [];
  for (const [index, item] of items.entries()) {
    const part = isParted(item.start, index) ? read(item) : undefined;
    if (part === undefined) return undefined;
    parts.push(part);
  }
  return parts;
}

/** Whether a part of a flow map or list stands behind its comma and a blank; the first one behind none. */
function isParted(start: readonly CST.SourceToken[], index: number): boolean {
  const types = start.map(({ type }) => type).join(' ');
  return index === 0 ? types === '' : types === 'comma space';
}

const isText = (token: CST.Token | null | undefined): token is CST.FlowScalar =>
  token?.type === 'scalar' ||
  token?.type === 'single-quoted-scalar' ||
  token?.type === 'double-quoted-scalar';

const isPlain = (source: string): boolean =>
  source !== '' && !source.includes('\n') && !reserved.includes(source[0]!);

/** Whether tokens that begin a row are blanks, ends of rows and comments. */
const isBlank = (tokens: readonly CST.SourceToken[]): boolean =>
  tokens.every(({ type, source }) =>
    type === 'space' ? !source.includes('\t') : type === 'newline' || type === 'comment',
  );

/** Where the value behind a colon or a dash begins; undefined where something else stands there too. */
function placeBehind(
  sign: 'map-value-ind' | 'seq-item-ind',
  tokens: readonly CST.SourceToken[],
): 'same row' | 'next row' | undefined {
  const at = tokens.findIndex(({ type }) => type === sign);
  if (at < 0 || !(sign === 'seq-item-ind' ? isBlank(tokens.slice(0, at)) : at === 0)) return undefined;
  const behind = tokens.slice(at + 1);
  if (!isBlank(behind) || behind[0]?.type === 'comment') return undefined;
  return behind.some(({ type }) => type === 'newline') ? 'next row' : 'same row';
}

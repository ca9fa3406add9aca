import type { Entry, ListNode, MapNode, Node, TextNode } from '../tree/tree.ts';

/**
 * The tree of a text that is written as most are, made straight from the lexer's tokens: block maps and lists, flow
 * ones on one row, texts on one row. Undefined where anything else is in it, be it right or wrong: an empty value,
 * a text over several rows, an escape, an anchor, a remark that is oddly, a fault. Then parser and composer have
 * to look, which takes much longer. Where both can read a text, they say the same.
 * @param tokens what the lexer makes of the text: pieces of it, and its marks for a document and a plain text
 */
export function ordinaryTree(tokens: readonly string[]): MapNode | undefined {
  return new Reader(tokens).document();
}

/** The lexer's marks, which are no characters of the text. */
const [documentMark, plainMark] = ['\u0002', '\u001f'] as const;
const byteOrderMark = '\uFEFF';

/** Columns of a line that is none: the text is at its end, or what is there is out of the ordinary. */
const [atEnd, odd] = [-1, -2] as const;

/** Keys above this length are reported by the composer. */
const longestKey = 1000;

/** Characters with which no plain text begins. */
const reserved = ',%|>@`\t';

/** A quoted text on one line in which nothing is escaped. */
const simplyQuoted = /^(?:'[^'\n]*'|"[^"\\\n]*")$/;

/** A comment that can't have been meant as text: a space is after its sign. */
const clearComment = /^#(?:[\s#]|$)/;

/** Reads the tokens from the first to the last; each method answers undefined where they are out of the ordinary. */
class Reader {
  /** Index of the next token, and where in the text it is. */
  private at = 0;
  private offset = 0;
  /** Where the line of the last value ended. */
  private after = 0;
  /** The column of the line that begins at the next token. */
  private column = 0;

  constructor(private readonly tokens: readonly string[]) {}

  document(): MapNode | undefined {
    if (this.tokens[0] === byteOrderMark) this.take();
    this.column = this.nextRow();
    const root = this.column === 0 ? this.map(0) : undefined;
    return this.column === atEnd ? root : undefined;
  }

  private take(): string {
    const token = this.tokens[this.at]!;
    this.at += 1;
    this.offset += token.length;
    return token;
  }

  /** Goes over spaces; false where a tab is among them. */
  private blanks(): boolean {
    if (!isBlank(this.tokens[this.at])) return true;
    return !this.take().includes('\t');
  }

  /**
   * Goes over empty lines and comments to the next line with something on it, and its indentation. Comments that are
   * in line with what follows belong to nothing; of others the parser has to say where they belong.
   */
  private nextRow(): number {
    let remark = odd as number;
    for (;;) {
      const from = this.offset;
      if (!this.blanks()) return odd;
      const column = this.offset - from;
      if (this.tokens[this.at] === documentMark) this.at += 1;
      const token = this.tokens[this.at];
      if (token === undefined) return remark > 0 ? odd : atEnd;
      if (isComment(token)) {
        if (remark !== odd && remark !== column) return odd;
        remark = column;
        this.take();
      } else if (!isNewline(token)) return remark === odd || remark === column ? column : odd;
      else this.take();
    }
  }

  /** Goes over what is after a value, and to the next line. */
  private endRow(): boolean {
    const spaced = isBlank(this.tokens[this.at]);
    if (!this.blanks()) return false;
    if (isComment(this.tokens[this.at]) && !(spaced && clearComment.test(this.take()))) return false;
    const token = this.tokens[this.at];
    if (token !== undefined && !isNewline(token)) return false;
    if (token !== undefined) this.take();
    this.after = this.offset;
    this.column = this.nextRow();
    return this.column !== odd;
  }

  private map(column: number): MapNode | undefined {
    const start = this.offset;
    const entries: Entry[] = [];
    do {
      const entry = this.entry(column);
      if (entry === undefined) return undefined;
      entries.push(entry);
    } while (this.column === column);
    return this.column > column ? undefined : { kind: 'map', start, end: this.after, flow: false, entries };
  }

  private entry(column: number): Entry | undefined {
    const key = this.key();
    if (key === undefined) return undefined;
    const value = this.valueOnRow() ? this.node(false) : this.below(column);
    return value === undefined ? undefined : entryOf(key, value);
  }

  private list(column: number): ListNode | undefined {
    const start = this.offset;
    const items: Node[] = [];
    do {
      const from = this.offset;
      this.take();
      if (!isBlank(this.tokens[this.at]) || !this.blanks()) return undefined;
      const item = this.isKey() ? this.map(column + this.offset - from) : this.node(false);
      if (item === undefined) return undefined;
      items.push(item);
    } while (this.column === column && this.tokens[this.at] === '-');
    return this.column > column ? undefined : { kind: 'list', start, end: this.after, flow: false, items };
  }

  /** Goes over the spaces after a colon; whether something is there on the same line. */
  private valueOnRow(): boolean {
    if (!isBlank(this.tokens[this.at])) return false;
    const token = this.tokens[this.at + 1];
    return token !== undefined && !isNewline(token) && !isComment(token) && this.blanks();
  }

  /** The map or list on the lines below a key; a list may be as far to the left as its key. */
  private below(column: number): Node | undefined {
    if (!this.endRow()) return undefined;
    if (this.tokens[this.at] === '-') return this.column >= column ? this.list(this.column) : undefined;
    return this.column > column ? this.map(this.column) : undefined;
  }

  /** A text or a flow map or list; after one that is not within brackets the line ends. */
  private node(inFlow: boolean): Node | undefined {
    const token = this.tokens[this.at];
    const node = token === '{' ? this.flowMap() : token === '[' ? this.flowList() : this.text();
    return node === undefined || inFlow || this.endRow() ? node : undefined;
  }

  /** Whether a key comes next. */
  private isKey(): boolean {
    const token = this.tokens[this.at];
    return this.tokens[this.at + (token === plainMark ? 2 : 1)] === ':' && token !== ':';
  }

  private key(): TextNode | undefined {
    const key = this.isKey() ? this.text() : undefined;
    if (key === undefined || key.text === '<<' || key.end - key.start > longestKey) return undefined;
    this.take();
    return key;
  }

  private text(): TextNode | undefined {
    const start = this.offset;
    if (this.tokens[this.at] === plainMark) {
      this.at += 1;
      const text = this.take();
      return isPlain(text) ? { kind: 'text', start, end: this.offset, text, inner: start } : undefined;
    }
    if (this.at === this.tokens.length) return undefined;
    const quoted = this.take();
    return simplyQuoted.test(quoted)
      ? { kind: 'text', start, end: this.offset, text: quoted.slice(1, -1), inner: start + 1 }
      : undefined;
  }

  private flowMap(): MapNode | undefined {
    const start = this.offset;
    const entries = this.parts('}', () => {
      const key = this.key();
      const value = key !== undefined && this.valueOnRow() ? this.node(true) : undefined;
      return key === undefined || value === undefined ? undefined : entryOf(key, value);
    });
    return entries && { kind: 'map', start, end: this.offset, flow: true, entries };
  }

  private flowList(): ListNode | undefined {
    const start = this.offset;
    const items = this.parts(']', () => this.node(true));
    return items && { kind: 'list', start, end: this.offset, flow: true, items };
  }

  /** What is between brackets, each part but the first after a comma and a space. */
  private parts<Part>(close: string, read: () => Part | undefined): Part[] | undefined {
    const parts: Part[] = [];
    this.take();
    while (this.tokens[this.at] !== close) {
      if (parts.length > 0 && !(this.tokens[this.at] === ',' && this.comma())) return undefined;
      const part = read();
      if (part === undefined) return undefined;
      parts.push(part);
    }
    this.take();
    return parts;
  }

  private comma(): boolean {
    this.take();
    return isBlank(this.tokens[this.at]) && this.blanks();
  }
}

/** An entry; an empty text is no value. */
const entryOf = ({ start, end, text }: TextNode, value: Node): Entry => ({
  start,
  end,
  key: text,
  value: value.kind === 'text' && value.text.trim() === '' ? null : value,
});

const isPlain = (source: string): boolean =>
  source !== '' && !source.includes('\n') && !reserved.includes(source[0]!);

const isBlank = (token: string | undefined): boolean =>
  token !== undefined && (token.startsWith(' ') || token.startsWith('\t'));
const isNewline = (token: string): boolean => token === '\n' || token === '\r\n';
const isComment = (token: string | undefined): boolean => token?.startsWith('#') === true;

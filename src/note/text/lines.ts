/** A place as editors count it: lines and UTF-16 units from 0. */
export interface Position {
  readonly line: number;
  readonly character: number;
}

/** Turns offsets of one text into lines and characters. CR, LF and CRLF end a line. */
export class Lines {
  private readonly starts: number[] = [0];

  constructor(private readonly text: string) {
    for (const match of text.matchAll(/\r\n|\r|\n/g)) this.starts.push(match.index + match[0].length);
  }

  get count(): number {
    return this.starts.length;
  }

  at(offset: number): Position {
    let low = 0;
    let high = this.starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low, character: offset - (this.starts[low] ?? 0) };
  }

  /** The line without its line break; empty where there is none. */
  row(line: number): string {
    const start = this.starts[line];
    return start === undefined
      ? ''
      : this.text.slice(start, this.starts[line + 1]).replace(/(?<![\r\n])[\r\n]+$/, '');
  }
}

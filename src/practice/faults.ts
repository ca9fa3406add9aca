import type { Args, Problem } from '../note/tree/finding.ts';
import { nearest } from '../note/text/nearest.ts';
import type { Range } from '../note/tree/tree.ts';

/** Gathers what is wrong with a practice file. */
export class Faults {
  readonly problems: Problem[] = [];

  add(code: string, { start, end }: Range, args: Args = {}, form = 'main'): void {
    this.problems.push({ code: `practice/${code}`, form, at: { start, end }, args });
  }

  /** An unknown word, with the known one that is nearest. */
  unknown(code: string, at: Range, word: string, known: Iterable<string>): void {
    const near = nearest(word, known)?.word;
    if (near === undefined) this.add(code, at, { word });
    else this.add(code, at, { word, nearest: near }, 'nearest');
  }
}

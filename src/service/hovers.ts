import type { Range } from '../note/tree.ts';
import type { Analysis } from './analysis.ts';

/** What is shown beside the pointer. */
export interface Hover extends Range {
  /** Markdown in which all words of the note are escaped: no link, HTML or command of the note works in it. */
  readonly markdown: string;
}

/** Help of the key at an offset, and what follows from the value there. */
export function hoverAt(_analysis: Analysis, _offset: number): Hover | undefined {
  return undefined;
}

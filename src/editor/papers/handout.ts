import { escaped } from '../../documents/summary/markdown.ts';
import { handoutOf, type Handout, type Language } from '../../documents/handout/index.ts';
import { plain } from '../../documents/one-line.ts';
import { readNote } from '../../note/read.ts';
import type { OpenNote } from '../notes/open-note.ts';

/**
 * What the patient of a note takes home, as the note stands, or why there is nothing.
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

/** A handout as it is shown beside its note, with what has to be looked at first. Nothing of the note can become markup. */
export function handoutPreview(handout: Handout, remarksTitle: string): string {
  const { practice, title, header, sections, foot } = handout;
  const remarks = remarksText(handout);
  const blocks = [
    ...(remarks === '' ? [] : [`> **${escaped(remarksTitle)}** ${escaped(remarks)}`]),
    ...(practice === '' ? [] : [escaped(practice)]),
    `# ${escaped(title)}`,
    // Two blanks end a row.
    header.map(escaped).join('  \n'),
    ...sections.flatMap(({ heading, items }) => [
      `## ${escaped(heading)}`,
      items.map((item) => `- ${escaped(item)}`).join('\n'),
    ]),
    ...foot.map((row) => `_${escaped(row)}_`),
  ];
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}

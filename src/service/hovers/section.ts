import { escaped } from '../../documents/summary/markdown.ts';
import { citation } from '../../reference/sources/index.ts';

/** One row of a hover, with the key of its source. */
export interface Row {
  readonly text: string;
  readonly source?: string | undefined;
}

/** A heading with rows below. */
export interface Section {
  readonly title: string;
  readonly rows: readonly Row[];
}

const caution =
  'Decision support: the treating clinician, local protocol and the current label decide. Verify every value.';

/** Sections as Markdown. All words are escaped: those of the note may hold anything. */
export function markdownOf(sections: readonly Section[], withCaution: boolean): string {
  const blocks = sections.map(({ title, rows }) =>
    [...(title === '' ? [] : [`**${plain(title)}**`, '']), ...rows.map(rowOf)].join('\n'),
  );
  return [...blocks, ...(withCaution ? [`_${plain(caution)}_`] : [])].join('\n\n');
}

const rowOf = ({ text, source }: Row): string =>
  `- ${plain(text)}${source === undefined ? '' : ` _(${plain(citation(source))})_`}`;

/** On one row, escaped, with nothing that only a machine sees. */
const plain = (text: string): string => escaped(text.replace(/[\s\p{Cc}\p{Cf}]+/gu, ' ').trim());

/** A list of words as long as anybody reads. */
export function someOf(words: readonly string[], most = 10): string {
  const more = words.length - most;
  return words.slice(0, most).join(', ') + (more > 0 ? ` and ${more} more` : '');
}

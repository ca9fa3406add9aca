import { caution } from '../../documents/caution.ts';
import { escaped } from '../../documents/summary/markdown.ts';
import { markText } from '../../documents/check-page.ts';
import { citation } from '../../reference/sources/index.ts';
import type { Mark } from '../../reference/types.ts';

/** One row of a hover, with the key of its source and how sure it is of it. */
export interface Row {
  readonly text: string;
  readonly source?: string | undefined;
  readonly mark?: Mark | undefined;
}

/** A heading with lines below. */
export interface Section {
  readonly title: string;
  readonly rows: readonly Row[];
}

/** On one line, escaped, with nothing that only a machine sees. */
function plain(text: string): string {
  return escaped(odd.test(text) ? text.replace(blanks, ' ') : text).trim();
}

const odd = /[^\S ]| {2}|[\p{Cc}\p{Cf}]/u;
const blanks = /[\s\p{Cc}\p{Cf}]+/gu;

const cautionWords = `_${plain(caution)}_`;

/**
 * Sections as Markdown. All words are escaped: those of the note may hold anything.
 * @param options.caution whether the sentence of caution comes after them
 * @param options.help a section that comes last
 */
export function markdownOf(
  sections: readonly Section[],
  { caution: withCaution = false, help }: { readonly caution?: boolean; readonly help?: Section } = {},
): string {
  const blocks = sections.map(blockOf);
  if (withCaution) blocks.push(cautionWords);
  if (help !== undefined) blocks.push(blockOf(help));
  return blocks.join('\n\n');
}

const blockOf = ({ title, rows }: Section): string => `**${plain(title)}**\n${rows.map(rowOf).join('')}`;

const rowOf = ({ text, source, mark }: Row): string =>
  `\n- ${plain(text)}${source === undefined ? '' : cited(source, mark)}`;

const citations = new Map<string, string>();

/** A source after a row, and how sure the row is of it; each is put into words once. */
function cited(source: string, mark: Mark | undefined): string {
  const key = `${mark ?? ''} ${source}`;
  let words = citations.get(key);
  if (words === undefined) {
    const sure = mark === undefined ? '' : `; ${markText[mark]}`;
    words = ` _(${plain(citation(source) + sure)})_`;
    citations.set(key, words);
  }
  return words;
}

/** A list of words as long as anybody reads. */
export function someOf(words: readonly string[], most = 10): string {
  const more = words.length - most;
  return words.slice(0, most).join(', ') + (more > 0 ? ` and ${more} more` : '');
}

import type { Finding, Fix, TextEdit } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { NearestSite } from '../../note/words/site-nearest.ts';
import { within } from '../../note/tree/tree.ts';
import type { FixPlace } from '../check.ts';
import { wordFix } from '../word-fix.ts';

/** What to write instead of misspelled words of a site. */
export interface Mended {
  readonly instead: string;
  readonly sure: boolean;
  readonly other: boolean;
  readonly edits: readonly TextEdit[];
}

/** The edits of misspelled words; undefined where the text is escaped or folded in the note. */
export function mended(
  { node }: Leaf<string>,
  { words, sure, other, text }: NearestSite,
): Mended | undefined {
  if (node.inner < 0) return undefined;
  const edits = words.map((word) => ({ ...within(node, word.from, word.to), text: word.text }));
  return { instead: text, sure, other, edits };
}

/** The spelling fix for a finding with fixed words. */
export function mendWords(_place: FixPlace, { data }: Finding): readonly Fix[] {
  if (data === undefined) return [];
  const { instead, edits, ...how } = data as Mended;
  return [wordFix(instead, how, edits)];
}

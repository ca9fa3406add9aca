import type { Leaf } from '../note/tree/leaf.ts';
import { plain } from './one-line.ts';
import { listOfWords } from './list-of-words.ts';

/** What means `??` in everything that leaves the house. */
const notYetKnown = 'not yet known';

/** What the note says, as typed; undefined where it says nothing. */
export function said(leaf: Pick<Leaf<unknown>, 'text' | 'pending'> | undefined): string | undefined {
  if (leaf === undefined) return undefined;
  const text = plain(leaf.text).replace(/\s+/g, ' ').trim();
  if (text === '') return undefined;
  return leaf.pending ? notYetKnown : text;
}

/** What the note says after a few words of ours. */
export function saidAs(lead: string, leaf: Leaf<unknown> | undefined): string | undefined {
  const text = said(leaf);
  return text === undefined ? undefined : `${lead} ${text}`;
}

/** The words of a list as a sentence lists them; undefined where there is none. */
export function saidList(leaves: readonly Leaf<unknown>[] | undefined): string | undefined {
  const words = (leaves ?? []).flatMap((leaf) => said(leaf) ?? []);
  return words.length === 0 ? undefined : listOfWords(words);
}

/** A yes or no in words of ours; what is neither is shown as typed. */
export function saidYesNo(leaf: Leaf<boolean> | undefined, yes: string, no: string): string | undefined {
  if (leaf?.value === undefined) return saidAs(`${yes}:`, leaf);
  return leaf.value ? yes : no;
}

/** A text that ends as a sentence does: a name that ends in a point needs no other. */
export const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

/** Parts that are there, with commas between them; undefined where none is. */
export function joined(parts: readonly (string | undefined)[], by = ', '): string | undefined {
  const there = parts.filter((part) => part !== undefined);
  return there.length === 0 ? undefined : there.join(by);
}

import type { Gather } from './gather.ts';
import { wordSet } from './word-set.ts';

/** Where words part a text into its procedures: "Procedure 2:", "B.", "the second lesion". */
export interface Section {
  readonly at: number;
  readonly end: number;
  /** The same for all names of one procedure: its number. */
  readonly id: string;
}

const nouns = wordSet('procedure site lesion biopsy specimen location # number spot no');
const ordinals: ReadonlyMap<string, string> = new Map([
  ['first', '1'],
  ['1st', '1'],
  ['one', '1'],
  ['second', '2'],
  ['2nd', '2'],
  ['two', '2'],
  ['third', '3'],
  ['3rd', '3'],
  ['three', '3'],
  ['fourth', '4'],
  ['4th', '4'],
]);
const ordered = wordSet('first second third fourth 1st 2nd 3rd 4th');
const afterOrdinal = wordSet('site lesion biopsy procedure one area specimen spot , is was were had has and');
const afterId = wordSet('. ) : , is was has had got');
const numbered = wordSet('number site lesion');

/** The sections of a text; none where it does not name two at least. */
export function sectionsOf(gather: Gather): readonly Section[] {
  const sections: Section[] = [];
  for (let at = 0; at < gather.scan.words.length; at += 1) {
    const section = sectionAt(gather, at);
    if (section === undefined) continue;
    sections.push(section);
    at = section.end - 1;
  }
  return new Set(sections.map(({ id }) => id)).size > 1 ? sections : [];
}

function sectionAt(gather: Gather, at: number): Section | undefined {
  const low = gather.low(at);
  const article = low === 'the' ? at + 1 : at;
  const ordinal = gather.low(article);
  const isCounted = article > at && gather.word(article + 1)?.unit === 'mL';
  if (ordered.has(ordinal) && (isCounted || afterOrdinal.has(gather.low(article + 1))))
    return {
      at,
      end: nouns.has(gather.low(article + 1)) ? article + 2 : article + 1,
      id: ordinals.get(ordinal)!,
    };
  if (numbered.has(low) && ordinals.has(gather.low(at + 1)) && !ordered.has(gather.low(at + 1)))
    return { at, end: at + 2, id: ordinals.get(gather.low(at + 1))! };
  return gather.clauseAt(at).from === at ? marked(gather, at) : undefined;
}

/** "1.", "B)", "Lesion 2:" at the beginning of a clause. */
function marked(gather: Gather, at: number): Section | undefined {
  const isNamed = nouns.has(gather.low(at));
  const place = !isNamed ? at : gather.low(at + 1) === '#' ? at + 2 : at + 1;
  const id = idOf(gather.low(place));
  if (id === undefined || !afterId.has(gather.low(place + 1))) return undefined;
  if (!isNamed && !/^[.):]$/.test(gather.low(place + 1))) return undefined;
  return { at, end: place + 1, id };
}

function idOf(low: string): string | undefined {
  if (/^\d$/.test(low)) return low;
  if (/^[a-h]$/.test(low)) return String(low.charCodeAt(0) - 96);
  return ordinals.get(low);
}

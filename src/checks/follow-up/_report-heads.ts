import { remembered } from '../../note/text/remembered.ts';
import { readSite, type SiteReading } from '../../note/words/site.ts';
import { plainWord } from '../../note/words/word-table.ts';
import type { Tables } from '../../practice/tables.ts';

/** A part of a report between two of its marks, at characters `from` to `to`. */
export interface Segment {
  readonly from: number;
  readonly to: number;
  readonly words: string;
}

/** A label that a report names, and where what it says of that specimen begins. */
export interface NamedLabel {
  readonly label: string;
  readonly from: number;
  readonly to: number;
}

/** Letters for sides with a point or in brackets, which end no sentence; each keeps its length. */
const plainSides = (text: string): string =>
  text.replace(/\b([LR]t?)\.(?=\s)/g, '$1 ').replace(/\(([LR])\)/g, ' $1 ');

/** The parts of a report at whose ends one place or statement ends. */
export const segmentsIn = (text: string, from = 0, to = text.length): readonly Segment[] =>
  from === 0 && to === text.length ? segmentsOf(text) : segmentsBetween(text, from, to);

const segmentsOf = remembered((text) => segmentsBetween(text, 0, text.length));

function segmentsBetween(text: string, from: number, to: number): readonly Segment[] {
  const plain = plainSides(text);
  const segments: Segment[] = [];
  for (const { 0: typed, index } of plain
    .slice(from, to)
    .matchAll(/(?:[^:;.()\n–—-]|(?<=\w)-(?=\w)|\.(?=\d))+/g)) {
    const words = typed.trim();
    const at = from + index + typed.indexOf(words);
    if (words !== '') segments.push({ from: at, to: at + words.length, words });
  }
  return segments;
}

/** Whether a part of a report says a place and nothing else that a head does not say. */
export const isHead = ({ qualifiers }: SiteReading, { followUp }: Tables): boolean =>
  qualifiers.every((word) => followUp.reportHeads.headWords.has(word) || /^\d+(?:mm|cm)?$/.test(word));

const begins = /(?:^|[.;\n])\s*/;
const named = new RegExp(
  String.raw`(?:${begins.source}(?:site|label(?:ed)?|biopsy|bx|sample|spec)|\b(?:[Ss]pecimen|SPECIMEN|[Pp]art|PART|[Cc]ontainer|[Jj]ar|[Bb]ottle|[Vv]ial))\.?\s*(?:no\.?|#|labeled|designated)?\s*["“]?([A-Z]\d?|\d{1,2}[A-Z]?)["”]?(?![\w])`,
  'g',
);
const bare = new RegExp(
  String.raw`${begins.source}(?:\(?([A-Za-z]\d?|\d{1,2})(?:\)|[.:])|#(\d{1,2})[.:)]?|([A-Z])\s+[-–—])\s+`,
  'g',
);

/** What may be a label in a report, after a word such as "specimen" and at the beginning of a part. */
const marksIn = remembered((text) => ({ named: [...text.matchAll(named)], bare: [...text.matchAll(bare)] }));

/** The labels that a report names as laboratories do: `B. Left ear`, `Specimen B:`, `B) skin, right cheek`, `#2`. */
export function labelsIn(text: string, known: ReadonlySet<string>, tables: Tables): readonly NamedLabel[] {
  const found: NamedLabel[] = [];
  const marks = marksIn(text);
  for (const match of marks.named) add(found, match, match[1]!, known, () => true);
  for (const match of marks.bare) {
    const label = (match[1] ?? match[2] ?? match[3])!;
    const after = match.index + match[0].length;
    add(found, match, label, known, () => beginsPart(label, text.slice(after), known, tables));
  }
  return found.sort((a, b) => a.from - b.from);
}

function add(
  found: NamedLabel[],
  match: RegExpExecArray,
  typed: string,
  known: ReadonlySet<string>,
  isLabel: () => boolean,
): void {
  const label = plainWord(typed);
  // Where the clinic labels by letters, a number is the laboratory's own.
  if (/^\d/.test(label) && ![...known].some((one) => /^\d/.test(one))) return;
  // A side is no label.
  if (/^[lr]$/.test(label) && !known.has(label)) return;
  if (!isLabel()) return;
  const from = match.index + match[0].lastIndexOf(typed);
  found.push({ label, from, to: from + typed.length });
}

/** Whether a letter or number before a text is the label of a part: not that of a germ, nor of a list. */
function beginsPart(label: string, after: string, known: ReadonlySet<string>, tables: Tables): boolean {
  const [first] = segmentsIn(after.slice(0, 200));
  const reading = first && readSite(first.words, tables.sites);
  if ((reading !== undefined && isHead(reading, tables)) || /^skin\b/i.test(after)) return true;
  const word = /^[A-Za-z]+/.exec(after)?.[0] ?? '';
  if (
    !/^[A-Z]/.test(label) ||
    !/^[A-Z]/.test(word) ||
    tables.followUp.reportHeads.germs.has(word.toLowerCase())
  )
    return false;
  return known.has(plainWord(label)) || /^[A-H]\d?$/.test(label);
}

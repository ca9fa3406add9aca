import { plain } from '../../documents/one-line.ts';
import { newestFormat, partsOf, type Format } from '../../note/signature/parts.ts';
import { formatOf } from '../../note/signature/verify.ts';
import { factsOf, openIn, type OpenItem } from '../../followup/caseload.ts';
import { applyEdits } from '../../note/tree/edit.ts';
import type { TextEdit } from '../../note/tree/finding.ts';
import { readNote, type Source } from '../../note/read.ts';
import type { Note } from '../../note/generated/types.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Analysis } from '../analysis/analysis.ts';
import { call, noPlace, planFor, Sheet, type Plan } from './acts.ts';
import { faultIn, type Answers, type Question } from './questions.ts';
import { isRefused, type Refused } from '../edits/fields.ts';

export { faultIn, isRefused };
export type { Answers, Question, Refused };

/** What is to be asked for a line that says that something was done. */
export interface Asking {
  /** What the line says: `Patient told`. */
  readonly title: string;
  readonly questions: readonly Question[];
}

/** What is written into a note. */
export interface Done {
  readonly edits: readonly TextEdit[];
  /** In the text after the edits: the first `??` that was written, or where the writing begins. */
  readonly at: Range;
  /** Whether all of this kind is as open as before. Never of a call on its own, which is not meant to end anything. */
  readonly staysOpen: boolean;
  /** Parts of a signed note that it changes, by name. */
  readonly signedParts: readonly string[];
}

type Read = Pick<Source<Note>, 'text' | 'value' | 'damage'>;

/** What is open in a note on the day of its analysis, in the order in which the note has it. */
export function openItemsOf({ text, note, damage, context }: Analysis): readonly OpenItem[] {
  return openItems({ text, value: note, damage }, context);
}

const openItems = (source: Read, { tables, today }: Analysis['context']): readonly OpenItem[] =>
  today === undefined ? [] : openIn('', factsOf(source, tables), today);

/**
 * An item of a list, as its note has it by now: the one of its kind that is nearest to where it was.
 * Undefined where it is no longer open.
 */
export function sameItem(analysis: Analysis, item: OpenItem): OpenItem | undefined {
  const now = openItemsOf(analysis).filter((one) => isAlike(one, item));
  return now.sort((a, b) => Math.abs(a.start - item.start) - Math.abs(b.start - item.start))[0];
}

/**
 * What is to be asked before an open item can be ended or taken on; without an item, before a call is written down.
 * Refused where the note has no sure place for it.
 */
export function askingFor(analysis: Analysis, item: OpenItem | undefined): Asking | Refused {
  const plan = planOf(analysis, item);
  return isRefused(plan) ? plan : { title: plan.title, questions: plan.questions };
}

/** The edits that write the answers into the note, all other lines as they are; nothing that was not said is filled in. */
export function doneBy(analysis: Analysis, item: OpenItem | undefined, answers: Answers): Done | Refused {
  const plan = planOf(analysis, item);
  if (isRefused(plan)) return plan;
  for (const question of plan.questions) {
    const fault = faultIn(question, answers.get(question.key) ?? '', {
      tables: analysis.context.tables,
      today: todayOf(analysis),
    });
    if (fault !== undefined) return { why: fault };
  }
  const edits = plan.write(cleaned(answers));
  return isRefused(edits) ? edits : verified(analysis, item, edits);
}

function planOf(analysis: Analysis, item: OpenItem | undefined): Plan | Refused {
  const { note, root, damage, context } = analysis;
  if (note === null || root === null || damage.length > 0)
    return { why: 'A part of this note cannot be read. Mend it first; then this can be written.' };
  if (context.today === undefined) return noPlace;
  const sheet = new Sheet(analysis, note, root, context.today);
  return item === undefined ? call(sheet) : planFor(sheet, item);
}

/** Answers on one line, without what can't be seen; one that nobody gave is left out. */
const cleaned = (answers: Answers): Answers =>
  new Map(
    [...answers].flatMap(([key, answer]) => {
      const text = plain(answer).trim();
      return text === '' ? [] : [[key, text] as const];
    }),
  );

const todayOf = ({ context }: Analysis): IsoDate => context.today ?? '';

/** Reads the note as it would be: what can't be read back as it was meant is not written. */
function verified(
  { text, root, note, damage, context }: Analysis,
  item: OpenItem | undefined,
  edits: readonly TextEdit[],
): Done | Refused {
  if (edits.length === 0) return { why: 'The note says so already.' };
  const after = readNote(applyEdits(text, edits));
  if (after.value === null || after.root === null || after.damage.length > 0) return noPlace;
  const open = openItems(after, context);
  const before = openItems({ text, value: note, damage }, context);
  const like = (items: readonly OpenItem[]): string =>
    JSON.stringify(items.filter((one) => item !== undefined && isAlike(one, item)).map(asSeen));
  return {
    edits,
    at: placeIn(edits),
    staysOpen: item !== undefined && like(open) === like(before),
    signedParts:
      note?.signed === undefined || root === null
        ? []
        : changedParts(root, after.root, formatOf({ value: note }) ?? newestFormat),
  };
}

const isAlike = (a: OpenItem, b: OpenItem): boolean =>
  a.kind === b.kind && a.label === b.label && a.site === b.site;

/** An item without where it is. */
const asSeen = (item: OpenItem): object => ({ ...item, path: '', start: 0, end: 0, line: 0 });

function placeIn(edits: readonly TextEdit[]): Range {
  let shift = 0;
  let first: Range | undefined;
  for (const { start, end, text } of [...edits].sort((a, b) => a.start - b.start)) {
    const at = start + shift;
    const gap = text.indexOf('??');
    if (gap >= 0) return { start: at + gap, end: at + gap + 2 };
    const lead = /^\s*/.exec(text)?.[0].length ?? 0;
    first ??= { start: at + lead, end: at + lead };
    shift += text.length - (end - start);
  }
  return first ?? { start: 0, end: 0 };
}

/** The parts that a signature covers and that are no longer as they were. */
function changedParts(
  before: NonNullable<Analysis['root']>,
  after: NonNullable<Analysis['root']>,
  format: Format,
): readonly string[] {
  const were = partsOf(before, format);
  const are = partsOf(after, format);
  return [...new Set([...were.keys(), ...are.keys()])].filter((name) => were.get(name) !== are.get(name));
}

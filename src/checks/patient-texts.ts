import type { Note } from '../note/generated/types.ts';
import { readMentions, wordsOf, type Answer, type Why } from '../note/words/mentions/read.ts';
import type { Token } from '../note/words/phrase-tokens.ts';
import type { Slips } from '../note/words/mentions/slips.ts';
import type { Lookup } from '../note/words/mentions/lookup.ts';
import type { WordTable } from '../note/words/word-table.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import { within, type Range } from '../note/tree/tree.ts';
import type { WordRow } from '../reference/types.ts';
import { namesUsed, slipsOf } from './lookups.ts';
import { shared } from './shared.ts';

/** A danger that a text of the note names, and what the text says of it; what is denied is left out. */
export interface Told<Row> {
  readonly row: Row;
  readonly leaf: Leaf<string>;
  readonly at: Range;
  /** Where in the value of the text. */
  readonly from: number;
  readonly to: number;
  readonly answer: Exclude<Answer, 'denied'>;
  /** Why it is not plainly said. */
  readonly why: Why | undefined;
}

/** What a text names and does not deny. */
export function toldIn<Row extends WordRow>(
  leaf: Leaf<string>,
  lookup: Lookup<Row>,
  tokens?: readonly Token[],
): readonly Told<Row>[] {
  const text = leaf.value;
  if (text === undefined || text === 'none') return [];
  return readMentions(text, lookup, tokens).flatMap(({ row, from, to, answer, why }) =>
    answer === 'denied' ? [] : [{ row, leaf, at: within(leaf.node, from, to), from, to, answer, why }],
  );
}

/** Every text in which somebody may mention the patient: conditions, medicines, remarks, what happened then and later. */
const textsOf = shared(({ note }): readonly Leaf<string>[] => {
  const texts: Leaf<string>[] = [];
  const add = (leaf: Leaf<string> | undefined): void => {
    if (leaf?.value !== undefined && leaf.value !== 'none') texts.push(leaf);
  };
  const addAll = (leaves: readonly Leaf<string>[] | undefined): void => {
    for (const leaf of leaves ?? []) add(leaf);
  };
  addAll(note.patient?.conditions);
  addAll(note.patient?.medications);
  addAll(note.remarks);
  for (const { remarks, complications, lesion } of note.procedures ?? []) {
    add(lesion);
    add(complications);
    addAll(remarks);
  }
  for (const text of laterTexts(note)) add(text);
  return texts;
});

function* laterTexts({ events, addenda }: Note): Generator<Leaf<string> | undefined> {
  for (const { signs, action, outcome } of events ?? []) yield* [signs, action, outcome];
  for (const { text } of addenda ?? []) yield text;
}

/** All texts of a note that may mention the patient, read once for each kind of danger. */
class Texts {
  private readonly read = new Map<unknown, readonly Told<never>[]>();

  private readonly tokens: readonly (readonly Token[])[];

  constructor(
    readonly leaves: readonly Leaf<string>[],
    slips: Slips,
  ) {
    this.tokens = leaves.map(({ value }) => slips.read(wordsOf(value ?? '')));
  }

  told<Row extends WordRow>(lookup: Lookup<Row>): readonly Told<Row>[] {
    let told = this.read.get(lookup) as readonly Told<Row>[] | undefined;
    if (told === undefined) {
      told = this.leaves.flatMap((leaf, at) => toldIn(leaf, lookup, this.tokens[at]));
      this.read.set(lookup, told as readonly Told<never>[]);
    }
    return told;
  }
}

/** What the texts of a note mention the patient. */
export const patientTexts = shared((subject) => new Texts(textsOf(subject), slipsOf(subject.tables)));

/**
 * The things that a text says were used on the patient, with their words as texts of their own. What is avoided,
 * planned, past or the cause of a reaction was not.
 */
export const usedIn = <Row extends WordRow>(
  leaf: Leaf<string>,
  table: WordTable<Row>,
): readonly Used<Row>[] =>
  toldIn(leaf, namesUsed(table)).flatMap(({ row, at, from, to, answer, why }) => {
    const text = leaf.value ?? '';
    const isUsed = answer === 'said' || why === 'not sure' || switched.test(text.slice(0, from));
    if (!isUsed) return [];
    const word = text.slice(from, to);
    return [{ row, leaf: { ...leaf, ...at, text: word, value: word } }];
  });

/** "Switched from petrolatum to bacitracin". */
const switched = /\b(?:switch|chang)\w* from [^.;]{1,60} to $/i;

interface Used<Row> {
  readonly row: Row;
  readonly leaf: Leaf<string>;
}

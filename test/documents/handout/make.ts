import assert from 'node:assert/strict';
import { check } from '../../../src/checks/index.ts';
import {
  handoutOf,
  type Handout,
  type Language,
  type NoHandout,
} from '../../../src/documents/handout/index.ts';
import { readNote } from '../../../src/note/read.ts';
import { referenceTables, type Tables } from '../../../src/practice/tables.ts';
import { tablesIn } from '../../practice/tables-of.ts';

type Judged = readonly [Parameters<typeof handoutOf>[0], Parameters<typeof handoutOf>[1]];

/** Notes that were judged, since most are asked for in two languages and by several tests. */
const judgedNotes = new WeakMap<Tables, Map<string, Judged>>();

function judged(text: string, tables: Tables): Judged {
  const notes = judgedNotes.get(tables) ?? new Map<string, Judged>();
  judgedNotes.set(tables, notes);
  let one = notes.get(text);
  if (one === undefined) {
    const source = readNote(text);
    notes.set(text, (one = [source, check(source, { tables, today: '2026-03-20' })]));
  }
  return one;
}

/** Whatever comes of a note, with a practice file if there is one. */
export function made(text: string, practice?: string, language?: Language): Handout | NoHandout {
  const tables = practice === undefined ? referenceTables : tablesIn(practice);
  const [source, judgement] = judged(text, tables);
  return handoutOf(source, judgement, { tables, language });
}

/** The handout of a note that can be read. */
export function handout(text: string, practice?: string, language?: Language): Handout {
  const result = made(text, practice, language);
  assert.ok(result.readable, JSON.stringify(result));
  return result;
}

/** Everything that the patient reads, below the headings. */
export const items = ({ sections }: Handout): readonly string[] =>
  sections.flatMap((section) => section.items);

/** All of it in one text. */
export const words = (one: Handout): string =>
  [
    one.title,
    one.practice,
    ...one.header,
    ...one.sections.flatMap(({ heading, items: rows }) => [heading, ...rows]),
    ...one.foot,
  ].join('\n');

/** A note of one procedure; `more` is in the procedure, `visit` beside it, `patient` in the patient. */
export function note(more: string, { patient = '', visit = '' } = {}): string {
  const indented = (text: string): string =>
    text
      .split('\n')
      .filter((row) => row !== '')
      .map((row) => `    ${row}\n`)
      .join('');
  return `wheal: 1
visit: 2026-03-02 10:05
patient: {id: C-1, born: 1961-08-09, allergies: none${patient === '' ? '' : `, ${patient}`}}
${visit}
procedures:
  - site: left cheek
${indented(more)}`;
}

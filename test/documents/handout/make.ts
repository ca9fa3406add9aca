import assert from 'node:assert/strict';
import { check } from '../../../src/checks/index.ts';
import {
  handoutOf,
  type Handout,
  type Language,
  type NoHandout,
} from '../../../src/documents/handout/index.ts';
import { readNote, readPractice } from '../../../src/note/read.ts';
import { referenceTables, tablesOf } from '../../../src/practice/tables.ts';

/** Whatever comes of a note, with a practice file if there is one. */
export function made(text: string, practice?: string, language?: Language): Handout | NoHandout {
  const tables = practice === undefined ? referenceTables : tablesOf(readPractice(practice).value);
  const source = readNote(text);
  return handoutOf(source, check(source, { tables, today: '2026-03-20' }), { tables, language });
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

/** A note of one procedure; `more` stands in the procedure, `visit` beside it, `patient` in the patient. */
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

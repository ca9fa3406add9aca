import { readPractice } from '../../src/note/read.ts';
import { tablesOf, type Tables } from '../../src/practice/tables.ts';

const made = new Map<string, Tables>();

/** The tables of a practice file, made once for each text: to make the words of all tables takes longer than most tests. */
export function tablesIn(practice: string): Tables {
  let tables = made.get(practice);
  if (tables === undefined) made.set(practice, (tables = tablesOf(readPractice(practice).value)));
  return tables;
}

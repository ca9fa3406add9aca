import { readPractice } from '../../../src/note/read.ts';
import { tablesOf } from '../../../src/practice/tables.ts';

export const note = (site: string, rows: string, patient = 'id: C-1'): string =>
  `visit: 2026-03-02\npatient: {${patient}}\nprocedures:\n  - site: ${site}\n    method: punch\n` +
  `    closure: {material: nylon, size: 5-0, count: 2}\n    ${rows}\n`;

export const practice = (text: string) => tablesOf(readPractice(text).value);

/** What the bench measures, bundled once, so that both sides use the same copy of the parser. */
export { parseDocument } from 'yaml';
export { check } from '../../src/checks/index.ts';
export { noteIndex, readNote } from '../../src/note/read.ts';
export { referenceTables } from '../../src/practice/tables.ts';
export * as service from '../../src/service/index.ts';

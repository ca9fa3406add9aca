import { tablesIn } from '../../practice/tables-of.ts';

export const note = (site: string, rows: string, patient = 'id: C-1'): string =>
  `visit: 2026-03-02\npatient: {${patient}}\nprocedures:\n  - site: ${site}\n    method: punch\n` +
  `    closure: {material: nylon, size: 5-0, count: 2}\n    ${rows}\n`;

/** Earliest and latest day of any source: 5-Minute Clinical Consult, WikEM, suture handbook and others; see the reference table. */
export const windows = [
  ['left cheek', '2026-03-05', '2026-03-09'],
  ['vertex of the scalp', '2026-03-07', '2026-03-16'],
  ['left upper back', '2026-03-09', '2026-03-16'],
] as const;

const shifted = (date: string, days: number): string =>
  new Date(Date.parse(date) + days * 86_400_000).toISOString().slice(0, 10);

export const dayBefore = (date: string): string => shifted(date, -1);

export const dayAfter = (date: string): string => shifted(date, 1);

export const practice = (text: string) => tablesIn(text);

/** Measures in one run, as ratios, so that machines and other load matter little. `--json` prints the rows alone. */
import { parseDocument } from 'yaml';
import { check } from '../../src/checks/index.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables } from '../../src/practice/tables.ts';

const rounds = 60;
const text = 'visit: 2026-03-02\npatient: {id: C-1, weight: 62 kg}\n';

const time = (action: () => unknown): number => {
  const start = process.hrtime.bigint();
  action();
  return Number(process.hrtime.bigint() - start);
};
const median = (values: number[]): number => values.sort((a, b) => a - b)[values.length >> 1] ?? NaN;

const parse: number[] = [];
const whole: number[] = [];
for (let round = -rounds; round < rounds; round++) {
  const fresh = `${text}# ${round}\n`;
  const a = time(() => parseDocument(fresh));
  const b = time(() => check(readNote(fresh), { tables: referenceTables, today: undefined }));
  if (round < 0) continue;
  parse.push(a);
  whole.push(b);
}
const rows = [
  { name: 'whole check to parse', ratio: median(whole) / median(parse), goal: 1.3, better: 'lower' },
];
console.log(process.argv.includes('--json') ? JSON.stringify({ rows }) : rows);

/** Measures in one run, as ratios, so that machines and other load matter little. `--json` prints the lines alone. */
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { caseloadRows } from './caseload.ts';
import { coldStart } from './cold.ts';
import { compare, compareReady, type Row } from './measure.ts';
import { startIncumbent } from './incumbent.ts';
import { faultyNote, noteOf } from './notes.ts';
import { serviceRows, withIncumbent } from './service.ts';
import type * as Subject from './subject.ts';
import { typingRows } from './typing.ts';

const root = join(import.meta.dirname, '..', '..');
const subject = createRequire(import.meta.url)(join(root, 'dist', 'bench-subject.cjs')) as typeof Subject;
const { parseDocument, check, readNote, referenceTables } = subject;

const parse = (text: string): unknown => parseDocument(text);
const context = { tables: referenceTables, today: '2026-04-30' };
const judge = (source: ReturnType<typeof readNote>): ReturnType<typeof check> => check(source, context);
const whole = (text: string): ReturnType<typeof check> => judge(readNote(text));

const faulty = faultyNote();
const found = whole(faulty).findings.length;

const inProcess: readonly Row[] = [
  compare('whole check to parse, note of 60 rows', 1.3, noteOf(60), whole, parse, 400),
  compareReady(
    { name: 'schema and all checks to parse, note of 60 rows', goal: 0.2, text: noteOf(60), rounds: 400 },
    readNote,
    judge,
    parse,
  ),
  compare('whole check to parse, file of 2,000 rows', 1.3, noteOf(2000), whole, parse, 40),
  compare(`whole check to parse, note with ${found} findings`, 1.3, faulty, whole, parse, 400),
  ...serviceRows(subject),
];
const other = startIncumbent();
const rows: readonly Row[] = [
  ...(await withIncumbent(inProcess, other, parse)),
  ...(await typingRows(other)),
  coldStart(join(root, 'dist', 'wheal.cjs'), noteOf(60)),
  ...caseloadRows(join(root, 'dist')),
];

if (process.argv.includes('--json')) console.log(JSON.stringify({ rows }));
else {
  for (const { name, ratio, goal, better, spread, beside } of rows) {
    const kept = better === 'lower' ? ratio <= goal : ratio >= goal;
    console.log(
      `${kept ? 'kept  ' : 'MISSED'}  ${ratio.toFixed(2)} (goal ${better === 'lower' ? '<=' : '>='} ${goal}, middle half ${spread.join('-')}${beside === undefined ? '' : `; ${beside.name} ${beside.ratio.toFixed(2)}`})  ${name}`,
    );
  }
}

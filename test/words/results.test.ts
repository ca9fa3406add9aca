import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { nextKind } from '../../src/followup/next-words.ts';
import { asksOf } from '../../src/followup/report.ts';
import { wayOf } from '../../src/followup/telling.ts';
import { referenceTables as tables } from '../../src/practice/tables.ts';
import { judgeBy } from '../checks/tester.ts';

type Row = Readonly<Record<string, string>>;

const goal = 0.97;

const unseen = parse(readFileSync('test/fixtures/unseen/results.yaml', 'utf8')) as Record<
  string,
  readonly Row[]
>;

/** Prints the share that is right and what is wrong, and holds the share to a goal. */
function share(part: string, isRight: (row: Row) => string | undefined): void {
  const rows = unseen[part]!;
  const wrong = rows.flatMap((row) => {
    const got = isRight(row);
    return got === undefined ? [] : [`${JSON.stringify(row)} read as ${got}`];
  });
  console.log(`      ${part}: ${rows.length - wrong.length} of ${rows.length}`);
  assert.ok(rows.length - wrong.length >= goal * rows.length, wrong.join('\n'));
}

describe('results, ways, steps and places that others wrote', () => {
  it('what a result asks for', () => {
    share('results', (row) => {
      const asks = asksOf(row['text']!, tables).length > 0;
      return asks === (row['asks'] !== 'nothing') ? undefined : JSON.stringify(asks);
    });
  });
  it('next steps', () => {
    share('steps', (row) => {
      const got = nextKind(row['text']!);
      return got === row['means'] ? undefined : got;
    });
  });
  it('whose result it is', () => {
    share('whose', ({ label, site, diagnosis, same }) => {
      const note = `visit: 2026-03-02\nprocedures:\n  - site: ${JSON.stringify(site)}\n    specimen: {label: ${JSON.stringify(label)}, result: {received: 2026-03-09, diagnosis: ${JSON.stringify(diagnosis)}}}\n`;
      const found = judgeBy('follow-up/result-of-another-site', note).length > 0;
      return found === (same === 'no') ? undefined : found ? 'another' : 'its own';
    });
  });
  it('ways of telling', () => {
    share('ways', (row) => {
      const got = wayOf(row.text!, tables);
      return got === row['means'] ? undefined : got;
    });
  });
});

import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';

const core = `
import { check } from './src/checks/index.ts';
import { readNote } from './src/note/read.ts';
import { referenceTables } from './src/practice/tables.ts';
const text = 'visit: 2026-03-02\\npatient: {id: C-1}\\nprocedures:\\n  - sitte: chin\\n    depth: mid dermis\\n';
const { findings, failures } = check(readNote(text), { tables: referenceTables, today: '2026-03-02' });
console.log(JSON.stringify({ codes: findings.map(({ code }) => code), failures: failures.length }));
`;

describe('the core', () => {
  const folder = mkdtempSync(join(tmpdir(), 'wheal-'));
  after(() => {
    rmSync(folder, { recursive: true });
  });

  it('runs where nothing may be made into code', async () => {
    const outfile = join(folder, 'core.mjs');
    await build({
      stdin: { contents: core, resolveDir: process.cwd(), loader: 'ts' },
      bundle: true,
      platform: 'neutral',
      mainFields: ['module', 'main'],
      format: 'esm',
      logLevel: 'error',
      outfile,
    });
    const refused = ['--disallow-code-generation-from-strings'];
    const told = execFileSync(process.execPath, [...refused, outfile], { encoding: 'utf8' });
    const { codes, failures } = JSON.parse(told) as { codes: string[]; failures: number };
    assert.ok(codes.includes('shape/unknown-key') && codes.includes('shape/missing-key'));
    assert.equal(failures, 0);
    assert.throws(() => execFileSync(process.execPath, [...refused, '-e', 'eval("1")'], { stdio: 'pipe' }));
  });

  it('has a validator that asks for nothing else and evaluates nothing', () => {
    const code = readFileSync('src/schema/generated/validators.js', 'utf8');
    assert.doesNotMatch(code, /\brequire\s*\(|\bimport\b|\beval\b|new Function/);
  });
});

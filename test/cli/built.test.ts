import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, type BuildOptions } from 'esbuild';
import { buildCoreFile } from '../../src/build/core-file.ts';
import { coreFile } from '../../src/cli/load-core.ts';
import { inLimit, overLimit } from './run.ts';

/** The command as a process of its own, bundled for this test, since dist/ may be old or missing. */
describe('the wheal command as a process', () => {
  const root = mkdtempSync(join(tmpdir(), 'wheal-built-'));
  const program = join(root, 'wheal.cjs');
  after(() => {
    rmSync(root, { recursive: true, force: true });
  });

  before(async () => {
    const options: BuildOptions = {
      bundle: true,
      platform: 'neutral',
      mainFields: ['module', 'main'],
      external: ['node:*'],
      format: 'cjs',
      logLevel: 'warning',
    };
    await build({ ...options, entryPoints: ['src/cli/wheal.ts'], outfile: program });
    await buildCoreFile(options, 'src/cli/main.ts', join(root, coreFile('wheal-core')));
    await buildCoreFile(options, 'src/cli/main-check.ts', join(root, coreFile('wheal-check')));
    writeFileSync(join(root, 'bad.wheal.yaml'), overLimit);
    writeFileSync(join(root, 'good.wheal.yaml'), inLimit);
  });

  const run = (
    argv: readonly string[],
    input = '',
  ): { status: number | null; stdout: string; stderr: string } =>
    spawnSync(process.execPath, [program, ...argv], { cwd: root, input, encoding: 'utf8' });

  it('answers with exit codes', () => {
    assert.equal(run(['check', 'bad.wheal.yaml']).status, 1);
    assert.equal(run(['check', 'missing']).status, 2);
    assert.equal(run(['--help']).status, 0);
    assert.equal(run([]).status, 2);
  });

  it('reads standard input, and stops reading what is too large for a note', () => {
    assert.equal(run(['check', '-'], overLimit).status, 1);
    const large = run(['check', '-', '--format', 'json'], 'a: b\n'.repeat(1_000_000));
    assert.equal(large.status, 1);
    assert.equal(
      (JSON.parse(large.stdout) as { files: { findings: unknown[] }[] }).files[0]?.findings.length,
      1,
    );
  });

  it('reads signs beyond ASCII: ×, ², µ and dashes', () => {
    const signs = inLimit.replace(/^( *- )site: .*$/m, '$&\n    size: 9×8 mm');
    assert.notEqual(signs, inLimit);
    const { stdout } = run(['check', '-', '--format', 'json'], signs);
    const found =
      (JSON.parse(stdout) as { files: { findings: { code: string }[] }[] }).files[0]?.findings ?? [];
    assert.deepEqual(
      found.filter(({ code }) => code.startsWith('quantity/')),
      [],
    );
    const asked = [
      'dose',
      '--agent',
      'lidocaine',
      '--concentration',
      '1%',
      '--weight',
      '62kg',
      '--format',
      'json',
    ];
    const dose = (epinephrine: string): unknown =>
      (JSON.parse(run([...asked, '--epinephrine', epinephrine]).stdout) as { maxMg: number }).maxMg;
    assert.equal(dose('10 µg/mL'), dose('1:100,000'));
  });

  it('uses no colors where nobody looks', () => {
    assert.ok(!run(['check', 'bad.wheal.yaml']).stdout.includes('\u001b'));
  });

  it('does not complain where the reader has read enough', () => {
    if (process.platform === 'win32') return;
    const command = `"${process.execPath}" "${program}" checks --format json | head -c 10`;
    const { stderr, stdout } = spawnSync('sh', ['-c', command], { cwd: root, encoding: 'utf8' });
    assert.equal(stdout.length, 10);
    assert.equal(stderr, '');
  });

  it('judges on the day of this machine where none is named', () => {
    const future = inLimit.replace('2026-03-02', '2999-03-02');
    assert.match(run(['check', '-'], future).stdout, /record\/date-in-future/);
  });

  it('never compiles text into code', () => {
    const { status, stderr } = spawnSync(
      process.execPath,
      ['--disallow-code-generation-from-strings', program, 'check', 'bad.wheal.yaml'],
      { cwd: root, encoding: 'utf8' },
    );
    assert.equal(stderr, '');
    assert.equal(status, 1);
  });
});

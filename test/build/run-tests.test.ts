import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..', '..');
const run = (...words: string[]): { status: number | null; stdout: string; stderr: string } =>
  spawnSync(process.execPath, words, { cwd: root, encoding: 'utf8' });

describe('running a part of the tests', () => {
  it('runs the named file, and prints how much CPU time it took', () => {
    const { status, stdout } = run('src/build/run-tests.mjs', 'test/note/tree/edit.test.ts');
    assert.equal(status, 0, stdout);
    assert.match(stdout, /\d passing[\s\S]*\d\.\d s of CPU/);
  });

  it('asks for a file where none is named', () => {
    const { status, stderr } = run('src/build/run-tests.mjs');
    assert.equal(status, 2);
    assert.match(stderr, /npm run test:one -- /);
  });
});

describe('the command from its sources', () => {
  it('is the command', () => {
    const words = ['dose', '--agent', 'lidocaine', '--concentration', '1%', '--weight', '62kg'];
    const { status, stdout } = run('--import', 'tsx', 'src/build/wheal.ts', ...words);
    assert.equal(status, 0);
    assert.match(stdout, /27\.9 mL/);
  });
});

import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inLimit, overLimit } from '../run.ts';
import { buildProgram } from './program.ts';

const page = readFileSync('docs/many-notes.md', 'utf8');

/** The commands that the page shows, in their order. */
const commands = [...page.matchAll(/^```sh\n([^]*?)^```$/gm)].map(([, command = '']) => command);
const commandWith = (words: string): string => {
  const found = commands.find((command) => command.includes(words));
  assert.ok(found !== undefined, `no command of the page has ${words}`);
  return found;
};

interface Line {
  readonly wheal: number;
  readonly record: string;
  readonly path: string;
}

describe('the page about many notes', () => {
  const root = mkdtempSync(join(tmpdir(), 'wheal-many-'));
  const env = { ...process.env, PATH: `${root}:${process.env['PATH'] ?? ''}`, HOME: root };
  const rooms = ['a', 'b', 'c d'];
  const namesIn = (room: string): readonly string[] =>
    Array.from({ length: 60 }, (_, at) => `records/${room}/${at}.wheal.yaml`);

  before(async () => {
    await buildProgram(root);
    // The page says npx, which here is the program of this test.
    const npx = `#!/bin/sh\nshift\nexec '${process.execPath}' '${join(root, 'wheal.cjs')}' "$@"\n`;
    writeFileSync(join(root, 'npx'), npx, { mode: 0o755 });
    mkdirSync(join(root, 'lists'));
    for (const room of rooms) {
      writeFileSync(join(root, 'lists', `${room}.txt`), namesIn(room).join('\n'));
      mkdirSync(join(root, 'records', room), { recursive: true });
      for (const [at, name] of namesIn(room).entries())
        writeFileSync(
          join(root, name),
          (room === 'b' && at === 7 ? overLimit : inLimit).replace('C-1', `C-${room}-${at}`),
        );
    }
  });
  after(() => {
    rmSync(root, { recursive: true, force: true });
  });

  function run(command: string): {
    readonly status: number | null;
    readonly stderr: string;
    readonly stdout: string;
  } {
    return spawnSync('bash', ['-c', `set -o pipefail\n${command}`], {
      cwd: root,
      env,
      encoding: 'utf8',
      maxBuffer: 64 * 1024 * 1024,
    });
  }

  const linesOf = (text: string): readonly Line[] =>
    text
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as Line);

  /** Whether there is GNU parallel; says so where there is none. */
  function hasParallel(): boolean {
    const { stdout, error } = spawnSync('parallel', ['--version'], { encoding: 'utf8', env });
    if (error === undefined && stdout.startsWith('GNU parallel')) return true;
    console.log('      GNU parallel is not installed (Debian: apt-get install parallel)');
    return false;
  }

  it('shows a list of names that comes from another program', function () {
    this.timeout(60_000);
    const { status, stdout } = run(commandWith('-print0 | npx'));
    assert.equal(status, 1);
    assert.equal(linesOf(stdout).filter(({ record }) => record === 'files').length, 180);
  });

  it('shows one job for each folder, whose output is that of one command over all', function () {
    this.timeout(60_000);
    if (!hasParallel()) return;
    const { status, stderr } = run(commandWith('> findings.ndjson'));
    assert.equal(status, 1, stderr);
    const joined = readFileSync(join(root, 'findings.ndjson'), 'utf8');
    const whole = run(
      `npx wheal check ${rooms.map((room) => `'records/${room}'`).join(' ')} --format ndjson`,
    );
    assert.equal(joined, whole.stdout);
    assert.equal(linesOf(joined).length, 180);
  });

  it('shows a list of names for each job', function () {
    this.timeout(60_000);
    if (!hasParallel()) return;
    const { status, stderr } = run(commandWith('> listed.ndjson'));
    assert.equal(status, 1, stderr);
    const lines = linesOf(readFileSync(join(root, 'listed.ndjson'), 'utf8'));
    assert.deepEqual(
      lines.map(({ path }) => path),
      rooms.flatMap(namesIn),
    );
  });

  it('names the records that each command writes', () => {
    const named = [...page.matchAll(/^\| `(\w+)` \| (.*) \|$/gm)].map(([, name = '', records = '']) => [
      name,
      [...records.matchAll(/`(\w+)`/g)].map(([, record]) => record),
    ]);
    assert.deepEqual(Object.fromEntries(named), {
      check: ['files'],
      open: ['items', 'notRead'],
      schedule: ['items', 'undated', 'notRead'],
      specimens: ['specimens', 'counts', 'notRead'],
      verify: ['files'],
    });
  });
});

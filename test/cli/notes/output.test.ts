import assert from 'node:assert/strict';
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { deliver } from '../../../src/cli/notes/output.ts';
import type { Console } from '../../../src/cli/terminal/console.ts';
import { folder } from '../run.ts';

const consoleIn = (cwd: string, more: Partial<Console> = {}): Console => ({
  write: () => undefined,
  error: () => undefined,
  color: false,
  errorIsTerminal: false,
  readInput: () => Promise.resolve(Buffer.alloc(0)),
  today: () => '2026-03-02',
  now: () => new Date('2026-03-02T10:05:00Z'),
  cwd,
  ...more,
});

describe('a document that is written into a file', () => {
  it('never takes the place of a file that has come meanwhile', async () => {
    const cwd = folder({ 'old.txt': 'of somebody else' });
    const path = join(cwd, 'new.txt');
    // It comes after the command has looked and before it writes.
    const racing = deliver('mine', 'new.txt', consoleIn(cwd));
    writeFileSync(path, 'of somebody else');
    await assert.rejects(racing, /has appeared meanwhile|exists and was left as it is/);
    assert.equal(readFileSync(path, 'utf8'), 'of somebody else');
    assert.deepEqual(readdirSync(cwd).sort(), ['.git', 'new.txt', 'old.txt']);
    await assert.rejects(deliver('mine', 'old.txt', consoleIn(cwd)), /exists/);
    await deliver('mine', 'old.txt', consoleIn(cwd, { ask: () => Promise.resolve(true) }));
    assert.equal(readFileSync(join(cwd, 'old.txt'), 'utf8'), 'mine');
  });

  it('takes away what a command that was killed outright has left, and nothing that is still written', async () => {
    const { pid: gone } = spawnSync(process.execPath, ['--version']);
    const other = spawn(process.execPath, ['-e', 'setTimeout(() => undefined, 60000)']);
    try {
      const cwd = folder({
        [`.a.txt.${gone}.tmp`]: 'half',
        [`.a.txt.${other.pid ?? 0}.tmp`]: 'of one that runs',
        '.a.txt.x.tmp': 'not ours',
        [`.b.txt.${gone}.tmp`]: 'of another file',
      });
      await deliver('whole', 'a.txt', consoleIn(cwd));
      assert.deepEqual(
        readdirSync(cwd).sort(),
        [`.a.txt.${other.pid ?? 0}.tmp`, '.a.txt.x.tmp', `.b.txt.${gone}.tmp`, '.git', 'a.txt'].sort(),
      );
    } finally {
      other.kill();
    }
  });

  it('is whole or not there, with nothing beside it, whenever the command is ended', function () {
    this.timeout(120_000);
    const cwd = folder({});
    const script = join(cwd, '.git', 'write.cjs');
    buildSync({
      stdin: {
        contents: driver,
        resolveDir: join(import.meta.dirname, '../../../src/cli/notes'),
        loader: 'ts',
      },
      ...{ bundle: true, platform: 'node', format: 'cjs', outfile: script, logLevel: 'silent' },
    });
    const path = join(cwd, 'a.txt');
    const run = (signal: string, at: number, end: string): number => {
      const {
        signal: by,
        status,
        stdout,
      } = spawnSync(process.execPath, [script, cwd, signal, String(at), end]);
      return by === null && status === 0 ? Number(stdout.toString()) : 0;
    };
    const calls = run('none', 0, 'before');
    assert.ok(calls >= 6, `${calls} calls`);
    for (const signal of ['SIGTERM', 'SIGKILL'])
      for (const end of ['before', 'after'])
        for (let at = 1; at <= calls; at += 1) {
          rmSync(path, { force: true });
          run(signal, at, end);
          if (signal === 'SIGKILL') {
            if (existsSync(path)) assert.equal(readFileSync(path, 'utf8'), whole);
            // What was killed outright can't tidy up: the next one does.
            rmSync(path, { force: true });
            run('none', 0, end);
          }
          assert.equal(readFileSync(path, 'utf8'), whole, `${signal} ${end} ${at}`);
          assert.deepEqual(readdirSync(cwd).sort(), ['.git', 'a.txt'], `${signal} ${end} ${at}`);
        }
  });
});

const whole = 'x'.repeat(100_000);

/** Writes a document and sends itself a signal before or after one of the calls by which it does; tells how many there are. */
const driver = `
  import fs from 'node:fs';
  import { deliver } from './output.ts';
  const [cwd, signal, at, end] = process.argv.slice(2);
  let calls = 0;
  const original = { ...fs };
  for (const name of Object.keys(original).filter((one) => one.endsWith('Sync')))
    fs[name] = (...given) => {
      calls += 1;
      const isIt = calls === Number(at);
      if (isIt && end === 'before') process.kill(process.pid, signal);
      try {
        return original[name](...given);
      } finally {
        if (isIt && end === 'after') process.kill(process.pid, signal);
      }
    };
  void deliver('x'.repeat(100_000), 'a.txt', { cwd, write: () => undefined }).then(() => {
    const done = calls;
    original.writeSync(1, String(done));
  });
`;

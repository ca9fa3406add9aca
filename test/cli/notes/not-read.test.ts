import assert from 'node:assert/strict';
import { mkdirSync, rmdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { folder, inLimit, wheal } from '../run.ts';

describe('a list over a folder', () => {
  const files = {
    'a.wheal.yaml': inLimit,
    'b.wheal.yaml': '- no note\n',
    'c.wheal.yaml': new Uint8Array([0, 1]),
  };

  for (const command of ['open', 'schedule', 'specimens'])
    it(`says how many notes it left out and why: ${command}`, async () => {
      const cwd = folder(files);
      const { code, out } = await wheal([command, '.'], { cwd });
      assert.equal(code, 1);
      assert.match(
        out,
        /^Not looked at in full: 2 files\.\n {2}b\.wheal\.yaml: .*no note.*\n {2}c\.wheal\.yaml: .*binary/m,
      );
      const json = JSON.parse((await wheal([command, '.', '--format', 'json'], { cwd })).out) as {
        notRead: readonly { note: string; why: string }[];
      };
      assert.deepEqual(
        json.notRead.map(({ note }) => note),
        ['b.wheal.yaml', 'c.wheal.yaml'],
      );
    });

  it('says nothing of it where all were read', async () => {
    const cwd = folder({ 'a.wheal.yaml': inLimit });
    for (const command of ['open', 'schedule', 'specimens', 'check'])
      assert.doesNotMatch((await wheal([command, '.'], { cwd })).out, /Not looked at|could not be read/);
  });

  it('counts them in the last line of check', async () => {
    const { out } = await wheal(['check', '.'], { cwd: folder(files) });
    assert.match(out, /2 notes could not be read: b\.wheal\.yaml, c\.wheal\.yaml\. Dose not judged/);
  });

  it('names links that lead nowhere, folders that cannot be entered, and reads names in capitals', async () => {
    const cwd = folder({ 'a.wheal.yaml': inLimit, 'B.WHEAL.YAML': inLimit, 'notes.txt': '' });
    symlinkSync('gone', join(cwd, 'archive'));
    symlinkSync('gone.txt', join(cwd, 'other.txt'));
    symlinkSync('round', join(cwd, 'round'));
    const names = ['archive', 'round'];
    for (const command of ['open', 'schedule', 'specimens'])
      for (const format of ['json', 'ndjson', 'text']) {
        const { code, out } = await wheal([command, '.', '--format', format], { cwd });
        assert.equal(code, 1, `${command} ${format}`);
        for (const name of names) assert.match(out, new RegExp(`${name}\\b`), `${command} ${format}`);
        if (format === 'json' && command === 'open') assert.match(out, /B\.WHEAL\.YAML/);
        assert.doesNotMatch(out, /other\.txt|notes\.txt/);
      }
    for (const format of ['text', 'json', 'ndjson', 'sarif']) {
      const { code, out } = await wheal(['check', '.', '--format', format], { cwd });
      assert.equal(code, 1, format);
      for (const name of names) assert.match(out, new RegExp(`${name}\\b`), format);
    }
  });

  it('names a path that is too long', async () => {
    const cwd = folder({ 'a.wheal.yaml': inLimit });
    const [name, depth] = ['d'.repeat(250), 18];
    const before = process.cwd();
    // No system takes the whole path at once: it is made, and taken away, step by step.
    const walk = (step: () => void): void => {
      process.chdir(cwd);
      for (let at = 0; at < depth; at++) {
        step();
        process.chdir(name);
      }
    };
    try {
      walk(() => {
        mkdirSync(name);
      });
      const { code, out } = await wheal(['check', '.', '--format', 'json'], { cwd });
      assert.equal(code, 1);
      assert.match(out, /path is too long/);
    } finally {
      walk(() => undefined);
      for (let at = 0; at < depth; at++) {
        process.chdir('..');
        rmdirSync(name);
      }
      process.chdir(before);
    }
  });
});

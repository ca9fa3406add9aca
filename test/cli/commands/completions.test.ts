import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { commands } from '../../../src/cli/entry/main.ts';
import { optionsOf } from '../../../src/cli/options/help.ts';
import { folder, wheal } from '../run.ts';

describe('wheal completions', () => {
  /** What bash completes the last of some words to. */
  async function bash(words: readonly string[]): Promise<readonly string[]> {
    const { out } = await wheal(['completions', 'bash']);
    const line = words.map((word) => `'${word}'`).join(' ');
    const asked = `${out}\nCOMP_WORDS=(${line}); COMP_CWORD=${words.length - 1}; _wheal; printf '%s\\n' "\${COMPREPLY[@]}"`;
    const { status, stdout, stderr } = spawnSync('bash', ['-c', asked], { encoding: 'utf8' });
    assert.deepEqual([status, stderr], [0, '']);
    return stdout.split('\n').filter((word) => word !== '');
  }

  it('completes commands, options and their values in bash', async () => {
    assert.deepEqual((await bash(['wheal', ''])).toSorted(), [...commands.keys()].sort());
    assert.deepEqual(await bash(['wheal', 'su']), ['summary']);
    assert.deepEqual(await bash(['wheal', 'check', '--as']), ['--as-of']);
    assert.deepEqual(await bash(['wheal', 'check', '--format', 'nd']), ['ndjson']);
    assert.deepEqual(await bash(['wheal', 'handout', '--language', '']), ['en', 'es']);
    assert.deepEqual(await bash(['wheal', 'check', 'a']), []);
  });

  /** What a shell prints that was told to run something after its completions; undefined, with the reason, where it is not there. */
  async function inShell(shell: string, ...argv: readonly string[]): Promise<string | undefined> {
    const cwd = folder({});
    await wheal(['completions', shell, '--out', 'completions'], { cwd });
    const { error, status, stdout, stderr } = spawnSync(shell, argv, { cwd, encoding: 'utf8' });
    if (error !== undefined) {
      console.log(`      ${shell} is not installed (Debian: apt-get install ${shell})`);
      return undefined;
    }
    assert.deepEqual([status, stderr], [0, ''], shell);
    return stdout;
  }

  it('completes commands, options and their values in fish, where it is installed', async () => {
    for (const [typed, words] of Object.entries({
      'wheal su': ['summary'],
      'wheal check --as': ['--as-of'],
      'wheal check --format nd': ['ndjson'],
      'wheal handout --language ': ['en', 'es'],
    })) {
      const out = await inShell('fish', '--no-config', '-c', `source completions; complete -C "${typed}"`);
      const found = out
        ?.trimEnd()
        .split('\n')
        .map((line) => line.split('\t')[0]);
      if (found !== undefined) assert.deepEqual(found, words, typed);
    }
  });

  it('is a file that zsh can read, where it is installed', async () => {
    const out = await inShell('zsh', '-f', '-n', 'completions');
    if (out !== undefined) assert.equal(out, '');
  });

  for (const shell of ['bash', 'zsh', 'fish'])
    it(`names every command and every option for ${shell}`, async () => {
      const { code, out } = await wheal(['completions', shell]);
      assert.equal(code, 0);
      for (const [name, command] of commands) {
        assert.ok(out.includes(name), name);
        for (const option of optionsOf(command)) assert.ok(out.includes(option.name), option.name);
      }
    });

  it('answers 2 for any other shell', async () => {
    for (const shell of [[], ['csh'], ['constructor'], ['bash', 'zsh']])
      assert.equal((await wheal(['completions', ...shell])).code, 2);
  });
});

describe('wheal man', () => {
  it('is a page without a fault for groff, with every command and option', async () => {
    const cwd = folder({});
    await wheal(['man', '--out', 'wheal.1'], { cwd });
    const { status, stdout, stderr, error } = spawnSync(
      'groff',
      ['-man', '-Tutf8', '-ww', '-Kutf8', join(cwd, 'wheal.1')],
      { encoding: 'utf8' },
    );
    assert.ok(error === undefined, 'groff is missing: install the Debian package groff-base');
    assert.deepEqual([status, stderr], [0, '']);
    // It prints bold and underlined letters over each other.
    const text = stdout
      .split('\b')
      .map((part, at, all) => (at < all.length - 1 ? part.slice(0, -1) : part))
      .join('')
      .replace(/[‐−]\n\s+/g, '')
      .replace(/[‐−]/g, '-');
    for (const [name, command] of commands) {
      assert.ok(text.includes(`wheal ${name}`), name);
      for (const option of optionsOf(command)) assert.ok(text.includes(`--${option.name}`), option.name);
    }
  });
});

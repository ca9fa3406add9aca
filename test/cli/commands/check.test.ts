import assert from 'node:assert/strict';
import { chmodSync, mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { folder, inLimit, overLimit, wheal } from '../run.ts';

interface File {
  readonly path: string;
  readonly kind?: string;
  readonly practice?: string;
  readonly findings: readonly {
    readonly code: string;
    readonly severity: string;
    readonly message: string;
    readonly range: {
      readonly start: { line: number; character: number };
      readonly end: { line: number; character: number };
    };
  }[];
  readonly dose: { readonly judged: boolean; readonly fraction: number | null } | null;
}

const filesIn = (out: string): readonly File[] => (JSON.parse(out) as { files: readonly File[] }).files;

async function checkJson(
  argv: readonly string[],
  cwd: string,
  input?: string | Uint8Array,
): Promise<{ code: number; files: readonly File[] }> {
  const { code, out, err } = await wheal(['check', ...argv, '--format', 'json'], {
    cwd,
    ...(input === undefined ? {} : { input }),
  });
  assert.equal(err, '');
  return { code, files: filesIn(out) };
}

describe('wheal check', () => {
  it('answers 1 for a note with an error, with exact ranges in JSON', async () => {
    const cwd = folder({ 'a.wheal.yaml': overLimit });
    const { code, files } = await checkJson(['a.wheal.yaml'], cwd);
    assert.equal(code, 1);
    assert.equal(files[0]?.path, 'a.wheal.yaml');
    const finding = files[0].findings.find((one) => one.code === 'dose/over-limit');
    assert.equal(finding?.severity, 'error');
    assert.deepEqual(finding.range, { start: { line: 8, character: 54 }, end: { line: 8, character: 59 } });
    assert.ok((files[0].dose?.fraction ?? 0) > 1.4);
  });

  it('takes a folder as every note below it, in the order of names, without names that begin with a dot', async () => {
    const cwd = folder({
      'b.wheal.yaml': inLimit,
      'deep/er/a.wheal.yaml': inLimit,
      'a.wheal.yaml': inLimit,
      'node_modules/x/c.wheal.yaml': inLimit,
      '.c.wheal.yaml': inLimit,
      '.git/d.wheal.yaml': inLimit,
      '.history/a.wheal.yaml': inLimit,
      'other.yaml': inLimit,
    });
    const { files } = await checkJson(['.'], cwd);
    assert.deepEqual(
      files.map(({ path }) => path),
      [
        'a.wheal.yaml',
        'b.wheal.yaml',
        join('deep', 'er', 'a.wheal.yaml'),
        join('node_modules', 'x', 'c.wheal.yaml'),
      ],
    );
    const named = await checkJson(['.history', '.c.wheal.yaml'], cwd);
    assert.deepEqual(
      named.files.map(({ path }) => path),
      [join('.history', 'a.wheal.yaml'), '.c.wheal.yaml'],
    );
  });

  it('follows links, but not in circles, and checks each file once', async () => {
    const cwd = folder({ 'notes/a.wheal.yaml': inLimit });
    symlinkSync(join(cwd, 'notes'), join(cwd, 'notes', 'again'));
    symlinkSync(cwd, join(cwd, 'notes', 'up'));
    const { files } = await checkJson(['notes', 'notes/a.wheal.yaml', 'notes'], cwd);
    assert.deepEqual(
      files.map(({ path }) => path),
      [join('notes', 'a.wheal.yaml')],
    );
  });

  it('reads one note from standard input', async () => {
    const { code, files } = await checkJson(['-'], folder({}), overLimit);
    assert.equal(code, 1);
    assert.equal(files[0]?.path, '-');
  });

  const cannotBeRead: Readonly<Record<string, (cwd: string) => void>> = {
    'a folder with the name of a note': (cwd) => {
      mkdirSync(join(cwd, 'x.wheal.yaml'));
    },
    'a link that leads nowhere': (cwd) => {
      symlinkSync(join(cwd, 'nothing'), join(cwd, 'x.wheal.yaml'));
    },
    'a link to itself': (cwd) => {
      symlinkSync(join(cwd, 'x.wheal.yaml'), join(cwd, 'x.wheal.yaml'));
    },
  };
  for (const [name, make] of Object.entries(cannotBeRead)) {
    it(`reports ${name} as a finding of that file, beside the others`, async () => {
      const cwd = folder({ 'a.wheal.yaml': inLimit });
      make(cwd);
      const { code, files } = await checkJson(['.'], cwd);
      assert.equal(code, 1);
      assert.deepEqual(
        files.map(({ path }) => path),
        ['a.wheal.yaml', 'x.wheal.yaml'],
      );
      assert.deepEqual(
        files[1]?.findings.map(({ code, severity }) => [code, severity]),
        [['yaml/unreadable', 'error']],
      );
      assert.deepEqual(files[1].findings[0]?.range, {
        start: { line: 0, character: 0 },
        end: { line: 0, character: 0 },
      });
      assert.equal(files[1].dose, null);
    });
  }

  const badContents: Readonly<Record<string, [Uint8Array, RegExp]>> = {
    'a binary file': [Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 1]), /binary/],
    'broken UTF-8': [Buffer.concat([Buffer.from('wheal: 1 # '), Uint8Array.from([0xc3, 0x28])]), /not UTF-8/],
    'UTF-16': [Buffer.from('\ufeffwheal: 1', 'utf16le'), /not UTF-8/],
    '50 MB': [Buffer.alloc(50 * 1024 * 1024, 'a: b\n'), /larger than a note can be \(512 KiB\)/],
  };
  for (const [name, [bytes, words]] of Object.entries(badContents)) {
    it(`refuses ${name} with one clear message, from a file and from standard input`, async () => {
      const cwd = folder({ 'x.wheal.yaml': bytes });
      for (const { code, files } of [
        await checkJson(['x.wheal.yaml'], cwd),
        await checkJson(['-'], cwd, bytes),
      ]) {
        assert.equal(code, 1);
        assert.equal(files[0]?.findings.length, 1);
        assert.match(files[0].findings[0]?.message ?? '', words);
        assert.equal(files[0].dose, null);
      }
    });
  }

  it('keeps a file that it may not read from hiding the others', async function () {
    // Whoever may read everything can't be refused.
    const mayAll = process.getuid?.() === 0 || process.platform === 'win32';
    const cwd = folder({ 'a.wheal.yaml': inLimit, 'x.wheal.yaml': inLimit });
    chmodSync(join(cwd, 'x.wheal.yaml'), 0o000);
    const { files } = await checkJson(['.'], cwd);
    assert.equal(files.length, 2);
    assert.equal(files[1]?.findings[0]?.code === 'yaml/unreadable', !mayAll);
  });

  const nothing: Readonly<Record<string, [readonly string[], RegExp]>> = {
    'no path': [['check'], /needs a path/],
    'a path that is not there': [['check', 'missing'], /no file or folder missing/],
    'a folder without notes': [['check', 'empty'], /no note/],
    'a folder with nothing but a practice file': [['check', 'office'], /no note/],
    'an unknown format': [['check', 'empty', '--format', 'xml'], /text, json, ndjson, sarif/],
    'an unknown option': [['check', 'empty', '--colour', 'x'], /--colour/],
    'a day that does not exist': [['check', 'empty', '--as-of', '2026-02-30'], /2026-02-30/],
    'a day that is no date': [['check', 'empty', '--as-of', 'today'], /today/],
    'no command': [[], /wheal --help/],
    'an unknown command': [['chekc'], /chekc/],
    'a command with the name of a property': [['constructor'], /constructor/],
  };
  for (const [name, [argv, words]] of Object.entries(nothing)) {
    it(`answers 2 and one line on standard error for ${name}`, async () => {
      const cwd = folder({ 'empty/other.txt': '', 'office/practice.wheal.yaml': 'wheal: 1\n' });
      const { code, out, err } = await wheal(argv, { cwd });
      assert.equal(code, 2);
      assert.equal(out, '');
      assert.match(err, /^wheal: [^\n]+\n$/);
      assert.match(err, words);
    });
  }

  it('lays the nearest practice file upwards under a note, as far as the repository goes', async () => {
    const cwd = folder({
      'practice.wheal.yaml': 'wheal: 1\nname: Example Dermatology\n',
      'a.wheal.yaml': inLimit,
      'room/practice.wheal.yaml': 'wheal: 1\n',
      'room/b.wheal.yaml': inLimit,
      'inner/.git/keep': '',
      'inner/c.wheal.yaml': inLimit,
    });
    const { files } = await checkJson(['.'], cwd);
    assert.deepEqual(
      files.map(({ path, kind, practice }) => [path, kind, practice]),
      [
        ['a.wheal.yaml', undefined, 'practice.wheal.yaml'],
        [join('inner', 'c.wheal.yaml'), undefined, undefined],
        ['practice.wheal.yaml', 'practice', undefined],
        [join('room', 'b.wheal.yaml'), undefined, join('room', 'practice.wheal.yaml')],
        [join('room', 'practice.wheal.yaml'), 'practice', undefined],
      ],
    );
    const alone = await checkJson(['-'], join(cwd, 'room'), inLimit);
    assert.deepEqual(
      alone.files.map(({ practice }) => practice),
      ['practice.wheal.yaml'],
    );
  });

  it('reports a practice file that was used and can not be read, named or not', async () => {
    const cwd = folder({
      'practice.wheal.yaml': Uint8Array.from([0xff, 0xfe, 0]),
      'notes/a.wheal.yaml': inLimit,
    });
    const { code, files } = await checkJson(['notes'], cwd);
    assert.equal(code, 1);
    assert.deepEqual(
      files.map(({ path }) => path),
      [join('notes', 'a.wheal.yaml'), 'practice.wheal.yaml'],
    );
  });

  it('reports the faults of a practice file in a folder as a file of its own', async () => {
    const cwd = folder({
      'practice.wheal.yaml': 'wheal: 1\nauthority: US perscribing information\n',
      'a.wheal.yaml': inLimit,
    });
    const { files } = await checkJson(['.'], cwd);
    assert.deepEqual(
      files[1]?.findings.map(({ code, range }) => [code, range.start]),
      [['practice/unknown-authority', { line: 1, character: 11 }]],
    );
    assert.equal(files[1].dose, null);
  });

  it('says how far it is only on a terminal and only for many files', async () => {
    const many = Object.fromEntries(Array.from({ length: 60 }, (_, at) => [`${at}.wheal.yaml`, inLimit]));
    const cwd = folder(many);
    assert.match((await wheal(['check', '.'], { cwd, errorIsTerminal: true })).err, /25 of 60/);
    assert.equal((await wheal(['check', '.'], { cwd })).err, '');
    assert.equal((await wheal(['check', '1.wheal.yaml'], { cwd, errorIsTerminal: true })).err, '');
  });
});

describe('wheal', () => {
  it('answers --help and --version with every command', async () => {
    const { out } = await wheal(['--help']);
    for (const [, name = ''] of out.matchAll(/^ {2}wheal (\w+)/gm)) {
      const help = await wheal([name, '--help']);
      assert.equal(help.code, 0);
      assert.match(help.out, new RegExp(`^wheal ${name}`));
      assert.equal((await wheal([name, '--version'])).out, (await wheal(['--version'])).out);
    }
    assert.match(out, /wheal check /);
  });

  it('lists the catalogue with sources and how they were verified', async () => {
    const { code, out } = await wheal(['checks', '--format', 'json']);
    const { checks } = JSON.parse(out) as {
      checks: {
        code: string;
        severity: string;
        title: string;
        sources: { citation: string; mark: string }[];
      }[];
    };
    assert.equal(code, 0);
    const over = checks.find((one) => one.code === 'dose/over-limit');
    assert.equal(over?.severity, 'error');
    assert.ok((over.sources[0]?.citation ?? '').length > 10);
    const text = (await wheal(['checks'])).out;
    for (const { code: name, title } of checks) assert.ok(text.includes(name) && text.includes(title), name);
  });
});

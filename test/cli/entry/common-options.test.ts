import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { wantsColor } from '../../../src/cli/terminal/color.ts';
import { commands } from '../../../src/cli/entry/main.ts';
import { folder, inLimit, overLimit, wheal } from '../run.ts';

const asked = ['--agent', 'lidocaine', '--concentration', '1%', '--weight', '62kg'];
/** One line of each command that writes. */
const lines: Readonly<Record<string, readonly string[]>> = {
  check: ['a.wheal.yaml'],
  draft: ['dictated.txt'],
  summary: ['a.wheal.yaml'],
  handout: ['a.wheal.yaml'],
  schedule: ['a.wheal.yaml'],
  open: ['a.wheal.yaml'],
  dose: asked,
  requisition: ['specimen.wheal.yaml'],
  specimens: ['a.wheal.yaml'],
  checks: [],
  completions: ['bash'],
  man: [],
  verify: ['signed.wheal.yaml'],
};

const files = (): Readonly<Record<string, string>> => ({
  'a.wheal.yaml': inLimit,
  'dictated.txt': 'Punch biopsy of the left upper back, 1 mL lidocaine 1%.\n',
  'specimen.wheal.yaml': `${inLimit}    specimen: {label: A, medium: formalin}\n`,
  'signed.wheal.yaml': `${inLimit}signed:\n  format: 2\n  by: K.O.\n`,
});

describe('--out and --force', () => {
  for (const [name, argv] of Object.entries(lines))
    it(`wheal ${name} writes the same into a file as on the screen`, async () => {
      const cwd = folder(files());
      const shown = await wheal([name, ...argv], { cwd });
      assert.ok(shown.out.length > 10, shown.err);
      const written = await wheal([name, ...argv, '--out', 'x.txt'], { cwd, color: true });
      assert.deepEqual([written.code, written.out], [shown.code, '']);
      assert.equal(readFileSync(join(cwd, 'x.txt'), 'utf8'), shown.out);
      const again = await wheal([name, ...argv, '--out', 'x.txt'], { cwd });
      assert.equal(again.code, 2);
      assert.match(again.err, /x\.txt exists and was left as it is.*--force/);
      const forced = await wheal([name, ...argv, '--out', 'x.txt', '--force'], { cwd });
      assert.equal(forced.code, shown.code, forced.err);
    });

  it('every command that has --out is among these', () => {
    const writing = [...commands].filter(([, { options }]) => options.some((one) => one.name === 'out'));
    assert.deepEqual(writing.map(([name]) => name).sort(), Object.keys(lines).sort());
  });

  it('never replaces a note, even with --force', async () => {
    const cwd = folder({ 'a.wheal.yaml': inLimit, 'practice.wheal.yaml': 'wheal: 1\n' });
    for (const name of ['a.wheal.yaml', 'practice.wheal.yaml']) {
      const { code, err } = await wheal(['summary', 'a.wheal.yaml', '--out', name, '--force'], { cwd });
      assert.equal(code, 2);
      assert.match(err, /never replaced/);
    }
    assert.equal(readFileSync(join(cwd, 'a.wheal.yaml'), 'utf8'), inLimit);
  });

  it('wants --out with --force', async () => {
    const { code, err } = await wheal(['checks', '--force']);
    assert.equal(code, 2);
    assert.match(err, /--force goes with --out/);
  });
});

interface Entry {
  readonly path: string;
  readonly practice?: string;
  readonly findings: readonly { readonly code: string }[];
}

const entriesIn = (out: string): readonly Entry[] => (JSON.parse(out) as { files: readonly Entry[] }).files;

describe('--stdin-filename', () => {
  it('reports standard input by a name, under the practice file above it, whether - is said or not', async () => {
    const cwd = folder({ 'room/practice.wheal.yaml': 'wheal: 1\n' });
    const name = join('room', 'new.wheal.yaml');
    for (const dash of [['-'], []]) {
      const { code, out } = await wheal(['check', ...dash, '--stdin-filename', name, '--format', 'json'], {
        cwd,
        input: overLimit,
      });
      assert.equal(code, 1);
      assert.deepEqual(
        entriesIn(out).map(({ path, practice }) => [path, practice]),
        [[name, join('room', 'practice.wheal.yaml')]],
      );
    }
    for (const command of ['summary', 'handout', 'schedule', 'open', 'specimens'])
      assert.match(
        (await wheal([command, '-', '--stdin-filename', name], { cwd, input: inLimit })).out,
        /\w/,
      );
  });

  it('takes the place of the file of that name, also where notes of a day are counted together', async () => {
    const half = inLimit.replaceAll('1 mL', '10 mL');
    const cwd = folder({ 'a.wheal.yaml': inLimit, 'b.wheal.yaml': half });
    const { out } = await wheal(['check', '.', '-', '--stdin-filename', 'a.wheal.yaml', '--format', 'json'], {
      cwd,
      input: half,
    });
    const entries = entriesIn(out);
    assert.deepEqual(
      entries.map(({ path }) => path),
      ['a.wheal.yaml', 'b.wheal.yaml'],
    );
    for (const { path, findings } of entries)
      assert.ok(
        findings.some(({ code }) => code.startsWith('dose/')),
        path,
      );
    assert.equal((await wheal(['check', '.'], { cwd })).code, 0);
  });

  for (const [line, says] of [
    ['check a.wheal.yaml --stdin-filename b.wheal.yaml', /no - among the paths/],
    ['check - --stdin-filename practice.wheal.yaml', /name of a note/],
    ['check --files-from - --stdin-filename b.wheal.yaml', /either a list of files or a note/],
  ] as const)
    it(`answers 2 for wheal ${line}`, async () => {
      const { code, err } = await wheal(line.split(' '), { cwd: folder({ 'a.wheal.yaml': inLimit }) });
      assert.equal(code, 2);
      assert.match(err, says);
    });
});

describe('--files-from', () => {
  const pathsIn = async (argv: readonly string[], cwd: string, input = ''): Promise<readonly string[]> =>
    entriesIn((await wheal(['check', ...argv, '--format', 'json'], { cwd, input })).out).map(
      ({ path }) => path,
    );

  it('reads paths from a file or from standard input, one a line or each ended by a NUL', async () => {
    const cwd = folder({
      'a.wheal.yaml': inLimit,
      'b c.wheal.yaml': inLimit,
      'list.txt': 'b c.wheal.yaml\r\n\na.wheal.yaml\n',
      'nul.txt': 'b c.wheal.yaml\0a.wheal.yaml\0',
    });
    const both = ['b c.wheal.yaml', 'a.wheal.yaml'];
    assert.deepEqual(await pathsIn(['--files-from', 'list.txt'], cwd), both);
    assert.deepEqual(await pathsIn(['--files-from', 'nul.txt'], cwd), both);
    assert.deepEqual(await pathsIn(['--files-from', '-'], cwd, both.join('\n')), both);
    assert.deepEqual(await pathsIn(['a.wheal.yaml', '--files-from', 'list.txt'], cwd), both.toReversed());
  });

  it('answers 2 for a list that is missing or empty, and for a name in it that is not there', async () => {
    const cwd = folder({ 'empty.txt': '\n', 'wrong.txt': 'missing.wheal.yaml\n' });
    for (const [list, says] of [
      ['none.txt', /none\.txt can't be read/],
      ['empty.txt', /no name in the list/],
      ['wrong.txt', /no file or folder missing/],
    ] as const) {
      const { code, err } = await wheal(['open', '--files-from', list], { cwd });
      assert.equal(code, 2);
      assert.match(err, says);
    }
  });
});

describe('--quiet', () => {
  it('leaves out progress, the count at the end, and remarks, but no finding and no fault', async () => {
    const many = Object.fromEntries(Array.from({ length: 60 }, (_, at) => [`${at}.wheal.yaml`, inLimit]));
    const cwd = folder({ ...many, 'bad.wheal.yaml': overLimit });
    const loud = await wheal(['check', '.'], { cwd });
    const quiet = await wheal(['check', '.', '--quiet'], { cwd, errorIsTerminal: true });
    assert.deepEqual([quiet.code, quiet.err], [1, '']);
    assert.ok(loud.out.startsWith(quiet.out) && quiet.out.includes('dose/over-limit'));
    assert.ok(!quiet.out.includes('61 notes'));
    assert.notEqual((await wheal(['handout', 'bad.wheal.yaml'], { cwd })).err, '');
    assert.equal((await wheal(['handout', 'bad.wheal.yaml', '--quiet'], { cwd })).err, '');
    assert.match((await wheal(['check', 'missing', '--quiet'], { cwd })).err, /missing/);
  });
});

describe('--format ndjson', () => {
  it('gives the records of the JSON, each in a line of its own with the version of the format', async () => {
    const cwd = folder({
      'a.wheal.yaml': `${inLimit}    specimen: {label: A, medium: formalin}\n`,
      'b.wheal.yaml': overLimit,
      'c.wheal.yaml': '- a\n',
    });
    for (const [name, lists] of [
      ['check', ['files']],
      ['open', ['items', 'notRead']],
      ['schedule', ['items', 'undated', 'notRead']],
      ['specimens', ['specimens', 'notRead']],
    ] as const) {
      const whole = await wheal([name, '.', '--format', 'json'], { cwd });
      const lines = await wheal([name, '.', '--format', 'ndjson'], { cwd });
      assert.equal(lines.code, whole.code);
      const all = JSON.parse(whole.out) as Readonly<Record<string, readonly object[]>>;
      const records = lines.out
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line) as Readonly<Record<string, unknown>>);
      for (const list of lists) {
        const own = records.filter(({ record }) => record === list);
        assert.equal(own.length, all[list]?.length, `${name} ${list}`);
        for (const [at, record] of own.entries()) {
          assert.equal(record['wheal'], 1);
          for (const [key, value] of Object.entries(all[list]?.[at] ?? {}))
            assert.deepEqual(record[key], value, `${name} ${key}`);
        }
      }
    }
  });
});

describe('--csv-bom and --csv-text-ids', () => {
  it('are for tables', async () => {
    const cwd = folder({ 'a.wheal.yaml': `${inLimit}    specimen: {label: A, medium: formalin}\n` });
    for (const name of ['open', 'specimens']) {
      const argv = [name, '.', '--csv-bom', '--csv-text-ids'];
      const { out } = await wheal([...argv, '--format', 'csv'], { cwd });
      assert.ok(out.startsWith('\ufeff') && out.includes('"=""C-1"""'), out);
      assert.equal((await wheal(argv, { cwd })).code, 2);
    }
  });
});

describe('colors', () => {
  it('are written to a terminal, unless NO_COLOR says no or FORCE_COLOR yes', () => {
    const wants = (environment: Readonly<Record<string, string>>, terminal: boolean): boolean =>
      wantsColor(environment, () => terminal);
    assert.equal(wants({}, true), true);
    assert.equal(wants({}, false), false);
    assert.equal(wants({ NO_COLOR: '1' }, true), false);
    assert.equal(wants({ NO_COLOR: '' }, true), true);
    assert.equal(wants({ TERM: 'dumb' }, true), false);
    assert.equal(wants({ FORCE_COLOR: '1' }, false), true);
    assert.equal(wants({ FORCE_COLOR: '1', NO_COLOR: '1' }, false), true);
    assert.equal(wants({ FORCE_COLOR: '0' }, true), false);
  });
});

describe('what --out leaves', () => {
  it('is the file alone', async () => {
    const cwd = folder({ 'a.wheal.yaml': inLimit });
    await wheal(['check', '.', '--out', 'x.txt'], { cwd });
    assert.deepEqual(readdirSync(cwd).sort(), ['.git', 'a.wheal.yaml', 'x.txt']);
  });
});

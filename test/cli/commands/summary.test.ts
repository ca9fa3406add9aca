import assert from 'node:assert/strict';
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { folder, inLimit, overLimit, wheal } from '../run.ts';

describe('wheal summary', () => {
  it('writes the summary and answers whether the note has errors', async () => {
    const cwd = folder({ 'bad.wheal.yaml': overLimit });
    const bad = await wheal(['summary', 'bad.wheal.yaml'], { cwd });
    assert.equal(bad.code, 1);
    assert.match(bad.out, /C-1/);
    assert.equal(bad.err, '');
  });

  it('reads standard input', async () => {
    const { out } = await wheal(['summary', '-', '--format', 'json'], { cwd: folder({}), input: inLimit });
    assert.equal((JSON.parse(out) as { readable: boolean }).readable, true);
  });

  it('names the practice file that was used', async () => {
    const cwd = folder({ 'practice.wheal.yaml': 'wheal: 1\n', 'a.wheal.yaml': inLimit });
    assert.match((await wheal(['summary', 'a.wheal.yaml'], { cwd })).out, /practice\.wheal\.yaml/);
  });

  it('says who approved following what is open less closely', async () => {
    const cwd = folder({
      'practice.wheal.yaml':
        'overdue: {result: 200}\nfollow-up-approved: {by: K.O., on: 2026-01-05, reason: invented}\n',
      'a.wheal.yaml': inLimit,
    });
    for (const format of ['text', 'markdown', 'html', 'json'])
      assert.match(
        (await wheal(['summary', 'a.wheal.yaml', '--format', format], { cwd })).out,
        /200 working days \(usual: 10 working days\); approved by K\.O\. on 2026-01-05/,
        format,
      );
  });

  it('writes a file whole, leaving nothing else behind', async () => {
    const cwd = folder({ 'a.wheal.yaml': inLimit });
    const shown = await wheal(['summary', 'a.wheal.yaml', '--format', 'html'], { cwd });
    const { out } = await wheal(['summary', 'a.wheal.yaml', '--format', 'html', '--out', 'a.html'], { cwd });
    assert.equal(out, '');
    assert.equal(readFileSync(join(cwd, 'a.html'), 'utf8'), shown.out);
    assert.deepEqual(readdirSync(cwd).sort(), ['.git', 'a.html', 'a.wheal.yaml']);
  });

  it('never replaces a file without asking', async () => {
    const cwd = folder({ 'a.wheal.yaml': inLimit, 'a.txt': 'kept' });
    const argv = ['summary', 'a.wheal.yaml', '--out', 'a.txt'];
    const refused = await wheal(argv, { cwd });
    assert.equal(refused.code, 2);
    assert.match(refused.err, /^wheal: a\.txt exists[^\n]*\n$/);
    assert.equal((await wheal(argv, { cwd, ask: () => Promise.resolve(false) })).code, 2);
    assert.equal(readFileSync(join(cwd, 'a.txt'), 'utf8'), 'kept');
    let question = '';
    await wheal(argv, {
      cwd,
      ask: (text) => {
        question = text;
        return Promise.resolve(true);
      },
    });
    assert.match(question, /a\.txt/);
    assert.match(readFileSync(join(cwd, 'a.txt'), 'utf8'), /C-1/);
  });

  it('leaves nothing behind where it can not write', async () => {
    const cwd = folder({ 'a.wheal.yaml': inLimit });
    mkdirSync(join(cwd, 'out'));
    for (const out of ['out', 'missing/a.txt', 'a.wheal.yaml/x.txt']) {
      const { code, err } = await wheal(['summary', 'a.wheal.yaml', '--out', out], { cwd });
      assert.equal(code, 2, out);
      assert.match(err, /^wheal: [^\n]+\n$/);
    }
    assert.deepEqual(readdirSync(cwd).sort(), ['.git', 'a.wheal.yaml', 'out']);
  });

  it('answers 1 and says why for a note that can not be read, with JSON whole', async () => {
    const cwd = folder({ 'list.wheal.yaml': '- a\n', 'binary.wheal.yaml': 'a\u0000' });
    for (const name of ['list.wheal.yaml', 'binary.wheal.yaml']) {
      const text = await wheal(['summary', name, '--out', 'x.txt'], { cwd });
      assert.equal(text.code, 1);
      assert.equal(text.out, '');
      assert.match(text.err, new RegExp(`^wheal: ${name} [^\n]+\n$`));
      const json = await wheal(['summary', name, '--format', 'json'], { cwd });
      assert.equal(json.code, 1);
      assert.equal((JSON.parse(json.out) as { readable: boolean }).readable, false);
    }
    assert.ok(!readdirSync(cwd).includes('x.txt'));
  });

  const nothing: Readonly<Record<string, readonly string[]>> = {
    'no note': ['summary'],
    'two notes': ['summary', 'a.wheal.yaml', 'b.wheal.yaml'],
    'a folder': ['summary', '.'],
    'a practice file': ['summary', 'practice.wheal.yaml'],
    'a note that is not there': ['summary', 'missing.wheal.yaml'],
    'an unknown form': ['summary', 'a.wheal.yaml', '--format', 'pdf'],
  };
  for (const [name, argv] of Object.entries(nothing)) {
    it(`answers 2 and one line for ${name}`, async () => {
      const cwd = folder({ 'a.wheal.yaml': inLimit, 'practice.wheal.yaml': 'wheal: 1\n' });
      const { code, out, err } = await wheal(argv, { cwd });
      assert.equal(code, 2);
      assert.equal(out, '');
      assert.match(err, /^wheal: [^\n]+\n$/);
    });
  }
});

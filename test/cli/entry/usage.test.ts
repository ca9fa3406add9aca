import assert from 'node:assert/strict';
import { commands } from '../../../src/cli/entry/main.ts';
import { folder, inLimit, wheal } from '../run.ts';

describe('how the command line is asked', () => {
  it('answers -h and -V as --help and --version, with and without a command', async () => {
    for (const [short, long] of [
      ['-h', '--help'],
      ['-V', '--version'],
    ] as const)
      for (const before of [[], ['check'], ['dose']]) {
        const { code, out, err } = await wheal([...before, short]);
        assert.deepEqual([code, err], [0, '']);
        assert.equal(out, (await wheal([...before, long])).out);
        assert.ok(out.length > 2);
      }
    assert.equal((await wheal(['help', 'dose'])).out, (await wheal(['dose', '-h'])).out);
  });

  it('takes a word after -- for a path, whatever it looks like', async () => {
    const { code, err } = await wheal(['check', '--', '--help'], { cwd: folder({}) });
    assert.equal(code, 2);
    assert.match(err, /no file or folder --help/);
  });

  for (const [line, says] of [
    ['chekc', /"chekc"; did you mean check\?/],
    ['sumary x', /"sumary"; did you mean summary\?/],
    ['frobnicate', /"frobnicate"; try wheal --help/],
    ['--verison', /a command comes first/],
    ['check --fromat json', /no option --fromat; did you mean --format\?/],
    ['check --asof 2026-03-02', /no option --asof; did you mean --as-of\?/],
    ['check -x', /no option -x/],
    ['check --color', /no option --color\n/],
    ['check a -q', /no option -q; did you mean --quiet\?/],
    ['check a -f json', /no option -f$/m],
    ['check a --format jsn', /"jsn" is none of them; did you mean json\?/],
    ['check --format', /--format needs a value/],
    ['sign a --by K.O. --despite-errors=yes', /--despite-errors takes no value/],
  ] as const) {
    it(`says what was probably meant by wheal ${line}`, async () => {
      const { code, out, err } = await wheal(line.split(' '), { cwd: folder({ a: '' }) });
      assert.deepEqual([code, out], [2, '']);
      assert.match(err, /^wheal: [^\n]+\n$/);
      assert.match(err, says);
    });
  }

  it('shows every option of a command in its help, in lines that a terminal has room for', async () => {
    for (const [name, { options, about }] of commands) {
      const { out } = await wheal([name, '--help']);
      for (const option of options) {
        assert.match(out, new RegExp(`^ {2}--${option.name}\\b`, 'm'));
        for (const word of option.words ?? []) assert.ok(out.includes(word), word);
      }
      assert.equal(about, about.trim());
      assert.ok(out.replace(/\n/g, ' ').includes(about), name);
      for (const line of out.split('\n')) assert.ok(line.length <= 80, line);
    }
  });

  it('does nothing where an option is wrong, even where all else is right', async () => {
    const { out } = await wheal(['check', 'a.wheal.yaml', '--frmat', 'json'], {
      cwd: folder({ 'a.wheal.yaml': inLimit }),
    });
    assert.equal(out, '');
  });
});

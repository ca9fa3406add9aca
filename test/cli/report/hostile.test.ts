import assert from 'node:assert/strict';
import { maxFindings } from '../../../src/checks/running/run.ts';
import { judge } from '../../checks/tester.ts';
import { folder, inLimit, overLimit, wheal } from '../run.ts';

/** Files that somebody may have put among the notes of a practice. */
const hostile: Readonly<Record<string, string | Uint8Array>> = {
  'brackets.wheal.yaml': `visit: ${'['.repeat(20_000)}`,
  'maps.wheal.yaml': `visit: ${'{a: '.repeat(5_000)}`,
  'below-bracket.wheal.yaml': `procedures: [\n${'  - site: left\n'.repeat(2_000)}`,
  'indented.wheal.yaml': Array.from({ length: 2_000 }, (_, at) => `${' '.repeat(at)}a:\n`).join(''),
  'dashes.wheal.yaml': `procedures:\n  ${'- '.repeat(20_000)}a\n`,
  'long-line.wheal.yaml': `visit: 2026-03-02\nremarks: ${'numb '.repeat(20_000)}\n`,
  'long-key.wheal.yaml': `${'k'.repeat(100_000)}: 1\n`,
  'large.wheal.yaml': 'a: b\n'.repeat(200_000),
  'anchors.wheal.yaml': 'a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b, *b]\n',
  'binary.wheal.yaml': new Uint8Array([0, 1, 2, 255]),
  'not-utf8.wheal.yaml': new Uint8Array([0x61, 0x3a, 0x20, 0xff, 0xfe, 0x0a]),
  'empty.wheal.yaml': '',
  'terminal.wheal.yaml': `visit: "\u001b[2J\u0007 \u202e \u2028"\nclinician: "</script>\\u001b]0;x\\u0007"\n`,
  'quotes.wheal.yaml': `remarks: '${'"\\'.repeat(2_000)}\n`,
  'faults.wheal.yaml': `${overLimit}${Array.from({ length: 2_000 }, (_, at) => `unknown-${at}: [\n`).join('')}`,
};

const notes = { 'a.wheal.yaml': inLimit, ...hostile };

describe('files that were made to break it', function () {
  this.timeout(120_000);

  it('are findings of their own file, and JSON is whole in every form', async () => {
    const cwd = folder(notes);
    const { out } = await wheal(['check', '.', '--format', 'json'], { cwd });
    const { files } = JSON.parse(out) as { files: { path: string; findings: { severity: string }[] }[] };
    assert.deepEqual(files.map(({ path }) => path).sort(), Object.keys(notes).sort());
    for (const { path, findings } of files)
      if (path in hostile)
        assert.ok(
          findings.some(({ severity }) => severity === 'error'),
          path,
        );
    const sarif = JSON.parse((await wheal(['check', '.', '--format', 'sarif'], { cwd })).out) as {
      runs: unknown[];
    };
    assert.equal(sarif.runs.length, 1);
  });

  for (const command of ['check', 'open', 'schedule', 'specimens', 'verify'])
    it(`leave the output of ${command} whole, and obeyed by no terminal`, async () => {
      const cwd = folder(notes);
      for (const format of ['json', 'ndjson', 'text']) {
        const { code, out, err } = await wheal([command, '.', '--format', format], { cwd });
        // Of notes of which none is signed there is nothing to verify.
        if (command === 'verify' && code === 2) continue;
        assert.ok(code === 0 || code === 1, `${command} ${format}: ${code} ${err}`);
        // eslint-disable-next-line no-control-regex
        assert.doesNotMatch(out, /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e]/, format);
        if (format === 'json') JSON.parse(out);
        if (format === 'ndjson') for (const line of out.trimEnd().split('\n')) JSON.parse(line);
      }
    });

  it('stop no note when they are the practice file', async () => {
    for (const [name, text] of Object.entries(hostile)) {
      const cwd = folder({ 'a.wheal.yaml': inLimit, 'practice.wheal.yaml': text });
      const { code, out } = await wheal(['check', '.', '--format', 'json'], { cwd });
      assert.equal(code, 1, name);
      const { files } = JSON.parse(out) as {
        files: { path: string; dose?: { judged: boolean }; findings: { severity: string }[] }[];
      };
      const practice = files.find(({ path }) => path.startsWith('practice'));
      assert.ok(
        practice?.findings.some(({ severity }) => severity === 'error'),
        name,
      );
      // What is read whole is known to be no limit.
      const judged = files.find(({ path }) => path.startsWith('a.'))?.dose?.judged;
      if (/^(?:brackets|maps|below|large|binary|not-utf8)/.test(name)) assert.equal(judged, false, name);
    }
  });
});

describe('a thousand findings', () => {
  it('never push a danger out, wherever it is', () => {
    const many = '  - {size: [], margin: -1 mm, depth: 1, photo: maybe, time: 1}\n'.repeat(maxFindings);
    const before = overLimit.replace('procedures:\n', `procedures:\n${many}`);
    for (const text of [before, overLimit + many]) {
      const { findings } = judge(text);
      assert.equal(findings.length, maxFindings + 1);
      assert.ok(findings.some(({ code }) => code === 'dose/over-limit'));
    }
  });
});

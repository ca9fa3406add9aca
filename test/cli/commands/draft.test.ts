import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readNote } from '../../../src/note/read.ts';
import { folder, wheal } from '../run.ts';

const spoken =
  'Dr. Ann Example: shave biopsy of the left cheek, one mL of lidocaine one percent plain. She likes tea.';

interface Json {
  readonly note: string;
  readonly facts: readonly {
    readonly path: readonly (string | number)[];
    readonly value: string;
    readonly from: number;
    readonly to: number;
  }[];
  readonly unplaced: readonly { readonly text: string }[];
}

describe('wheal draft', () => {
  it('writes a note that can be read, that says it is a draft, and that names no person', async () => {
    const { code, out, err } = await wheal(['draft', '-'], { cwd: folder({}), input: spoken });
    assert.deepEqual([code, err], [0, '']);
    const { value, problems } = readNote(out);
    assert.equal(value?.draft?.value, true);
    assert.equal(value.procedures?.[0]?.site?.value, 'left cheek');
    assert.ok(
      problems.every(({ code: found }) => found === 'shape/pending'),
      JSON.stringify(problems),
    );
    assert.doesNotMatch(out, /Ann|Example/);
  });

  it('says in JSON where each value comes from and what was not placed', async () => {
    const { out } = await wheal(['draft', 'a.txt', '--format', 'json'], { cwd: folder({ 'a.txt': spoken }) });
    const { facts, unplaced } = JSON.parse(out) as Json;
    const site = facts.find(({ path }) => path.join('.') === 'procedures.0.site');
    assert.equal(spoken.slice(site?.from, site?.to), 'left cheek');
    assert.deepEqual(
      unplaced.map(({ text }) => text),
      ['likes tea'],
    );
  });

  it('never replaces a file unasked', async () => {
    const cwd = folder({ 'a.txt': spoken, 'a.wheal.yaml': 'mine' });
    const { code } = await wheal(['draft', 'a.txt', '--out', 'a.wheal.yaml'], { cwd });
    assert.equal(code, 2);
    assert.equal(readFileSync(join(cwd, 'a.wheal.yaml'), 'utf8'), 'mine');
  });

  it('says clearly what is no text', async () => {
    const cwd = folder({ empty: ' \n', binary: new Uint8Array([1, 0, 2]), huge: 'word '.repeat(210_000) });
    for (const [file, exit, says] of [
      ['empty', 2, /no words/],
      ['binary', 1, /binary/],
      ['huge', 1, /larger/],
      ['gone', 2, /no file/],
    ] as const) {
      const { code, out, err } = await wheal(['draft', file], { cwd });
      assert.deepEqual([code, out], [exit, ''], file);
      assert.match(err, says);
    }
  });
});

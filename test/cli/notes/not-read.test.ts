import assert from 'node:assert/strict';
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
});

import assert from 'node:assert/strict';
import { signatureEdit } from '../../../src/note/signature/sign.ts';
import { applyEdits } from '../../../src/note/tree/edit.ts';
import { readNote } from '../../../src/note/read.ts';
import { olderEdit } from '../../note/signature/older.ts';
import { folder, inLimit, wheal } from '../run.ts';

const edit = signatureEdit(readNote(inLimit), 'K.O.', '2026-03-02 16:40');
assert.ok(typeof edit !== 'string');
const signed = applyEdits(inLimit, [edit]);

describe('wheal verify', () => {
  it('says what is unchanged, what has changed and what is not signed', async () => {
    const cwd = folder({
      'a.wheal.yaml': signed,
      'b.wheal.yaml': signed.replace('62 kg', '82 kg'),
      'c.wheal.yaml': inLimit,
      'd.wheal.yaml': '',
    });
    const { code, out } = await wheal(['verify', '.'], { cwd });
    assert.equal(code, 1);
    assert.match(out, /^a\.wheal\.yaml: signed by K\.O\., 2026-03-02 16:40, unchanged since\.$/m);
    assert.match(out, /^b\.wheal\.yaml: .* changed since: patient changed\.$/m);
    assert.match(out, /^c\.wheal\.yaml: not signed\.$/m);
    assert.match(out, /^d\.wheal\.yaml: can't be read/m);
    assert.match(out, /does not show who signed/);
  });

  it('answers 0 where nothing changed, and 2 where nothing is signed', async () => {
    const cwd = folder({ 'a.wheal.yaml': signed, 'c.wheal.yaml': inLimit });
    assert.equal((await wheal(['verify', '.'], { cwd })).code, 0);
    const { code, err } = await wheal(['verify', 'c.wheal.yaml'], { cwd });
    assert.equal(code, 2);
    assert.match(err, /nothing was verified/);
  });

  it('verifies what was signed in the older way by the older rules, and says what that leaves out', async () => {
    const older = applyEdits(inLimit, [olderEdit(inLimit, 'K.O.', '2026-03-02 16:40')]);
    const cwd = folder({ 'a.wheal.yaml': older });
    const { code, out } = await wheal(['verify', '.'], { cwd });
    assert.equal(code, 0);
    assert.match(out, /unchanged since\. This is the older way of signing, which does not show/);
  });

  it('ends with 1 where a signed note cannot be read', async () => {
    for (const broken of [`${signed}---\n`, signed.replace('signed:', '---\nsigned:'), `- a\n${signed}`]) {
      const cwd = folder({ 'a.wheal.yaml': broken });
      assert.equal((await wheal(['verify', '.'], { cwd })).code, 1, broken);
    }
  });

  it('says all of it in JSON', async () => {
    const cwd = folder({
      'a.wheal.yaml': signed,
      'b.wheal.yaml': signed.replace('62 kg', '82 kg'),
      'c.wheal.yaml': inLimit,
      'd.wheal.yaml': '',
    });
    const { code, out } = await wheal(['verify', '.', '--format', 'json'], { cwd });
    assert.equal(code, 1);
    const { files } = JSON.parse(out) as {
      files: readonly { path: string; state: string; changes?: unknown }[];
    };
    assert.deepEqual(
      files.map(({ path, state }) => [path, state]),
      [
        ['a.wheal.yaml', 'unchanged'],
        ['b.wheal.yaml', 'changed'],
        ['c.wheal.yaml', 'unsigned'],
        ['d.wheal.yaml', 'unreadable'],
      ],
    );
    assert.deepEqual(files[1]?.changes, [{ part: 'patient', what: 'changed' }]);
  });
});

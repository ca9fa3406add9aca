import assert from 'node:assert/strict';
import { signatureEdit } from '../../src/documents/signature/sign.ts';
import { applyEdits } from '../../src/note/tree/edit.ts';
import { readNote } from '../../src/note/read.ts';
import { folder, inLimit, wheal } from './run.ts';

const edit = await signatureEdit(readNote(inLimit), 'K.O.', '2026-03-02 16:40');
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
});

import assert from 'node:assert/strict';
import { readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { folder, inLimit, overLimit, wheal } from '../run.ts';

const args = ['sign', 'a.wheal.yaml', '--by', 'K.O.'];
// An allergy is not asked for, and closure is missing: no errors.
const clean = inLimit;

describe('wheal sign', () => {
  it('signs a note whole, so that it verifies', async () => {
    const cwd = folder({ 'a.wheal.yaml': clean });
    const { code, out } = await wheal(args, { cwd });
    assert.equal(code, 0);
    assert.match(out, /^a\.wheal\.yaml: signed by K\.O\.; this shows later change, not who signed\.\n$/);
    const text = readFileSync(join(cwd, 'a.wheal.yaml'), 'utf8');
    assert.ok(text.startsWith(`${clean}signed:\n  format: 2\n  by: "K.O."\n`));
    assert.deepEqual(readdirSync(cwd).sort(), ['.git', 'a.wheal.yaml']);
    assert.equal((await wheal(['verify', '.'], { cwd })).code, 0);
  });

  it('refuses a signed note, a draft, and what can not be read, and leaves them as they are', async () => {
    const cwd = folder({ 'a.wheal.yaml': clean });
    await wheal(args, { cwd });
    const refused = async (text: string, words: RegExp): Promise<void> => {
      writeFileSync(join(cwd, 'a.wheal.yaml'), text);
      const { code, err } = await wheal([...args, '--despite-errors'], { cwd });
      assert.equal(code, 1);
      assert.match(err, words);
      assert.equal(readFileSync(join(cwd, 'a.wheal.yaml'), 'utf8'), text);
    };
    await refused(readFileSync(join(cwd, 'a.wheal.yaml'), 'utf8'), /signed already/);
    await refused(`draft: yes\n${clean}`, /draft/);
    await refused(`${clean}---\n`, /cannot be read/);
    await refused('', /cannot be read/);
  });

  it('refuses a note with errors unless told to sign despite them', async () => {
    const cwd = folder({ 'a.wheal.yaml': overLimit });
    const { code, err } = await wheal(args, { cwd });
    assert.equal(code, 1);
    assert.match(err, /--despite-errors/);
    assert.equal(readFileSync(join(cwd, 'a.wheal.yaml'), 'utf8'), overLimit);
    assert.equal((await wheal([...args, '--despite-errors'], { cwd })).code, 0);
    assert.equal((await wheal(['verify', 'a.wheal.yaml'], { cwd })).code, 0);
  });

  it('needs a name and one file', async () => {
    const cwd = folder({ 'a.wheal.yaml': clean });
    assert.equal((await wheal(['sign', 'a.wheal.yaml'], { cwd })).code, 2);
    assert.equal((await wheal(['sign', '-', '--by', 'K.O.'], { cwd })).code, 2);
    assert.equal((await wheal(['sign', '.', '--by', 'K.O.'], { cwd })).code, 2);
  });

  it('leaves a link a link', async () => {
    const cwd = folder({ 'b.txt': clean });
    symlinkSync(join(cwd, 'b.txt'), join(cwd, 'a.wheal.yaml'));
    assert.equal((await wheal(args, { cwd })).code, 0);
    assert.match(readFileSync(join(cwd, 'b.txt'), 'utf8'), /^signed:$/m);
  });
});

import assert from 'node:assert/strict';
import { chmodSync, readFileSync, readdirSync, statSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { applyPatch } from 'diff';
import { folder, inLimit, overLimit, wheal } from '../run.ts';

const misspelt = inLimit.replace('  - site', '  - sitte').replace('agent: lidocaine', 'agent: lidocane');
const dots = overLimit.replaceAll('20 mL', '.5 mL');

describe('wheal check --fix', () => {
  const text = (cwd: string, name = 'a.wheal.yaml'): string => readFileSync(join(cwd, name), 'utf8');

  it('writes what is surely misspelt as it is meant, and then checks what is there', async () => {
    const cwd = folder({ 'a.wheal.yaml': misspelt });
    const before = await wheal(['check', 'a.wheal.yaml'], { cwd });
    const { code, out, err } = await wheal(['check', 'a.wheal.yaml', '--fix'], { cwd });
    assert.equal(text(cwd), inLimit);
    assert.match(err, /a\.wheal\.yaml: spelling fixed/);
    assert.deepEqual([before.code, code], [1, 0]);
    assert.equal(out, (await wheal(['check', 'a.wheal.yaml'], { cwd })).out);
    assert.deepEqual(readdirSync(cwd).sort(), ['.git', 'a.wheal.yaml']);
    assert.equal((await wheal(['check', 'a.wheal.yaml', '--fix'], { cwd })).err, '');
  });

  it('never changes what the record says: a dose over the limit stays', async () => {
    const cwd = folder({ 'a.wheal.yaml': overLimit });
    const { code } = await wheal(['check', 'a.wheal.yaml', '--fix'], { cwd });
    assert.equal(code, 1);
    assert.equal(text(cwd), overLimit);
  });

  it('keeps the byte order mark, the line ends, the rights of the file, and links', async () => {
    const typed = `\ufeff${dots.replaceAll('\n', '\r\n')}`;
    const cwd = folder({ 'real.txt': typed });
    chmodSync(join(cwd, 'real.txt'), 0o640);
    symlinkSync('real.txt', join(cwd, 'a.wheal.yaml'));
    await wheal(['check', 'a.wheal.yaml', '--fix'], { cwd });
    assert.equal(text(cwd, 'real.txt'), typed.replaceAll('.5 mL', '0.5 mL'));
    assert.equal(statSync(join(cwd, 'real.txt')).mode & 0o777, 0o640);
  });

  it('shows with --dry-run a diff that leads to the same text, and writes nothing', async () => {
    const cwd = folder({ 'a.wheal.yaml': misspelt, 'b.wheal.yaml': inLimit });
    const { code, out, err } = await wheal(['check', '.', '--fix', '--dry-run'], { cwd });
    assert.deepEqual([code, err], [0, '']);
    assert.match(out, /^--- a\/a\.wheal\.yaml\n\+\+\+ b\/a\.wheal\.yaml\n@@/);
    assert.equal(applyPatch(misspelt, out), inLimit);
    assert.equal(text(cwd), misspelt);
  });

  it('refuses a signed note, and says so', async () => {
    const signed = `${dots}signed: {by: K.O., at: 2026-03-02 11:00}\n`;
    const cwd = folder({ 'a.wheal.yaml': signed, 'b.wheal.yaml': dots });
    const { code, err } = await wheal(['check', 'a.wheal.yaml', 'b.wheal.yaml', '--fix'], { cwd });
    assert.equal(code, 1);
    assert.match(err, /^wheal: a\.wheal\.yaml is signed and was left as it is\n/);
    assert.equal(text(cwd), signed);
    assert.ok(text(cwd, 'b.wheal.yaml').includes('0.5 mL'));
  });

  it('wants --yes for a folder, or an answer, and changes nothing before', async () => {
    const cwd = folder({ 'in/a.wheal.yaml': dots, 'in/b.wheal.yaml': dots });
    const name = join('in', 'a.wheal.yaml');
    const refused = await wheal(['check', 'in', '--fix'], { cwd });
    assert.equal(refused.code, 2);
    assert.match(refused.err, /--yes/);
    assert.equal((await wheal(['check', 'in', '--fix'], { cwd, ask: () => Promise.resolve(false) })).code, 2);
    assert.equal(text(cwd, name), dots);
    let question = '';
    const ask = (asked: string): Promise<boolean> => {
      question = asked;
      return Promise.resolve(true);
    };
    await wheal(['check', 'in', '--fix'], { cwd, ask });
    assert.match(question, /2 files/);
    assert.notEqual(text(cwd, name), dots);
    const other = folder({ 'a.wheal.yaml': dots });
    await wheal(['check', '.', '--fix', '--yes'], { cwd: other });
    assert.notEqual(text(other), dots);
  });

  it('leaves what can not be read to the check', async () => {
    const cwd = folder({ 'a.wheal.yaml': 'a\u0000b', 'b.wheal.yaml': '- a\n' });
    const { code, out } = await wheal(['check', '.', '--fix', '--yes'], { cwd });
    assert.equal(code, 1);
    assert.match(out, /can't be read/);
    assert.equal(text(cwd, 'b.wheal.yaml'), '- a\n');
  });

  for (const [line, says] of [
    ['check a.wheal.yaml --dry-run', /--dry-run goes with --fix/],
    ['check a.wheal.yaml --yes', /--yes goes with --fix/],
    ['check - --fix', /standard input is none/],
  ] as const)
    it(`answers 2 for wheal ${line}`, async () => {
      const { code, err } = await wheal(line.split(' '), { cwd: folder({ 'a.wheal.yaml': inLimit }) });
      assert.equal(code, 2);
      assert.match(err, says);
    });
});

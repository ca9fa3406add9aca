import assert from 'node:assert/strict';
import { chmodSync, mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { folder, inLimit, wheal } from '../run.ts';

const mine = 'name: Practice above (invented)\nlimits: [{agent: lidocaine, max-mg-per-kg: 3}]\n';

/** Files that are there and can't be read, or of which a line can't. */
const broken: readonly (readonly [string, string | Uint8Array, 'file' | 'rows'])[] = [
  ['a list', '- name: a\n', 'file'],
  ['a binary file', new Uint8Array([0, 1, 2]), 'file'],
  ['no UTF-8', new Uint8Array([0xc3, 0x28]), 'file'],
  ['another version', 'wheal: 9\nlimits: [{agent: lidocaine, max-mg: 100}]\n', 'file'],
  ['too large', `# ${'x'.repeat(600 * 1024)}\n`, 'file'],
  ['too deep', `${'['.repeat(5000)}\n`, 'file'],
  ['a limit in words', 'limits: [{agent: lidocaine, max-mg: plenty}]\n', 'rows'],
  ['an open bracket', 'limits: [{agent: lidocaine, max-mg: 100\n', 'rows'],
];

interface CheckJson {
  readonly files: readonly {
    readonly path: string;
    readonly practice?: string;
    readonly findings: readonly { readonly code: string; readonly severity: string }[];
    readonly dose: { readonly judged: boolean; readonly fraction: number | null } | null;
  }[];
}

/** Asserts that no command lets published values, or a file further up, hold in silence. */
async function assertSaid(cwd: string, form: 'file' | 'rows'): Promise<void> {
  const note = 'in/a.wheal.yaml';
  const checked = await wheal(['check', note, '--format', 'json'], { cwd });
  assert.equal(checked.code, 1);
  const { files } = JSON.parse(checked.out) as CheckJson;
  const own = files.find(({ path }) => path === note);
  assert.deepEqual([own?.dose?.judged, own?.dose?.fraction], [false, null]);
  assert.ok(own?.findings.some(({ code }) => code === 'practice/not-in-force'));
  assert.ok(files.some(({ path, findings }) => path === 'in/practice.wheal.yaml' && findings.length > 0));
  assert.equal(own?.practice, form === 'file' ? undefined : 'in/practice.wheal.yaml');

  const summary = await wheal(['summary', note], { cwd });
  assert.equal(summary.code, 1);
  assert.match(summary.out, /practice file/i);
  if (form === 'file') assert.doesNotMatch(summary.out, /Practice file: |Practice above/);

  for (const command of ['open', 'schedule', 'specimens']) {
    const { code, out } = await wheal([command, 'in'], { cwd });
    assert.equal(code, 1, command);
    assert.match(out, /in\/practice\.wheal\.yaml: .*practice file/, command);
  }

  const dose = await wheal('dose --agent lidocaine --concentration 1% --weight 62kg'.split(' '), {
    cwd: join(cwd, 'in'),
  });
  assert.equal(dose.code, 2);
  assert.match(dose.err, /practice file.*practice\.wheal\.yaml.*no maximum/);
}

describe('a practice file that is there and not in force', () => {
  for (const [what, content, form] of broken)
    it(`is said by every command, and gives way to nothing: ${what}`, async () => {
      const cwd = folder({
        'practice.wheal.yaml': mine,
        'in/practice.wheal.yaml': content,
        'in/a.wheal.yaml': inLimit,
      });
      await assertSaid(cwd, form);
    });

  it('is a link that leads nowhere too, and a folder of its name', async () => {
    const cwd = folder({ 'practice.wheal.yaml': mine, 'in/a.wheal.yaml': inLimit });
    symlinkSync('gone', join(cwd, 'in/practice.wheal.yaml'));
    await assertSaid(cwd, 'file');
    const other = folder({ 'practice.wheal.yaml': mine, 'in/a.wheal.yaml': inLimit });
    mkdirSync(join(other, 'in/practice.wheal.yaml'));
    await assertSaid(other, 'file');
  });

  it('is a file that this user may not read too', async () => {
    const cwd = folder({
      'practice.wheal.yaml': mine,
      'in/practice.wheal.yaml': mine,
      'in/a.wheal.yaml': inLimit,
    });
    chmodSync(join(cwd, 'in/practice.wheal.yaml'), 0);
    // Whoever may read everything is told nothing, since nothing is wrong for him.
    if (process.getuid?.() !== 0) await assertSaid(cwd, 'file');
  });

  it('is none where the file says everything as it should', async () => {
    const cwd = folder({ 'practice.wheal.yaml': mine, 'in/a.wheal.yaml': inLimit });
    const { out } = await wheal(['check', 'in', '--format', 'json'], { cwd });
    const [own] = (JSON.parse(out) as CheckJson).files;
    assert.equal(own?.practice, 'practice.wheal.yaml');
    assert.equal(own.dose?.judged, true);
  });
});

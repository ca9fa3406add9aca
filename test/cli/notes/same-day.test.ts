import assert from 'node:assert/strict';
import { folder, wheal } from '../run.ts';

/** 20 mL of 1% plain lidocaine are 200 mg; the limit for 62 kg is 279 mg. */
const note = (id: string, visit = '2026-03-02', rest = ''): string => `wheal: 1
visit: ${visit}
patient: {id: ${id}, born: 1961-08-09, weight: 62 kg}
procedures:
  - site: left upper back
    method: punch
    anesthetic: [{agent: lidocaine, concentration: 1%, volume: 20 mL}]
${rest}`;

interface Report {
  readonly files: readonly {
    readonly path: string;
    readonly findings: readonly { readonly code: string; readonly message: string }[];
    readonly dose: { readonly judged: boolean; readonly fraction: number | null; readonly why?: string };
  }[];
}

async function checked(
  files: Readonly<Record<string, string>>,
  paths: readonly string[] = ['.'],
): Promise<Report['files']> {
  const cwd = folder(files);
  const { out } = await wheal(['check', ...paths, '--format', 'json', '--as-of', '2026-03-02'], { cwd });
  return (JSON.parse(out) as Report).files;
}

const over = (files: Report['files']): readonly string[] =>
  files
    .filter(({ findings }) => findings.some(({ code }) => code === 'dose/over-limit'))
    .map(({ path }) => path);

describe('notes of one patient and day', () => {
  it('count together for the dose, and each of them says so', async () => {
    const files = await checked({ 'a.wheal.yaml': note('C-1'), 'b.wheal.yaml': note('"C-1"') });
    assert.deepEqual(over(files), ['a.wheal.yaml', 'b.wheal.yaml']);
    assert.deepEqual(
      files.map(({ dose }) => dose.fraction?.toFixed(3)),
      ['1.434', '1.434'],
    );
    const message = files[0]?.findings.find(({ code }) => code === 'dose/over-limit')?.message ?? '';
    assert.match(message, /together with another note of this patient on that day/);
    // 279 mg less the other 200 mg are 79 mg: 7.9 mL.
    assert.match(message, /at most 7\.9 mL/);
  });

  it('are found however the chart number is written', async () => {
    for (const id of ["'C-1'", 'c-1', 'C-1 ', '"C\\u002d1"']) {
      const files = await checked({ 'a.wheal.yaml': note('C-1'), 'b.wheal.yaml': note(id) });
      assert.equal(over(files).length, 2, id);
    }
    const block = note('C-1').replace(
      '{id: C-1, born: 1961-08-09, weight: 62 kg}',
      '\n  mrn: >-\n    C-1\n  born: 1961-08-09\n  weight: 62 kg',
    );
    assert.equal(over(await checked({ 'a.wheal.yaml': note('C-1'), 'b.wheal.yaml': block })).length, 2);
  });

  it('are those of one patient with or without the hyphen of the number', async () => {
    for (const id of ['C1', 'C 1', 'c-1', 'C_1', 'C–1']) {
      const files = await checked({ 'a.wheal.yaml': note('C-1'), 'b.wheal.yaml': note(id) });
      assert.equal(over(files).length, 2, id);
    }
  });

  it('are not a note and its copy, byte for byte', async () => {
    const copies = await checked({ 'a.wheal.yaml': note('C-1'), 'copy/a.wheal.yaml': note('C-1') });
    assert.deepEqual(over(copies), []);
    const third = await checked({
      'a.wheal.yaml': note('C-1'),
      'copy/a.wheal.yaml': note('C-1'),
      'b.wheal.yaml': note('C-1', '2026-03-02 15:00'),
    });
    assert.equal(over(third).length, 3);
    assert.deepEqual(
      third.map(({ dose }) => dose.fraction?.toFixed(3)),
      ['1.434', '1.434', '1.434'],
    );
  });

  it('count apart where patient or day differ', async () => {
    assert.deepEqual(over(await checked({ 'a.wheal.yaml': note('C-1'), 'b.wheal.yaml': note('C-2') })), []);
    assert.deepEqual(
      over(await checked({ 'a.wheal.yaml': note('C-1'), 'b.wheal.yaml': note('C-1', '2026-03-01') })),
      [],
    );
  });

  it('count with what an event of another note gave on that day', async () => {
    const event =
      'events:\n  - {on: 2026-03-02, kind: bleeding, outcome: stopped, anesthetic: [{agent: lidocaine, concentration: 1%, volume: 10 mL}]}\n';
    const files = await checked({
      'a.wheal.yaml': note('C-1'),
      'b.wheal.yaml': note('C-1', '2026-02-20', event),
    });
    assert.deepEqual(over(files), ['a.wheal.yaml', 'b.wheal.yaml']);
  });

  it('are not judged where another cannot be counted', async () => {
    const files = await checked({
      'a.wheal.yaml': note('C-1'),
      'b.wheal.yaml': note('C-1').replace('20 mL', '??'),
    });
    assert.equal(files[0]?.dose.judged, false);
    assert.match(files[0].dose.why ?? '', /another note/);
  });

  it('are not looked at where one file is checked alone', async () => {
    const files = await checked({ 'a.wheal.yaml': note('C-1'), 'b.wheal.yaml': note('C-1') }, [
      'a.wheal.yaml',
    ]);
    assert.deepEqual(over(files), []);
  });
});

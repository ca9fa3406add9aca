import assert from 'node:assert/strict';
import { columns } from '../../../src/cli/terminal/columns.ts';
import { plain } from '../../../src/documents/one-line.ts';
import { excerpt } from '../../../src/cli/report/excerpt.ts';
import { folder, inLimit, overLimit, wheal } from '../run.ts';

/** The range of the first ⟦…⟧ of a line, as line 6 of a note. */
function marked(row: string): readonly [string, string] {
  const start = row.indexOf('⟦');
  const end = row.indexOf('⟧') - 1;
  return excerpt(row.replace(/[⟦⟧]/g, ''), {
    start: { line: 6, character: start },
    end: { line: 6, character: end },
  });
}

describe('the text form of a report', () => {
  it('shows the row with a mark under the fault', () => {
    assert.deepEqual(marked('    method: ⟦punsh⟧'), [
      '    7 |     method: punsh',
      '      |             ^^^^^',
    ]);
  });

  it('shows one mark where the range is empty', () => {
    assert.equal(marked('site:⟦⟧')[1], '      |      ^');
  });

  it('keeps the mark in place behind tabs and wide characters', () => {
    assert.deepEqual(marked('\t日本e\u0301: ⟦漢字⟧ x'), [
      '    7 |   日本e\u0301: 漢字 x',
      '      |          ^^^^',
    ]);
  });

  it('does not show the mark of byte order that begins a file', async () => {
    const { out } = await wheal(['check', '-'], { cwd: folder({}), input: '\ufeffvisit: 2026-02-30\n' });
    assert.match(out, /^ {4}1 \| visit: 2026-02-30\n {6}\| {8}\^{10}$/m);
  });

  it('cuts a long row around the fault', () => {
    const [row, marks] = marked(`${'a'.repeat(400_000)}⟦bad⟧${'z'.repeat(100_000)}`);
    assert.ok(row.length < 200 && row.includes('…aaa') && row.endsWith('…'));
    assert.equal(row.slice(marks.indexOf('^'), marks.lastIndexOf('^') + 1), 'bad');
  });

  it('never cuts a pair of surrogates in half', () => {
    for (const lead of [0, 1]) {
      const [row] = marked(`${'a'.repeat(lead)}${'😀'.repeat(200)}⟦x⟧${'😀'.repeat(200)}`);
      assert.equal(row, plain(row));
    }
  });

  it('marks the first row of a fault over several rows', () => {
    const [, marks] = excerpt('abc', { start: { line: 0, character: 1 }, end: { line: 3, character: 0 } });
    assert.equal(marks, '      |  ^^');
  });

  it('lets no character of a note command the terminal', async () => {
    const note = overLimit
      .replace('left upper back', 'left \u001b[31mupper\u0007 back \u202e')
      .replace('agent: lidocaine', 'agent: \u001b]0;x\u0007');
    const { out } = await wheal(['check', '-'], { cwd: folder({}), input: note });
    // eslint-disable-next-line no-control-regex -- that is the question
    assert.doesNotMatch(out, /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202e]/);
  });

  it('shows place, severity, message, code, other places and a count', async () => {
    const cwd = folder({ 'a.wheal.yaml': overLimit });
    const { out } = await wheal(['check', 'a.wheal.yaml'], { cwd });
    assert.match(out, /^a\.wheal\.yaml:9:55 {2}error {2}.*121 mg over the limit.*\[dose\/over-limit\]$/m);
    assert.match(
      out,
      /^ {4}9 \| {7}- \{agent: lidocaine, concentration: 1%, volume: 20 mL\}\n {6}\| {55}\^{5}$/m,
    );
    assert.match(out, /^ {6}a\.wheal\.yaml:8:55 {2}\S/m);
    assert.match(out, /\n1 note: 1 error\b.*Dose over the limit in 1 note\.\n$/);
  });

  it('says so where the dose was not judged', async () => {
    const { out } = await wheal(['check', '-'], { cwd: folder({}), input: 'just words' });
    assert.match(out, /Dose not judged in 1 note\.\n$/);
    const fine = await wheal(['check', '-'], { cwd: folder({}), input: inLimit });
    assert.doesNotMatch(fine.out, /not judged/);
  });

  it('uses colors only when asked to', async () => {
    const given = { cwd: folder({}), input: overLimit };
    assert.ok((await wheal(['check', '-'], { ...given, color: true })).out.includes('\u001b['));
    assert.ok(!(await wheal(['check', '-'], given)).out.includes('\u001b'));
  });
});

describe('plain text', () => {
  it('keeps letters of all scripts and replaces what is not a letter to look at', () => {
    assert.equal(plain('é 漢 😀 µg'), 'é 漢 😀 µg');
    assert.equal(plain('a\nb\tc\u0000d\u009be\ud800'), 'a b c␀d\ufffde\ufffd');
  });

  it('knows how many columns characters take', () => {
    assert.deepEqual(['abc', '漢字', 'e\u0301', '😀', 'µ'].map(columns), [3, 4, 1, 2, 1]);
  });
});

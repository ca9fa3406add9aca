import assert from 'node:assert/strict';
import { applyEdits } from '../../../src/note/tree/edit.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { analyse } from '../../../src/service/index.ts';
import { doneBy, isRefused, openItemsOf } from '../../../src/service/follow-up/record-done.ts';

const head = 'visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n';

/** The note after the only open item of a kind was recorded as done. */
function recorded(text: string, kind: string, answers: Readonly<Record<string, string>>): string {
  const analysis = analyse(text, { tables: referenceTables, today: '2026-03-20' });
  const items = openItemsOf(analysis).filter((item) => item.kind === kind);
  assert.equal(items.length, 1);
  const done = doneBy(analysis, items[0], new Map(Object.entries(answers)));
  assert.ok(!isRefused(done), isRefused(done) ? done.why : '');
  return applyEdits(text, done.edits);
}

describe('what was done on several days', () => {
  it('is written beside the day that was taken back', () => {
    const note = (told: string): string =>
      `${head}  - site: chin\n    specimen: {sent: 2026-03-02, result: {received: 2026-03-09, diagnosis: nevus, told: ${told}}}\n` +
      'addenda: [{at: 2026-03-12, by: K.O., text: wrong chart, not-told: 1}]\n';
    assert.equal(
      recorded(note('2026-03-10'), 'telling the patient', { on: '2026-03-13', by: 'N.B.', how: 'visit' }),
      note('[2026-03-10, {on: 2026-03-13, by: N.B., how: visit}]'),
    );
  });

  it('is written beside the stitches that came out before', () => {
    const note = (out: string): string =>
      `${head}  - site: left upper back\n    closure: {material: nylon, size: 4-0, count: 4}\n    sutures-out: ${out}\n`;
    const first = '{on: 2026-03-12, count: 2}';
    assert.equal(
      recorded(note(first), 'suture removal', { on: '2026-03-16', by: 'N.B.', count: '2' }),
      note(`[${first}, {on: 2026-03-16, by: N.B., count: 2}]`),
    );
  });
});

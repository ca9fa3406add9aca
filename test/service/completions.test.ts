import assert from 'node:assert/strict';
import { applyEdits } from '../../src/note/edit.ts';
import { noteIndex, readNote } from '../../src/note/read.ts';
import { referenceTables } from '../../src/practice/tables.ts';
import type { Completion } from '../../src/service/completion.ts';
import { completionsAt } from '../../src/service/completions.ts';

const writing = { tables: referenceTables, today: '2026-03-02', shapes: noteIndex, root: 'note' };

function offered(marked: string): { text: string; all: readonly Completion[] } {
  const offset = marked.indexOf('|');
  const text = marked.slice(0, offset) + marked.slice(offset + 1);
  return { text, all: completionsAt(text, offset, writing) };
}

/** The note after the completion with a label was accepted at the mark `|`. */
function accepted(marked: string, label: string): string {
  const { text, all } = offered(marked);
  const item = all.find((one) => one.label === label);
  assert.ok(item !== undefined, `${label} is not offered: ${all.map((one) => one.label).join(', ')}`);
  return applyEdits(text, [{ start: item.start, end: item.end, text: item.insert }]);
}

const labels = (marked: string): string[] => offered(marked).all.map(({ label }) => label);

describe('completions', () => {
  it('offer in an empty file what a note needs first', () => {
    const { all } = offered('|');
    const sorted = [...all].sort((a, b) => (a.sort < b.sort ? -1 : 1)).map(({ label }) => label);
    assert.deepEqual(sorted.slice(0, 3), ['visit', 'patient', 'procedures']);
  });

  it('leave out keys that are there, in any accepted spelling', () => {
    assert.ok(!labels('patient:\n  dob: 1961-08-09\n  |').includes('born'));
    assert.ok(labels('patient:\n  dob: 1961-08-09\n  |').includes('weight'));
  });

  it('write keys, their colon and the first row of a map with the right indentation', () => {
    assert.equal(accepted('|', 'visit'), 'visit: ');
    assert.equal(accepted('visit: 2026-03-02\npat|', 'patient'), 'visit: 2026-03-02\npatient:\n  ');
    assert.equal(accepted('proc|', 'procedures'), 'procedures:\n  - ');
    assert.equal(
      accepted('procedures:\n  - site: nose\n    me|', 'method'),
      'procedures:\n  - site: nose\n    method: ',
    );
    assert.equal(
      accepted('procedures:\n- site: nose\n  me|', 'method'),
      'procedures:\n- site: nose\n  method: ',
    );
    assert.equal(
      accepted('procedures:\n  - site: nose\n    an|', 'anesthetic'),
      'procedures:\n  - site: nose\n    anesthetic:\n      - ',
    );
  });

  it('put a row with the wrong indentation right', () => {
    assert.equal(accepted('consent: written\n    sc|', 'scribe'), 'consent: written\nscribe: ');
    assert.equal(
      accepted('procedures:\n  - site: nose\n      me|', 'method'),
      'procedures:\n  - site: nose\n    method: ',
    );
  });

  it('begin a list item with its dash', () => {
    assert.equal(accepted('procedures:\n  |', 'site'), 'procedures:\n  - site: ');
    assert.equal(accepted('procedures:\n  - |', 'site'), 'procedures:\n  - site: ');
  });

  it('write no second colon', () => {
    assert.equal(accepted('con|: written', 'consent'), 'consent: written');
    assert.equal(accepted('patient: {w|eight: 62 kg}', 'weighed'), 'patient: {weighed: 62 kg}');
  });

  it('offer the words of a key', () => {
    assert.ok(labels('procedures:\n  - method: |').includes('punch'));
    assert.equal(accepted('procedures:\n  - method: pu|', 'punch'), 'procedures:\n  - method: punch');
    assert.equal(accepted('consent:|', 'written'), 'consent: written');
  });

  it('offer sites with the side where one must be said', () => {
    const all = labels('procedures:\n  - site: |');
    assert.ok(
      all.includes('left upper back') && all.includes('right upper back') && !all.includes('upper back'),
    );
  });

  it('offer units behind a number, and no number of their own', () => {
    assert.deepEqual(labels('patient: {weight: 62|}'), ['62 kg', '62 lb']);
    assert.deepEqual(labels('patient: {weight: |}'), []);
  });

  it('quote what a comma would cut inside brackets', () => {
    const note = 'procedures:\n  - anesthetic: [{agent: lidocaine, epinephrine: |}]';
    assert.match(accepted(note, '1:100,000'), /epinephrine: "1:100,000"}/);
  });

  it('know today and the day of the visit', () => {
    assert.deepEqual(labels('visit: |'), ['2026-03-02']);
    assert.deepEqual(labels('visit: 2026-02-27\nevents:\n  - on: |'), ['2026-03-02', '2026-02-27']);
  });

  it('leave every row that was good as it was, and break nothing, wherever they are accepted', () => {
    const text =
      'visit: 2026-03-02\npatient: {id: C-1, allergies: [latex]}\nprocedures:\n  - site: left upper back # here\n    method: punch\n    specimen:\n      - label: A\n\n';
    for (let offset = 0; offset <= text.length; offset++) {
      const all = completionsAt(text, offset, writing);
      // Values of one place differ in their words alone: the first and the last stand for them.
      for (const item of all.filter(
        ({ kind }, index) => kind === 'key' || index === 0 || index === all.length - 1,
      )) {
        assert.ok(item.start <= offset && offset <= item.end, `${item.label} at ${offset}`);
        const result = applyEdits(text, [{ start: item.start, end: item.end, text: item.insert }]);
        const syntax = readNote(result).problems.filter(({ code }) => code === 'yaml/syntax');
        assert.deepEqual(syntax, [], `${item.label} at ${offset}:\n${result}`);
      }
    }
  });
});

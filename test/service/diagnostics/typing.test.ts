import type { Finding } from '../../../src/note/tree/finding.ts';
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Lines } from '../../../src/note/text/lines.ts';
import {
  afterEdit,
  afterMove,
  afterPause,
  analyse,
  atRest,
  type Shown,
  shownFindings,
} from '../../../src/service/index.ts';
import { Noise, retype, rowsOf } from '../retype.ts';
import { tablesIn } from '../../practice/tables-of.ts';

const samples = join(import.meta.dirname, '../../../samples');
const clean = ['punch-sutured', 'melanocytic-deep-shave', 'cream-and-injection'];
const tables = tablesIn(readFileSync(join(samples, 'practice.wheal.yaml'), 'utf8'));
const overLimit = readFileSync(join(samples, 'punch-sutured.wheal.yaml'), 'utf8').replace(
  /volume: .*/,
  'volume: 90 mL',
);
const judge = (text: string): readonly Finding[] =>
  shownFindings(analyse(text, { tables, today: '2026-04-30' }), true);

describe('typing', () => {
  const names = readdirSync(samples).filter((name) => clean.some((one) => name.startsWith(one)));

  it('blames no other row, and hardly ever its own, while a clean note is typed again row by row', () => {
    const noise = new Noise();
    for (const name of names) {
      const note = readFileSync(join(samples, name), 'utf8');
      const before = new Set(judge(note).map(({ code }) => code));
      note.split('\n').forEach((_, row) => {
        retype(note, row, judge, (state) => {
          const findings = state.findings.filter(({ code }) => !before.has(code));
          noise.add(row, rowsOf({ text: state.text, findings }));
        });
      });
    }
    assert.ok(noise.states > 1000);
    assert.equal(noise.elsewhere, 0);
    assert.ok(noise.anywhere / noise.states <= 0.04, `${noise.anywhere} of ${noise.states}`);
  });

  it('goes on showing a true fault on another row in every state', () => {
    const note = overLimit;
    const fault = new Lines(note).at(note.indexOf('90 mL')).line;
    note.split('\n').forEach((_, row) => {
      if (row === fault) return;
      retype(note, row, judge, (state) => {
        assert.ok(
          state.findings.some(({ code }) => code === 'dose/over-limit'),
          `row ${row}: ${state.text}`,
        );
      });
    });
  });

  it('shows a finished over-limit volume on its own row after a pause, with the caret still there', () => {
    const note = overLimit;
    const row = new Lines(note).at(note.indexOf('90 mL')).line;
    const last = retype(note, row, judge, () => undefined);
    assert.deepEqual(
      rowsOf(last).filter((one) => one === row),
      [],
    );
    assert.ok(rowsOf(afterPause(last, judge)).includes(row));
  });

  it('asks for what a procedure lacks once its block is left', () => {
    const note = 'visit: 2026-03-02\npatient: {id: C-1, born: 1961-08-09, allergies: none}\nprocedures:\n';
    const typed = `${note}  - site: left cheek\n    method: punch\n`;
    const rest = atRest(note, judge);
    const inside = afterEdit(
      rest,
      `${typed}    `,
      { start: note.length, end: note.length, inserted: typed.slice(note.length) + '    ' },
      { line: 5, character: 4 },
      judge,
    );
    const asks = (state: Shown): boolean => state.findings.some(({ code }) => code === 'closure/missing');
    assert.equal(asks(inside), false);
    assert.equal(asks(afterMove(inside, { line: 0, character: 0 }, judge)), true);
  });

  /** Types letters at the end of a text, the caret after them, and answers what shows; Enter keeps the indentation. */
  function typedOn(from: Shown, letters: string): Shown {
    let now = from;
    for (const [letter] of letters.matchAll(/\n *|./g)) {
      const at = now.text.length;
      const text = now.text + letter;
      now = afterEdit(
        now,
        text,
        { start: at, end: at, inserted: letter },
        new Lines(text).at(text.length),
        judge,
      );
    }
    return now;
  }

  const empty = ({ findings }: Shown): readonly string[] =>
    findings.filter(({ code }) => code === 'shape/empty-value').map(({ severity }) => severity);

  it('waits with a key that has no value yet until its part is left', () => {
    const fresh = typedOn(atRest('', judge), 'visit: 2026-03-02\nprocedures:');
    assert.deepEqual(empty(fresh), []);
    assert.deepEqual(empty(afterPause(fresh, judge)), []);
    const elsewhere = afterMove(fresh, { line: 0, character: 3 }, judge);
    assert.deepEqual(empty(elsewhere), [], 'the caret is still in the note');
    assert.deepEqual(empty(atRest(fresh.text, judge)), ['error'], 'saved by hand it shows');

    const patient = typedOn(atRest('', judge), 'patient:\n  weight:\n  id: C-1\n  ');
    assert.deepEqual(empty(patient), []);
    assert.deepEqual(empty(typedOn(patient, '\nprocedures:\n')), ['warning'], 'its part was left');
  });
});

import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Lines } from '../../src/note/lines.ts';
import { readPractice } from '../../src/note/read.ts';
import { tablesOf } from '../../src/practice/tables.ts';
import {
  afterEdit,
  afterMove,
  afterPause,
  analyse,
  atRest,
  watched,
  type Shown,
  type Watched,
} from '../../src/service/index.ts';

const samples = join(import.meta.dirname, '../../samples');
const clean = ['punch-sutured', 'melanocytic-deep-shave', 'cream-and-injection'];
const tables = tablesOf(readPractice(readFileSync(join(samples, 'practice.wheal.yaml'), 'utf8')).value);
const overLimit = readFileSync(join(samples, 'punch-sutured.wheal.yaml'), 'utf8').replace(
  /volume: .*/,
  'volume: 90 mL',
);
const judge = (text: string): readonly Watched[] => watched(analyse(text, { tables, today: '2026-04-30' }));

interface Noise {
  states: number;
  elsewhere: number;
  anywhere: number;
}

/** Takes a row away and types it again, letter by letter; `seen` is asked after each. */
function retype(note: string, row: number, seen: (state: Shown, row: number) => void): Shown {
  const lines = new Lines(note);
  const words = lines.row(row);
  const start = note.split('\n').slice(0, row).join('\n').length + (row === 0 ? 0 : 1);
  const caret = { line: row, character: 0 };
  const empty = note.slice(0, start) + note.slice(start + words.length);
  let now = afterEdit(
    atRest(note, judge),
    empty,
    { start, end: start + words.length, inserted: '' },
    caret,
    judge,
  );
  seen(now, row);
  for (let length = 0; length < words.length; length++) {
    const at = start + length;
    const letter = words[length] ?? '';
    const text = now.text.slice(0, at) + letter + now.text.slice(at);
    now = afterEdit(now, text, { start: at, end: at, inserted: letter }, caret, judge);
    seen(now, row);
  }
  return now;
}

const rowsOf = (shown: Shown): number[] => {
  const lines = new Lines(shown.text);
  return shown.findings
    .filter(({ severity }) => severity !== 'hint')
    .map(({ start }) => lines.at(start).line);
};

describe('typing', () => {
  const names = readdirSync(samples).filter((name) => clean.some((one) => name.startsWith(one)));

  it('blames no other row, and hardly ever its own, while a clean note is typed again row by row', () => {
    const noise: Noise = { states: 0, elsewhere: 0, anywhere: 0 };
    for (const name of names) {
      const note = readFileSync(join(samples, name), 'utf8');
      const before = new Set(judge(note).map(({ code }) => code));
      note.split('\n').forEach((_, row) => {
        retype(note, row, (state) => {
          const rows = rowsOf({ ...state, findings: state.findings.filter(({ code }) => !before.has(code)) });
          noise.states += 1;
          if (rows.length > 0) noise.anywhere += 1;
          if (rows.some((one) => one !== row)) noise.elsewhere += 1;
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
      retype(note, row, (state) => {
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
    const last = retype(note, row, () => undefined);
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

  /** Types letters at the end of a text, the caret behind them, and answers what shows; Enter keeps the indentation. */
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

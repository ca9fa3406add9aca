import assert from 'node:assert/strict';
import { planOf } from '../../../src/followup/schedule.ts';
import { timePicture } from '../../../src/documents/pictures/time.ts';
import type { Picture, PictureOptions } from '../../../src/documents/pictures/picture.ts';
import { readNote } from '../../../src/note/read.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { attributesOf, overlaps, textBoxes } from './svg-data.ts';

const text = `wheal: 1
visit: 2026-03-02
patient: {id: C-1, age: 60}
procedures:
  - site: left upper back
    method: punch
    size: 4 mm
    closure: [{material: nylon, size: 4-0, count: 2, technique: simple interrupted}]
    specimen: [{label: A, medium: formalin, sent: 2026-03-02}]
`;
const closed = `${text.replace('sent: 2026-03-02}', 'sent: 2026-03-02, results: [{received: 2026-03-09, diagnosis: nevus, reviewed: 2026-03-09, told: [{on: 2026-03-10, how: told by phone}]}]}')}    sutures-out: {on: 2026-03-13}
`;

function pictureOf(note: string, today: string | undefined, options?: PictureOptions): Picture | undefined {
  const { value } = readNote(note);
  assert.ok(value !== null);
  return timePicture(
    { visit: value.visit?.value?.date, plan: planOf(value, referenceTables), today },
    options,
  );
}

function there(picture: Picture | undefined): Picture {
  assert.ok(picture !== undefined);
  return picture;
}

const states = (today: string | undefined, note = text): readonly string[] =>
  there(pictureOf(note, today)).table.rows.map((row) => `${row[0]}: ${row[4]}`);

describe('the picture of time', () => {
  it('says of each thing what its state is on a day', () => {
    const at = (today: string): string => states(today).find((row) => row.startsWith('suture removal')) ?? '';
    assert.match(at('2026-03-03'), /: later: /);
    assert.match(at('2026-03-13'), /: due now: /);
    assert.match(at('2026-05-03'), /: overdue since /);
  });

  it('says what is done, and when', () => {
    assert.ok(states('2026-03-20', closed).includes('suture removal: done 2026-03-13'));
  });

  it('has no state where nobody said which day it is', () => {
    for (const row of states(undefined)) assert.doesNotMatch(row, /due|later/);
  });

  it('draws a day farther right the later it is, between visit and end', () => {
    const { svg } = there(pictureOf(text, '2026-03-05'));
    const bars = attributesOf(svg, 'rect', 'wheal-bar').map(
      ({ x, width }) => [Number(x), Number(width)] as const,
    );
    assert.ok(bars.length >= 2);
    for (const [x, width] of bars) assert.ok(x >= 0 && x + width <= 480, `${x} ${width}`);
    assert.deepEqual(
      bars.map(([x]) => x),
      bars.map(([x]) => x).sort((a, b) => a - b),
    );
  });

  it('marks the day on which it is seen, at the edge where it lies beyond', () => {
    const within = there(pictureOf(text, '2026-03-09')).svg;
    const beyond = there(pictureOf(text, '2031-03-09')).svg;
    const at = (svg: string): number =>
      Number(/^M(\d+)/.exec(attributesOf(svg, 'path', 'wheal-today')[0]?.['d'] ?? '')?.[1]);
    assert.ok(at(within) > 6 && at(within) < 474, String(at(within)));
    assert.equal(at(beyond), 474);
    assert.match(beyond, /today 2031-03-09 »/);
  });

  it('tells states apart without color', () => {
    const fills = (today: string, note = text): string =>
      attributesOf(there(pictureOf(note, today)).svg, 'rect', 'wheal-bar')[
        states(today, note).findIndex((row) => row.startsWith('suture removal'))
      ]?.['fill'] ?? '';
    const all = [fills('2026-03-03'), fills('2026-09-03'), fills('2026-09-03', closed)];
    assert.equal(new Set(all).size, 3, String(all));
  });

  it('has no two texts over each other', () => {
    for (const today of ['2026-03-02', '2026-03-13', '2026-06-01', '2031-01-01'])
      assert.deepEqual(overlaps(textBoxes(there(pictureOf(text, today)).svg)), []);
  });

  it('names what has no day below it', () => {
    const picture = there(pictureOf(text.replace(/ {4}specimen.*\n/, ''), '2026-03-05'));
    assert.match(picture.notDrawn.join(' '), /specimen to send, left upper back/);
    assert.ok(picture.alternative.includes(picture.notDrawn.join(' ')));
  });

  it('has marks that lead to their part of the note, where it is asked to', () => {
    const linked = there(pictureOf(text, '2026-03-05', { linked: true }));
    const marks = attributesOf(linked.svg, 'g', 'wheal-mark');
    assert.equal(marks.length, linked.table.rows.length);
    for (const mark of marks) {
      assert.equal(mark['tabindex'], '0');
      assert.ok(Number(mark['data-start']) > 0);
      assert.notEqual(mark['aria-label'], undefined);
    }
    assert.equal(there(pictureOf(text, '2026-03-05')).svg.includes('tabindex'), false);
  });

  it('is not there without a day of the visit', () => {
    assert.equal(pictureOf(text.replace('visit: 2026-03-02\n', ''), '2026-03-05'), undefined);
  });
});

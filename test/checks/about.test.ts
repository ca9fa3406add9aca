import assert from 'node:assert/strict';
import { catalogue } from '../../src/checks/index.ts';
import { runChecks } from '../../src/checks/run.ts';
import { noteShapes } from '../../src/note/generated/shapes.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables } from '../../src/practice/tables.ts';
import { step } from '../share.ts';
import { pageExamples, samples } from '../service/notes.ts';

const apart = step(23);

/** A note with every 23rd of its lines left out in turn, beginning with one that differs from note to note. */
const thinned = (text: string, index: number): readonly string[] => {
  const rows = text.split('\n');
  const places = rows.map((_, at) => at).filter((at) => at % apart === index % apart);
  return [text, ...places.map((at) => rows.toSpliced(at, 1).join('\n'))];
};

const askedAlways = catalogue.map((check) => {
  const { about, when, ...rest } = check;
  return about === undefined && when === undefined ? check : rest;
});

describe('a check that is not asked of every note', () => {
  it('names keys that notes have', () => {
    const keys = new Set(Object.values(noteShapes).flatMap((shape) => shape.keys.map(({ key }) => key)));
    const named = catalogue.flatMap(({ about = [] }) => about);
    assert.deepEqual(
      named.filter((key) => !keys.has(key)),
      [],
    );
    assert.ok(named.length > 0);
  });

  it('would find nothing in those of which it is not asked', function () {
    this.timeout(60_000);
    for (const [index, note] of [...samples, ...pageExamples].entries()) {
      const context = { tables: note.tables ?? referenceTables, today: note.today ?? '2026-04-30' };
      for (const text of thinned(note.text, index)) {
        const source = readNote(text);
        const asked = runChecks(catalogue, source, context).findings;
        assert.deepEqual(asked, runChecks(askedAlways, source, context).findings, text);
      }
    }
  });
});

import assert from 'node:assert/strict';
import { mock } from 'node:test';
import type * as vscode from 'vscode';
import { OpenNote } from '../../../src/editor/notes/open-note.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { analyse, type Shown } from '../../../src/service/index.ts';

const head = 'wheal: 1\nvisit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left cheek\n';

/** A document that is edited here, and what was shown of it. */
class Desk {
  readonly shown: Shown[] = [];
  readonly judged: string[] = [];
  readonly note: OpenNote;
  private text: string;

  constructor(text: string) {
    this.text = text;
    const document = { getText: () => this.text, isUntitled: false } as vscode.TextDocument;
    this.note = new OpenNote(document, {
      analyse: (_, judged) => {
        this.judged.push(judged);
        return analyse(judged, { tables: referenceTables, today: '2026-04-30' });
      },
      caret: () => ({ line: this.text.split('\n').length - 2, character: 0 }),
      show: (_, shown) => this.shown.push(shown),
    });
  }

  /** Puts rows at the end, as a paste does. */
  paste(inserted: string): void {
    const offset = this.text.length;
    const line = this.text.split('\n').length - 1;
    this.text += inserted;
    const range = { start: { line, character: 0 }, end: { line, character: 0 } };
    this.note.edited([
      { rangeOffset: offset, rangeLength: 0, text: inserted, range },
    ] as unknown as vscode.TextDocumentContentChangeEvent[]);
  }
}

describe('an open note', () => {
  beforeEach(() => {
    mock.timers.enable({ apis: ['setTimeout'] });
  });
  afterEach(() => {
    mock.timers.reset();
  });

  it('is judged once for several pastes, by the last text', () => {
    const desk = new Desk(head);
    const before = desk.judged.length;
    desk.paste('    method: shav\n');
    desk.paste('    depth: mid dermis\n');
    assert.equal(desk.judged.length, before);
    mock.timers.tick(200);
    assert.deepEqual(
      [...new Set(desk.judged.slice(before))],
      [`${head}    method: shav\n    depth: mid dermis\n`],
    );
    assert.equal(desk.shown.at(-1)?.text, `${head}    method: shav\n    depth: mid dermis\n`);
  });

  it('is judged no more once it is closed', () => {
    const desk = new Desk(head);
    desk.paste('    method: shav\n');
    const [judged, shown] = [desk.judged.length, desk.shown.length];
    desk.note.dispose();
    mock.timers.tick(5000);
    assert.deepEqual([desk.judged.length, desk.shown.length], [judged, shown]);
  });

  it('does not show later what a save has shown', () => {
    const desk = new Desk(head);
    desk.paste('    method: shav\n');
    desk.note.rest();
    const [judged, shown] = [desk.judged.length, desk.shown.length];
    assert.equal(desk.shown.at(-1)?.text, `${head}    method: shav\n`);
    mock.timers.tick(5000);
    assert.deepEqual([desk.judged.length, desk.shown.length], [judged, shown]);
  });
});

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { mock } from 'node:test';
import type * as vscode from 'vscode';
import type { FoundPractice } from '../../../src/editor/host/practices.ts';
import { OpenNote } from '../../../src/editor/notes/open-note.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { analyse, type Diagnostic } from '../../../src/service/index.ts';

const head = 'wheal: 1\nvisit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left cheek\n';
const clean = readFileSync(
  join(import.meta.dirname, '../../fixtures/ok/adolescent-deep-shave.wheal.yaml'),
  'utf8',
  // A day that is only counted is hinted at.
).replace('recheck in 6 months', 'recheck 2026-09-02');
const practice: FoundPractice = { tables: referenceTables, text: '', trust: {}, uri: undefined };

/** An editor with one document, and what an open note has done in it. */
class Editor {
  readonly judged: string[] = [];
  readonly published: (readonly Diagnostic[])[] = [];
  readonly note: OpenNote;
  shownTimes = 0;
  today = '2026-04-30';
  practice = practice;
  private text: string;

  constructor(text: string) {
    this.text = text;
    const document = { getText: () => this.text, isUntitled: false, isClosed: false };
    this.note = new OpenNote(document as unknown as vscode.TextDocument, {
      practiceOf: () => Promise.resolve(this.practice),
      analyse: (_, judged, { today }) => {
        this.judged.push(judged);
        return analyse(judged, { tables: referenceTables, today });
      },
      elsewhereOf: () => undefined,
      today: () => this.today,
      caret: () => ({ line: this.text.split('\n').length - 2, character: 0 }),
      publish: (_, diagnostics) => this.published.push(diagnostics),
      judged: () => (this.shownTimes += 1),
      failed: (check) => {
        throw new Error(check);
      },
    });
  }

  /** An editor in which the note is ready. */
  static async with(text: string): Promise<Editor> {
    const editor = new Editor(text);
    await editor.note.ready;
    return editor;
  }

  get codes(): readonly string[] {
    return (this.published.at(-1) ?? []).map(({ code }) => code);
  }

  /** Puts lines at the end, as a paste does. */
  paste(inserted: string): void {
    const offset = this.text.length;
    const line = this.text.split('\n').length - 1;
    this.text += inserted;
    const range = { start: { line, character: 0 }, end: { line, character: 0 } };
    this.note.edited([
      { rangeOffset: offset, rangeLength: 0, text: inserted, range },
    ] as unknown as vscode.TextDocumentContentChangeEvent[]);
  }

  /** Puts another text in the place of all, as an undo may. */
  replace(inserted: string): void {
    const rangeLength = this.text.length;
    this.text = inserted;
    const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };
    this.note.edited([
      { rangeOffset: 0, rangeLength, text: inserted, range },
    ] as unknown as vscode.TextDocumentContentChangeEvent[]);
  }

  /** How often something was judged and shown so far. */
  get counts(): readonly number[] {
    return [this.judged.length, this.shownTimes, this.published.length];
  }
}

describe('an open note', () => {
  beforeEach(() => {
    mock.timers.enable({ apis: ['setTimeout'] });
  });
  afterEach(() => {
    mock.timers.reset();
  });

  it('is judged once for several pastes, by the last text', async () => {
    const editor = await Editor.with(head);
    const before = editor.judged.length;
    editor.paste('    method: shav\n');
    editor.paste('    depth: mid dermis\n');
    assert.equal(editor.judged.length, before);
    mock.timers.tick(200);
    assert.deepEqual(
      [...new Set(editor.judged.slice(before))],
      [`${head}    method: shav\n    depth: mid dermis\n`],
    );
    assert.ok(editor.codes.includes('shape/unknown-word'), editor.codes.join());
  });

  it('is judged no more once it is closed', async () => {
    const editor = await Editor.with(head);
    editor.paste('    method: shav\n');
    const { counts } = editor;
    editor.note.dispose();
    mock.timers.tick(5000);
    assert.deepEqual(editor.counts, counts);
  });

  it('does not show later what a save has shown', async () => {
    const editor = await Editor.with(head);
    editor.paste('    method: shav\n');
    editor.note.rest();
    const { counts } = editor;
    assert.ok(editor.codes.includes('shape/unknown-word'), editor.codes.join());
    mock.timers.tick(5000);
    assert.deepEqual(editor.counts, counts);
  });

  it('is none where it is closed before its practice file is known', async () => {
    const editor = new Editor(head);
    editor.note.dispose();
    assert.equal(await editor.note.ready, undefined);
    await editor.note.reload();
    assert.deepEqual(editor.counts, [0, 0, 0]);
  });

  it('is read as it is when its practice file is known, whatever was typed before', async () => {
    const editor = new Editor(head);
    editor.paste('    method: shav\n');
    editor.note.moved({ line: 0, character: 0 });
    editor.note.rest();
    assert.deepEqual(editor.counts, [0, 0, 0]);
    assert.equal(await editor.note.ready, editor.note);
    assert.deepEqual([...new Set(editor.judged)], [`${head}    method: shav\n`]);
    assert.ok(editor.codes.includes('shape/unknown-word'), editor.codes.join());
    mock.timers.tick(5000);
    assert.equal(editor.published.length, 1);
  });

  it('publishes when it is opened, also that nothing was found, and then only what differs from nothing', async () => {
    const editor = await Editor.with(clean);
    assert.deepEqual(editor.published, [[]]);
    editor.note.rest();
    assert.equal(editor.published.length, 1);
    editor.paste('colour: red\n');
    mock.timers.tick(200);
    assert.deepEqual(editor.codes, ['shape/unknown-key']);
  });

  it('publishes that nothing is found any more', async () => {
    const editor = await Editor.with(head);
    assert.notDeepEqual(editor.codes, []);
    editor.replace(clean);
    mock.timers.tick(200);
    assert.deepEqual(editor.codes, []);
  });

  it('keeps its analysis until its text, the day, the practice or its folder changes', async () => {
    const editor = await Editor.with(head);
    const analysis = editor.note.analysis;
    assert.equal(editor.note.analysis, analysis);
    assert.equal(editor.judged.length, 1);
    editor.today = '2026-05-01';
    assert.notEqual(editor.note.analysis, analysis);
    assert.equal(editor.judged.length, 2);
    editor.note.reconsider();
    assert.equal(editor.judged.length, 3);
    editor.practice = { ...practice };
    await editor.note.reload();
    assert.equal(editor.judged.length, 4);
    await editor.note.reload();
    assert.equal(editor.judged.length, 4);
  });
});

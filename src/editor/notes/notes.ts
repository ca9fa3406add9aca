import * as vscode from 'vscode';
import { localDate } from '../host/clock.ts';
import { diagnosticOf } from '../host/convert.ts';
import type { Practices } from '../host/practices.ts';
import { analysisOf } from './analysis.ts';
import { folderOf, Neighbors } from './neighbors.ts';
import { OpenNote, type Surroundings } from './open-note.ts';

/** The notes and practice files that are open: each event goes to the one that it is about. */
export class Notes implements vscode.Disposable {
  private readonly open = new Map<vscode.TextDocument, OpenNote>();
  private readonly around: Surroundings;
  private last = vscode.window.activeTextEditor?.document;
  private readonly collection = vscode.languages.createDiagnosticCollection('wheal');
  private readonly judged = new vscode.EventEmitter<OpenNote>();
  private readonly reloaded = new vscode.EventEmitter<void>();
  private readonly subscriptions: readonly { dispose: () => unknown }[];
  /** What shows of a note has changed. */
  readonly onDidJudge = this.judged.event;
  /** What holds for all notes has changed: the practice file, or trust. */
  readonly onDidReload = this.reloaded.event;

  constructor(
    private readonly practices: Practices,
    log: vscode.LogOutputChannel,
  ) {
    const neighbors = new Neighbors(practices);
    this.around = surroundings(practices, neighbors, this.collection, this.judged, log);
    this.subscriptions = [
      neighbors,
      neighbors.onDidChange((folder) => {
        this.reconsider(folder);
      }),
      this.collection,
      this.judged,
      this.reloaded,
      practices.onDidChange(() => void this.reload()),
      ...this.listeners(),
    ];
    for (const document of vscode.workspace.textDocuments) void this.find(document);
  }

  /** The note in a document; undefined where it holds none, as the old side of a comparison, or is closed by now. */
  find(document: vscode.TextDocument): Promise<OpenNote | undefined> {
    if (!isNote(document)) return Promise.resolve(undefined);
    let note = this.open.get(document);
    if (note === undefined) this.open.set(document, (note = new OpenNote(document, this.around)));
    return note.ready;
  }

  /** The note in the editor in front, or the last that was, while a preview has the focus. */
  async front(): Promise<OpenNote | undefined> {
    const document = vscode.window.activeTextEditor?.document ?? this.last;
    return document === undefined || document.isClosed ? undefined : await this.find(document);
  }

  /** The practice file that a note is judged by; undefined where nothing of it could be used. */
  async practiceOf(note: vscode.Uri): Promise<vscode.Uri | undefined> {
    const { uri, tables } = await this.practices.of(note);
    return tables.gap?.form === 'file' ? undefined : uri;
  }

  /** Findings of a file that is not open; undefined takes them away. */
  setClosed(uri: vscode.Uri, diagnostics: readonly vscode.Diagnostic[] | undefined): void {
    const isOpen = [...this.open.keys()].some((document) => document.uri.toString() === uri.toString());
    if (!isOpen) this.collection.set(uri, diagnostics);
  }

  dispose(): void {
    vscode.Disposable.from(...this.subscriptions).dispose();
    for (const note of this.open.values()) note.dispose();
  }

  private drop(document: vscode.TextDocument): void {
    const note = this.open.get(document);
    if (note === undefined) return;
    this.open.delete(document);
    note.dispose();
    this.collection.delete(document.uri);
  }

  private async reload(): Promise<void> {
    for (const note of [...this.open.values()]) await note.reload();
    this.reloaded.fire();
  }

  /** Judges the open notes of a folder again, since others in it have changed. */
  private reconsider(folder: vscode.Uri): void {
    for (const [document, note] of this.open)
      if (folderOf(document.uri).toString() === folder.toString()) note.reconsider();
    this.reloaded.fire();
  }

  private listeners(): readonly vscode.Disposable[] {
    const { workspace, window } = vscode;
    const byHand = new WeakSet<vscode.TextDocument>();
    return [
      workspace.onDidOpenTextDocument((document) => void this.find(document)),
      workspace.onDidCloseTextDocument((document) => {
        this.drop(document);
      }),
      workspace.onDidDeleteFiles(({ files }) => {
        for (const uri of files) this.setClosed(uri, undefined);
      }),
      workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
        this.open.get(document)?.edited(contentChanges);
      }),
      window.onDidChangeTextEditorSelection(({ textEditor, selections }) => {
        const caret = selections[0]?.active;
        if (caret !== undefined && textEditor === window.activeTextEditor)
          this.open.get(textEditor.document)?.moved(caret);
      }),
      window.onDidChangeActiveTextEditor((editor) => {
        if (this.last !== undefined && this.last !== editor?.document) this.open.get(this.last)?.rest();
        this.last = editor?.document ?? this.last;
      }),
      workspace.onWillSaveTextDocument(({ document, reason }) => {
        if (reason === vscode.TextDocumentSaveReason.Manual) byHand.add(document);
      }),
      workspace.onDidSaveTextDocument((document) => {
        if (byHand.delete(document)) this.open.get(document)?.rest();
      }),
    ];
  }
}

/** What the open notes ask of this window, and where they show what they found. */
function surroundings(
  practices: Practices,
  neighbors: Neighbors,
  collection: vscode.DiagnosticCollection,
  judged: vscode.EventEmitter<OpenNote>,
  log: vscode.LogOutputChannel,
): Surroundings {
  return {
    practiceOf: (uri) => practices.of(uri),
    analyse: analysisOf,
    elsewhereOf: (uri, note) => {
      const patient = note?.patient?.id?.value;
      return patient === undefined
        ? undefined
        : neighbors.daysOf(uri, patient)?.elsewhere(uri.toString(), note);
    },
    today: () => localDate(new Date()),
    caret: (document) => {
      const editor = vscode.window.activeTextEditor;
      return editor?.document === document ? editor.selection.active : undefined;
    },
    publish: (uri, diagnostics) => {
      collection.set(
        uri,
        diagnostics.map((one) => diagnosticOf(uri, one)),
      );
    },
    judged: (note) => {
      judged.fire(note);
    },
    // Of a note itself nothing is logged.
    failed: (check) => {
      log.error(`check failed: ${check}`);
    },
  };
}

/**
 * Whether somebody writes a note in a document. The left side of a comparison, an old version and a text that an
 * extension makes up are nobody's note: their file systems can't be written to, unless they are the workspace.
 */
function isNote({ languageId, uri: { scheme } }: vscode.TextDocument): boolean {
  if (languageId !== 'wheal') return false;
  if (/^(file|untitled|vscode-remote)$/.test(scheme)) return true;
  if (scheme.startsWith('git')) return false;
  return (
    vscode.workspace.fs.isWritableFileSystem(scheme) === true ||
    (vscode.workspace.workspaceFolders ?? []).some(({ uri }) => uri.scheme === scheme)
  );
}

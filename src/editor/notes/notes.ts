import * as vscode from 'vscode';
import {
  analyse,
  analysePractice,
  diagnosticsOf,
  type Analysis,
  type Caret,
  type ElsewhereOf,
  type Shown,
} from '../../service/index.ts';
import { localDate } from '../host/clock.ts';
import { diagnosticOf } from '../host/convert.ts';
import { isPractice } from '../host/files.ts';
import { folderOf, Neighbors } from './neighbors.ts';
import { OpenNote, type Desk } from './open-note.ts';
import type { FoundPractice, Practices } from '../host/practices.ts';

interface Known {
  readonly analysis: Analysis;
  readonly practice: FoundPractice;
  readonly today: string;
}

/** The notes and practice files that are open, and what shows of their findings. */
export class Notes implements vscode.Disposable, Desk {
  private readonly open = new Map<vscode.TextDocument, Promise<OpenNote | undefined>>();
  /** Those of them that are read by now. */
  private readonly ready = new Map<vscode.TextDocument, OpenNote>();
  private readonly found = new Map<vscode.TextDocument, FoundPractice>();
  private readonly known = new Map<vscode.TextDocument, Known>();
  private readonly neighbors: Neighbors;
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
    private readonly log: vscode.LogOutputChannel,
  ) {
    this.neighbors = new Neighbors(practices);
    this.subscriptions = [
      this.neighbors,
      this.neighbors.onDidChange((folder) => void this.reconsider(folder)),
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
    let found = this.open.get(document);
    if (found === undefined) this.open.set(document, (found = this.take(document)));
    return found;
  }

  /** The note in the editor in front, or the last that was, while a preview has the focus. */
  async front(): Promise<OpenNote | undefined> {
    const document = vscode.window.activeTextEditor?.document ?? this.last;
    return document === undefined || document.isClosed ? undefined : await this.find(document);
  }

  /** The practice file that a note is judged by. */
  async practiceOf(note: vscode.Uri): Promise<vscode.Uri | undefined> {
    return (await this.practices.of(note)).uri;
  }

  /** Findings of a file that is not open; undefined takes them away. */
  setClosed(uri: vscode.Uri, diagnostics: readonly vscode.Diagnostic[] | undefined): void {
    const isOpen = [...this.open.keys()].some((document) => document.uri.toString() === uri.toString());
    if (!isOpen) this.collection.set(uri, diagnostics);
  }

  readonly analyse = (document: vscode.TextDocument, text: string): Analysis => {
    const practice = this.found.get(document)!;
    const today = localDate(new Date());
    const known = this.known.get(document);
    if (known?.analysis.text === text && known.practice === practice && known.today === today)
      return known.analysis;
    const { uri } = document;
    const analysis = analysisOf(uri, text, {
      practice,
      today,
      elsewhereOf: (note) => {
        const patient = note?.patient?.id?.value;
        return patient === undefined
          ? undefined
          : this.neighbors.daysOf(uri, patient)?.elsewhere(uri.toString(), note);
      },
    });
    this.known.set(document, { analysis, practice, today });
    // Of a note itself nothing is logged.
    for (const { check } of analysis.judgement.failures) this.log.error(`check failed: ${check}`);
    return analysis;
  };

  readonly caret = (document: vscode.TextDocument): Caret | undefined => {
    const editor = vscode.window.activeTextEditor;
    return editor?.document === document ? editor.selection.active : undefined;
  };

  readonly show = (note: OpenNote, { text, findings }: Shown): void => {
    const { document } = note;
    const diagnostics = diagnosticsOf(text, { findings, dose: null, failures: [] });
    // Of a clean row the window need not be told at each key.
    if (diagnostics.length > 0 || (this.collection.get(document.uri)?.length ?? 0) > 0)
      this.collection.set(
        document.uri,
        diagnostics.map((one) => diagnosticOf(document.uri, one)),
      );
    this.judged.fire(note);
  };

  dispose(): void {
    vscode.Disposable.from(...this.subscriptions).dispose();
    for (const note of this.open.values()) void note.then((one) => one?.dispose());
  }

  private async take(document: vscode.TextDocument): Promise<OpenNote | undefined> {
    const practice = await this.practices.of(document.uri);
    if (document.isClosed || !this.open.has(document)) return undefined;
    this.found.set(document, practice);
    const note = new OpenNote(document, this);
    this.ready.set(document, note);
    return note;
  }

  private drop(document: vscode.TextDocument): void {
    const note = this.open.get(document);
    if (note === undefined) return;
    this.open.delete(document);
    this.ready.delete(document);
    this.found.delete(document);
    this.known.delete(document);
    this.collection.delete(document.uri);
    void note.then((one) => one?.dispose());
  }

  private async reload(): Promise<void> {
    for (const [document, opening] of [...this.open]) {
      const note = await opening;
      const practice = await this.practices.of(document.uri);
      if (note === undefined || document.isClosed) continue;
      this.found.set(document, practice);
      note.rest();
    }
    this.reloaded.fire();
  }

  /** Judges the open notes of a folder again, since others in it have changed. */
  private async reconsider(folder: vscode.Uri): Promise<void> {
    for (const [document, opening] of [...this.open]) {
      if (folderOf(document.uri).toString() !== folder.toString()) continue;
      this.known.delete(document);
      (await opening)?.reconsider();
    }
    this.reloaded.fire();
  }

  /** At once: several keys may arrive together, and each has to meet the text as that key has left it. */
  private with(document: vscode.TextDocument, work: (note: OpenNote) => void): void {
    const note = this.ready.get(document);
    if (note !== undefined) work(note);
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
        this.with(document, (note) => {
          note.edited(contentChanges);
        });
      }),
      window.onDidChangeTextEditorSelection(({ textEditor, selections }) => {
        const caret = selections[0]?.active;
        if (caret !== undefined && textEditor === window.activeTextEditor)
          this.with(textEditor.document, (note) => {
            note.moved(caret);
          });
      }),
      window.onDidChangeActiveTextEditor((editor) => {
        if (this.last !== undefined && this.last !== editor?.document)
          this.with(this.last, (note) => {
            note.rest();
          });
        this.last = editor?.document ?? this.last;
      }),
      workspace.onWillSaveTextDocument(({ document, reason }) => {
        if (reason === vscode.TextDocumentSaveReason.Manual) byHand.add(document);
      }),
      workspace.onDidSaveTextDocument((document) => {
        if (byHand.delete(document))
          this.with(document, (note) => {
            note.rest();
          });
      }),
    ];
  }
}

/** Reads and judges a text as what its address says that it is. */
export function analysisOf(
  uri: vscode.Uri,
  text: string,
  { practice, today, elsewhereOf }: Around,
): Analysis {
  const context = { tables: practice.tables, today };
  return isPractice(uri)
    ? analysePractice(text, context, { ...practice.trust, trusted: vscode.workspace.isTrusted })
    : analyse(text, context, elsewhereOf);
}

/** What a text is judged by, beside itself. */
interface Around {
  readonly practice: FoundPractice;
  readonly today: string;
  readonly elsewhereOf?: ElsewhereOf;
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

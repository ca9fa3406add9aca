import * as vscode from 'vscode';
import { readPractice } from '../note/read.ts';
import { referenceTables, tablesOf, type Tables } from '../practice/tables.ts';
import { isPractice, load, practiceName } from './files.ts';

/** A practice file that was found, with the tables that follow from it. */
export interface FoundPractice {
  readonly tables: Tables;
  /** Undefined where there is no such file. */
  readonly uri: vscode.Uri | undefined;
}

const none: FoundPractice = { tables: referenceTables, uri: undefined };

/** Finds the practice file of each note and reads each file once, until one of them changes. */
export class Practices implements vscode.Disposable {
  private readonly byFolder = new Map<string, Promise<FoundPractice>>();
  private readonly changed = new vscode.EventEmitter<void>();
  private readonly subscriptions: readonly { dispose: () => unknown }[];
  /** What follows from the practice file may now be another. */
  readonly onDidChange = this.changed.event;

  constructor() {
    const forget = (): void => {
      this.byFolder.clear();
      this.changed.fire();
    };
    const watcher = vscode.workspace.createFileSystemWatcher(`**/${practiceName}`);
    this.subscriptions = [
      this.changed,
      watcher,
      watcher.onDidChange(forget),
      watcher.onDidCreate(forget),
      watcher.onDidDelete(forget),
      vscode.workspace.onDidGrantWorkspaceTrust(forget),
      vscode.workspace.onDidChangeWorkspaceFolders(forget),
      // Not every file system tells of changes.
      vscode.workspace.onDidSaveTextDocument(({ uri }) => {
        if (isPractice(uri)) forget();
      }),
    ];
  }

  /** The nearest practice file upwards from a note, as far as the workspace folder or the root of a repository. */
  of(note: vscode.Uri): Promise<FoundPractice> {
    if (note.scheme !== 'untitled') return this.in(vscode.Uri.joinPath(note, '..'));
    const [folder] = vscode.workspace.workspaceFolders ?? [];
    return folder === undefined ? Promise.resolve(none) : this.in(folder.uri);
  }

  dispose(): void {
    vscode.Disposable.from(...this.subscriptions).dispose();
  }

  private in(folder: vscode.Uri): Promise<FoundPractice> {
    const key = folder.toString();
    let found = this.byFolder.get(key);
    if (found === undefined) this.byFolder.set(key, (found = search(folder, (above) => this.in(above))));
    return found;
  }
}

async function search(
  folder: vscode.Uri,
  above: (folder: vscode.Uri) => Promise<FoundPractice>,
): Promise<FoundPractice> {
  const uri = vscode.Uri.joinPath(folder, practiceName);
  const loaded = await load(uri);
  if ('text' in loaded)
    return {
      uri,
      tables: tablesOf(readPractice(loaded.text).value, { trusted: vscode.workspace.isTrusted }),
    };
  const parent = vscode.Uri.joinPath(folder, '..');
  const isTop = parent.path === folder.path || isWorkspaceFolder(folder);
  return isTop || (await exists(vscode.Uri.joinPath(folder, '.git'))) ? none : await above(parent);
}

const isWorkspaceFolder = (folder: vscode.Uri): boolean =>
  (vscode.workspace.workspaceFolders ?? []).some(({ uri }) => uri.toString() === folder.toString());

const exists = async (uri: vscode.Uri): Promise<boolean> => {
  try {
    await vscode.workspace.fs.stat(uri);
    return true;
  } catch {
    return false;
  }
};

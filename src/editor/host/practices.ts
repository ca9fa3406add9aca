import * as vscode from 'vscode';
import { readPractice } from '../../note/read.ts';
import type { Practice } from '../../note/generated/types.ts';
import { referenceTables, tablesFrom, unreadTables, type Tables, type Trust } from '../../practice/tables.ts';
import { practiceName } from '../../note/text/files.ts';
import { exists, isPractice, load, watched } from './files.ts';

/** A practice file that was found, with the tables that follow from it. */
export interface FoundPractice {
  readonly tables: Tables;
  /** The file as it was read; empty where there is none. */
  readonly text: string;
  /** What is believed of the file, and the calendar of holidays that it names. */
  readonly trust: Trust;
  /** Undefined where there is no such file. */
  readonly uri: vscode.Uri | undefined;
}

const none: FoundPractice = { tables: referenceTables, text: '', trust: {}, uri: undefined };

/** Finds the practice file of each note and reads each file once, until one of them changes. */
export class Practices implements vscode.Disposable {
  private readonly byFolder = new Map<string, Promise<FoundPractice>>();
  /** Calendars that practice files have named, there or not. */
  private readonly calendars = new Set<string>();
  private readonly changed = new vscode.EventEmitter<void>();
  private readonly subscriptions: readonly { dispose: () => unknown }[];
  /** What follows from the practice file may now be another. */
  readonly onDidChange = this.changed.event;

  constructor() {
    const forget = (): void => {
      this.byFolder.clear();
      this.changed.fire();
    };
    this.subscriptions = [
      this.changed,
      ...watched(practiceName, forget),
      ...watched('*.ics', (uri) => {
        if (this.calendars.has(uri.toString())) forget();
      }),
      vscode.workspace.onDidGrantWorkspaceTrust(forget),
      vscode.workspace.onDidChangeWorkspaceFolders(forget),
      // Not every file system mentions changes.
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
    if (found === undefined)
      this.byFolder.set(key, (found = search(folder, this.calendars, (above) => this.in(above))));
    return found;
  }
}

async function search(
  folder: vscode.Uri,
  calendars: Set<string>,
  above: (folder: vscode.Uri) => Promise<FoundPractice>,
): Promise<FoundPractice> {
  const uri = vscode.Uri.joinPath(folder, practiceName);
  const loaded = await load(uri);
  if ('text' in loaded) {
    const source = readPractice(loaded.text);
    const trust = {
      trusted: vscode.workspace.isTrusted,
      holidays: await holidaysBeside(uri, source.value, calendars),
    };
    return { uri, trust, text: loaded.text, tables: tablesFrom(source, trust) };
  }
  // One that is there and can't be read must not give way to another further up.
  if (loaded.isThere) return { ...none, uri, tables: unreadTables };
  const parent = vscode.Uri.joinPath(folder, '..');
  const isTop = parent.path === folder.path || isWorkspaceFolder(folder);
  return isTop || (await exists(vscode.Uri.joinPath(folder, '.git'))) ? none : await above(parent);
}

/**
 * The text of the calendar that a practice file names. Only in the workspace, and not in restricted mode: a file of
 * unknown origin must not choose what is read, nor put off what is overdue.
 */
async function holidaysBeside(
  file: vscode.Uri,
  practice: Practice | null,
  calendars: Set<string>,
): Promise<string | undefined> {
  const name = practice?.holidays?.value;
  if (name === undefined || !vscode.workspace.isTrusted) return undefined;
  const uri = name.startsWith('/') ? file.with({ path: name }) : vscode.Uri.joinPath(file, '..', name);
  if (vscode.workspace.getWorkspaceFolder(uri) === undefined) return undefined;
  calendars.add(uri.toString());
  const loaded = await load(uri);
  return 'text' in loaded ? loaded.text : undefined;
}

const isWorkspaceFolder = (folder: vscode.Uri): boolean =>
  (vscode.workspace.workspaceFolders ?? []).some(({ uri }) => uri.toString() === folder.toString());

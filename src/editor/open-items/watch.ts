import * as vscode from 'vscode';
import { Timer } from '../host/clock.ts';
import { isNoteFile } from '../host/files.ts';
import { isSkipped } from '../../note/text/files.ts';
import type { OpenList } from './list.ts';
import type { Practices } from '../host/practices.ts';

/** Milliseconds after the last key until a note that is being written is read again. */
const typing = 1000;
/** Milliseconds in which changes of many files are taken for one. */
const together = 500;

/** What is done about changes of files. */
interface Answers {
  readonly changed: (uri: vscode.Uri, delay: number) => void;
  readonly came: (uri: vscode.Uri) => void;
  readonly gone: (uri: vscode.Uri) => void;
}

/** Tells a list of what changes: files that are written, come and go, notes that are typed, the practice file, the day. */
export function watchFor(list: OpenList, practices: Practices): vscode.Disposable {
  const timers = new Map<string, Timer>();
  const all = new Timer();
  const lookAtAll = (): void => {
    all.set(together, () => void list.lookAtAll());
  };
  const changed = (uri: vscode.Uri, delay: number): void => {
    if (!isNoteFile(uri) || !isOurs(uri)) return;
    const path = uri.toString();
    const timer = timers.get(path) ?? new Timer();
    timers.set(path, timer);
    timer.set(delay, () => {
      timers.delete(path);
      void list.lookAt(uri);
    });
  };
  const answers: Answers = {
    changed,
    // What has no suffix may be a folder with notes in it.
    came: (uri) => {
      if (isNoteFile(uri)) changed(uri, together);
      else if (!/\.\w+$/.test(uri.path)) lookAtAll();
    },
    gone: (uri) => void list.forget(uri),
  };
  return vscode.Disposable.from(
    ...watchers(answers),
    ...fileEvents(answers),
    ...documentEvents(answers),
    vscode.workspace.onDidChangeWorkspaceFolders(lookAtAll),
    practices.onDidChange(lookAtAll),
    vscode.window.onDidChangeWindowState(({ focused }) => {
      if (focused) void list.refresh();
    }),
    new vscode.Disposable(() => {
      all.clear();
      for (const timer of timers.values()) timer.clear();
    }),
  );
}

function watchers({ changed, came, gone }: Answers): readonly vscode.Disposable[] {
  const notes = vscode.workspace.createFileSystemWatcher('**/*.wheal.yaml');
  // Of a folder that goes, nothing is mentioned the files in it.
  const anything = vscode.workspace.createFileSystemWatcher('**', true, true);
  return [
    notes,
    anything,
    notes.onDidChange((uri) => {
      changed(uri, together);
    }),
    notes.onDidCreate(came),
    anything.onDidDelete(gone),
  ];
}

/** What the editor itself does to files: not every file system mentions changes. */
const fileEvents = ({ came, gone }: Answers): readonly vscode.Disposable[] => [
  vscode.workspace.onDidCreateFiles(({ files }) => {
    files.forEach(came);
  }),
  vscode.workspace.onDidDeleteFiles(({ files }) => {
    files.forEach(gone);
  }),
  vscode.workspace.onDidRenameFiles(({ files }) => {
    for (const { oldUri, newUri } of files) {
      gone(oldUri);
      came(newUri);
    }
  }),
];

/** A note counts as it is in an editor; what was not saved is gone once it is closed. */
const documentEvents = ({ changed }: Answers): readonly vscode.Disposable[] => [
  vscode.workspace.onDidSaveTextDocument(({ uri }) => {
    changed(uri, 0);
  }),
  vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
    if (contentChanges.length > 0) changed(document.uri, typing);
  }),
  vscode.workspace.onDidCloseTextDocument(({ uri }) => {
    changed(uri, 0);
  }),
];

/** Whether a file is one of the workspace's, and is not skipped there. */
const isOurs = (uri: vscode.Uri): boolean =>
  vscode.workspace.getWorkspaceFolder(uri) !== undefined &&
  !vscode.workspace.asRelativePath(uri, false).split('/').some(isSkipped);
